import { unknownPlace } from '../place';
import { workshopDigits } from './said/layout';
import type { Proposal, TakenPeriod } from './types';

type Value = Record<string, unknown>;
type Of<K extends Proposal['kind']> = Extract<Proposal, { kind: K }>;

const longestSource = 600;
/** As many as an entry of a maker file may have. */
const mostSources = 20;

/** Where an entry is from: the address, the day, and the page's own words; what is hedged stands in them. */
const sourceOf = ({ source, words }: Proposal): string =>
  `${source.address}, ${source.day}: “${words.replace(/\s{1,200}/g, ' ')}”`.slice(0, longestSource);

const listOf = (value: Value, name: string): unknown[] =>
  Array.isArray(value[name]) ? (value[name] as unknown[]) : [];

/** Dates as a maker file has them: a beginning that the page does not tell is unknown, and what it hedges is about. */
function yearsOf(used: TakenPeriod | TakenPeriod[] | undefined, about: readonly ('from' | 'to')[] = []) {
  if (used === undefined) return {};
  const several = Array.isArray(used[0]) ? (used as TakenPeriod[]) : [used as TakenPeriod];
  const hedged = (end: 'from' | 'to', date: string) =>
    about.includes(end) && /^\d{4}(-\d{2}){0,2}$/.test(date) ? `about ${date}` : date;
  const periods = several.map(([from, to]) => [
    from === null ? 'unknown' : hedged('from', from),
    to === null ? null : hedged('to', to),
  ]);
  return { used: Array.isArray(used[0]) ? periods : periods[0] };
}

/** What any entry says of itself: where it is from, and whether the page lets it stand. */
const entryOf = (proposal: Proposal) => ({
  ...(proposal.standing && { standing: proposal.standing }),
  sources: [sourceOf(proposal)],
});

/**
 * A maker file's value with proposals written into it. What a page does not say stays away, so that the editor asks for
 * it: nothing is filled in. Entries that are there already are left as they are.
 */
export function draftWith(value: Readonly<Value>, proposals: readonly Proposal[]): Value {
  const of = <K extends Proposal['kind']>(kind: K) => proposals.filter((one): one is Of<K> => one.kind === kind);
  const [stamped] = of('stamped');
  const systems = [...of('code-system').map(systemOf), ...cyclesOf(of('year-letter')), ...numbersOf(of('serial'))];
  const plants = withObserved(added(listOf(value, 'plants'), of('plant').map(plantOf)), of('code-system'));
  const notes = [value.note, ...notesOf(proposals)].filter((note) => typeof note === 'string' && note !== '');
  const next: Value = {
    ...value,
    plants,
    codeSystems: numbered([...listOf(value, 'codeSystems'), ...systems]),
    carriers: added(listOf(value, 'carriers'), of('carrier').map(carrierOf)),
    construction: added(listOf(value, 'construction'), of('construction').map(constructionOf)),
    models: modelsWith(listOf(value, 'models'), of('model')),
    prices: added(listOf(value, 'prices'), of('price').map(priceOf)),
    ...(stamped && value.stamped === undefined && { stamped: stampedOf(stamped) }),
    ...(notes.length > 0 && { note: notes.join('\n').slice(0, 2000) }),
  };
  for (const name of ['plants', 'codeSystems', 'carriers', 'construction', 'models', 'prices'])
    if ((next[name] as unknown[]).length === 0 && value[name] === undefined) delete next[name];
  return next;
}

const plantOf = (plant: Of<'plant'>) => ({
  code: plant.code,
  place: plant.place,
  ...yearsOf(plant.used, plant.about),
  ...(plant.name && { name: plant.name }),
  ...entryOf(plant),
});

const systemOf = (system: Of<'code-system'>) => ({
  id: 'taken',
  ...yearsOf(system.used, system.about),
  layout: system.layout,
  examples: system.examples,
  ...entryOf(system),
});

const stampedOf = (stamped: Of<'stamped'>) => {
  const [from, to] = (
    Array.isArray(stamped.used?.[0]) ? stamped.used[0] : (stamped.used ?? [null, null])
  ) as TakenPeriod;
  return { from, to, ...entryOf(stamped) };
};

const constructionOf = (fact: Of<'construction'>) => ({
  part: fact.part,
  is: fact.is,
  ...(fact.models && { models: fact.models }),
  ...yearsOf(fact.used, fact.about),
  // A page tells what was usual; that it was never otherwise is for the writer to say.
  strength: 'soft',
  ...entryOf(fact),
});

const carrierOf = (carrier: Of<'carrier'>) => ({
  ...(carrier.on && { kind: carrier.on }),
  where: carrier.where,
  ...(carrier.model && { models: [carrier.model] }),
  ...yearsOf(carrier.used, carrier.about),
  ...entryOf(carrier),
});

/** A page that names a price names the one that it was: neither less nor more. */
const priceOf = (price: Of<'price'>) => ({
  ...(price.model && { model: price.model }),
  condition: price.condition,
  least: price.amount,
  most: price.amount,
  currency: price.currency,
  year: price.year,
  ...entryOf(price),
});

const apartFromSources = ({ sources: _, ...rest }: Value): string =>
  JSON.stringify(Object.entries(rest).sort(([a], [b]) => (a < b ? -1 : 1)));

