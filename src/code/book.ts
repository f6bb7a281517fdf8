import type { CodeSystem, Entry, MakerFile, Plant } from '../maker/types';
import { strengthOf } from '../source';
import { listOfPeriods, periodSpan, periodSpans, type Span } from '../span';
import { isFault, type LaidLayout, type LayoutFault, layOut } from './layout';

/** A plant as the decoder needs it: its code, place and periods. */
export interface BookPlant {
  code: string;
  place: string;
  used: Span[];
  /** Where the maker file has it from. */
  source?: string;
  /** What the file says of it is a habit, or disputed. */
  soft?: true;
}

/** One code system made ready: several layouts may hold in its period. */
export interface BookSystem {
  maker: string | null;
  id: string;
  /** Where the maker file has it from. */
  source: string | undefined;
  /** Whether the maker file is invented, for demonstration. */
  invented: boolean;
  /** Whether what the file says of it is a habit, or disputed. */
  soft: boolean;
  used: Span;
  /** Times beside it in which it was used by way of exception. */
  excepted: Span[];
  reversed: boolean;
  layouts: LaidLayout[];
  plants: Map<string, BookPlant[]>;
  /** Share of its book's codes that this system is taken to explain, relative to the other systems. */
  weight: number;
}

/** The systems of one maker, or the families (`maker` null). */
export interface Book {
  maker: string | null;
  systems: BookSystem[];
}

export interface SystemFault extends LayoutFault {
  /** Path of the layout in the system: `layout`, or `layouts[1]`. */
  layout: string;
}

const anyTime: Span = { from: null, to: null, precision: 'range' };

export function bookPlants(plants: readonly Plant[]): Map<string, BookPlant[]> {
  const byCode = new Map<string, BookPlant[]>();
  for (const plant of plants) {
    const used = [...listOfPeriods(plant.used).map((period) => periodSpan(period) ?? anyTime), ...exceptedOf(plant)];
    const source = sourceText(plant);
    const soft = strengthOf(plant, 'hard') === 'soft';
    const same = byCode.get(plant.code) ?? [];
    const place = same.find((known) => known.place === plant.place);
    if (place) {
      place.used.push(...used);
      if (source) place.source = place.source ? listedOnce(place.source, source) : source;
      if (soft) place.soft = true;
    } else
      same.push({ code: plant.code, place: plant.place, used, ...(source && { source }), ...(soft && { soft: true }) });
    byCode.set(plant.code, same);
  }
  return byCode;
}

/** Times in which an entry makes an exception: of whichever model, for a code alone names none. */
const exceptedOf = ({ exceptions = [] }: Pick<Entry, 'exceptions'>): Span[] =>
  exceptions.flatMap(({ used }) => (used ? periodSpans(used) : []));

/** The sources of an entry in one line; undefined where it names none. */
const sourceText = ({ sources = [] }: Pick<Entry, 'sources'>): string | undefined =>
  sources.length > 0 ? sources.join('; ') : undefined;

const listedOnce = (known: string, other: string): string => [...new Set(`${known}; ${other}`.split('; '))].join('; ');

/** Prepares one system; faults of its layouts are returned, not thrown. */
export function openSystem(
  system: Pick<CodeSystem, 'id' | 'used' | 'layout' | 'layouts' | 'reversed' | keyof Entry>,
  maker: string | null,
  plants: Map<string, BookPlant[]>,
  weight = 1,
): { system: BookSystem; faults: SystemFault[] } {
  const written = system.layouts ?? (system.layout ? [system.layout] : []);
  const faults: SystemFault[] = [];
  const layouts: LaidLayout[] = [];
  for (const [index, layout] of written.entries()) {
    const laid = layOut(layout, { plantCodes: [...plants.keys()] });
    if (isFault(laid)) faults.push({ ...laid, layout: system.layouts ? `layouts[${index}]` : 'layout' });
    else layouts.push(laid);
  }
  const used = periodSpan(system.used) ?? anyTime;
  const reversed = system.reversed ?? false;
  const { id } = system;
  const source = sourceText(system);
  const soft = strengthOf(system, 'hard') === 'soft';
  return {
    system: {
      maker,
      id,
      source,
      invented: false,
      soft,
      used,
      excepted: exceptedOf(system),
      reversed,
      layouts,
      plants,
      weight,
    },
    faults,
  };
}

const opened = new WeakMap<MakerFile, Book>();

/** The book of a maker file, prepared once per file object. Layouts at fault are left out: parsing refuses such files. */
export function openBook(file: MakerFile): Book {
  const known = opened.get(file);
  if (known) return known;
  const plants = bookPlants(file.plants);
  const systems = file.codeSystems.map((system) => ({
    ...openSystem(system, file.maker, plants).system,
    invented: file.invented === true,
  }));
  const book = { maker: file.maker, systems };
  opened.set(file, book);
  return book;
}