/** A list with entries added; one that says what another says already is one more source of that. */
function added(present: readonly unknown[], more: readonly Value[]): unknown[] {
  const entries = [...present] as Value[];
  const places = new Map(entries.map((entry, at) => [apartFromSources(entry), at]));
  for (const entry of more) {
    const at = places.get(apartFromSources(entry));
    if (at === undefined) {
      places.set(apartFromSources(entry), entries.length);
      entries.push(entry);
    } else {
      const sources = [...new Set([...listOf(entries[at]!, 'sources'), ...listOf(entry, 'sources')])];
      entries[at] = { ...entries[at], sources: sources.slice(0, mostSources) };
    }
  }
  return entries;
}

/** Ids that are taken already get a number behind them. */
function numbered(systems: readonly unknown[]): unknown[] {
  const taken = new Set<string>();
  return systems.map((system) => {
    const { id } = system as { id?: unknown };
    if (typeof id !== 'string') return system;
    let own = id;
    for (let count = 2; taken.has(own); count += 1) own = `${id}-${count}`;
    taken.add(own);
    return own === id ? system : { ...(system as Value), id: own };
  });
}

/**
 * Letters that an example has and no plant is told for, where plants are listed, and a workshop's number in any case, for
 * none is read unlisted: a plant of an unknown place, in the system's years.
 */
function withObserved(plants: readonly unknown[], systems: readonly Of<'code-system'>[]): unknown[] {
  const known = new Set(plants.map((plant) => String((plant as Value).code)));
  const listed = known.size > 0;
  const found = systems.flatMap((system) =>
    system.layout.some((slot) => 'plant' in slot)
      ? system.examples.flatMap(({ code }) => {
          const number = workshopDigits(system.layout, code);
          const own = number ?? (listed ? /\p{Lu}{1,6}/u.exec(code)?.[0] : undefined);
          if (own === undefined || known.has(own)) return [];
          known.add(own);
          return [{ code: own, place: unknownPlace, ...yearsOf(system.used, system.about), ...entryOf(system) }];
        })
      : [],
  );
  return [...plants, ...found];
}

/** Letters by year as cycles: each run of years without a gap or a letter twice is one system. */
function cyclesOf(letters: readonly Of<'year-letter'>[]) {
  const ordered = letters.filter(({ letter }) => /^[A-Z0-9]$/.test(letter)).sort((a, b) => a.year - b.year);
  const runs: Of<'year-letter'>[][] = [];
  for (const one of ordered) {
    const run = runs.at(-1);
    const follows = run && one.year === run.at(-1)!.year + 1 && !run.some(({ letter }) => letter === one.letter);
    if (follows) run.push(one);
    else runs.push([one]);
  }
  return runs.map((run) => ({
    id: 'letters',
    used: [String(run[0]!.year), String(run.at(-1)!.year)],
    layout: [{ year: 'cycle', letters: run.map(({ letter }) => letter).join(''), first: run[0]!.year }],
    examples: run.slice(0, 2).map(({ letter, year }) => ({ code: letter, reads: String(year) })),
    sources: [sourceOf(run[0]!)],
  }));
}

/** Numbers by year as one running number with its table; where the page tells no last number, the next first one ends it. */
function numbersOf(serials: readonly Of<'serial'>[]) {
  const rows = serials.filter(({ made: [from] }) => from !== null).sort((a, b) => a.first - b.first);
  const [first] = rows;
  if (!first) return [];
  const table = rows.map(({ first: start, last, made }, at) => {
    const next = rows[at + 1];
    return { first: start, last: last ?? (next ? Math.max(start, next.first - 1) : null), made };
  });
  const digits = (value: number) => String(value).length;
  const longest = Math.max(...table.map(({ first: start, last }) => digits(last ?? start)));
  const used = [first.made[0], rows.at(-1)!.made[1]];
  const layout = [{ serial: { min: digits(first.first), max: Math.min(12, longest) }, table }];
  const examples = [{ code: String(first.first), reads: String(first.made[0]) }];
  return [{ id: 'numbers', used, layout, examples, sources: [sourceOf(first)] }];
}

/** Models with those that are told; one that is there already stays as it is. */
function modelsWith(present: readonly unknown[], told: readonly Of<'model'>[]): unknown[] {
  const models = [...present] as Value[];
  const same = (name: string) => models.findIndex((model) => String(model.name).toLowerCase() === name.toLowerCase());
  for (const model of told) {
    if (same(model.name) >= 0) continue;
    const { made, size } = model;
    const whole = made?.[0] !== null && made !== undefined;
    models.push({
      name: model.name,
      ...((whole || size) && {
        runs: [
          {
            ...(whole && { made }),
            ...(size && { size: { ...size, tolerance: size.unit === 'mm' ? 5 : size.unit === 'in' ? 0.25 : 0.5 } }),
          },
        ],
      }),
      ...entryOf(model),
    });
  }
  return models;
}

/** What no field of the format holds yet stays as the page says it. */
const notesOf = (proposals: readonly Proposal[]): string[] =>
  proposals
    .filter((one) => one.kind === 'example' || (one.kind === 'year-letter' && !/^[A-Z0-9]$/.test(one.letter)))
    .map(sourceOf);
