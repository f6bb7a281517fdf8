import type { Decoding, Reading } from '../code/types';
import type { Source } from '../source';
import { type Span, unionOf } from '../span';
import { bareCode } from './bare-code';
import { evidenceId } from './ids';
import { makerDates, ownTime } from './room';
import type { Dating, OwnTime } from './types';

/**
 * What the accepted codes say. All likely readings of one code are alternatives: the evidence allows any of their dates and
 * any of their places (not which date goes with which place, so it allows rather more than the code does, never less),
 * and says nothing of what one reading leaves open. A code gives up to three statements: what it
 * reads, when its code system was in use, and when its plant was. All share one basis, however many photos show it.
 *
 * Hard when the code was seen in a photo or typed by the user and every reading follows a system of the maker that the
 * listing states, undisputed as its plant; a code that the listing only quotes, a reading by the shape of a code alone, and one under the file
 * of a maker that nobody named are soft.
 */
export function fromDecodings(decodings: readonly Decoding[], maker: string | null): Dating[] {
  return decodings
    .filter(({ accepted }) => accepted)
    .map((decoding) => ({ ...decoding, readings: readingsThatCount(decoding, maker) }))
    .filter(({ readings }) => readings.length > 0)
    .flatMap((decoding) =>
      [reading(decoding, maker), system(decoding, maker), plant(decoding, maker)].filter((piece) => piece !== null),
    );
}

/** A reading counts beside the best one from a tenth of its probability on: a rule that does not fit all of them is not broken. */
const besideBest = 0.1;

/** The likely of the readings, best first as they come. */
export function likelyReadings<R extends Pick<Reading, 'probability'>>(readings: readonly R[]): R[] {
  const best = Math.max(0, ...readings.map(({ probability }) => probability));
  return readings.filter(({ probability }) => probability >= best * besideBest);
}

/** Among shapes that no file stands behind, how usual each is tells little: a date that one of them gives is possible. */
const leastByShape = 0.02;
/** Three digits have a date in them by any shape. */
const fewestByShape = 4;

/** The readings of a code that count, best first: those by the stated maker's own systems stand before all others. */
export function readingsThatCount(
  { readings, code, from }: Pick<Decoding, 'readings' | 'code' | 'from'>,
  maker: string | null,
): Reading[] {
  const own = readings.filter((one) => one.system.maker === maker);
  const judged = own.length > 0 ? own : readings;
  if (judged.some(({ system: { maker: of } }) => of !== null)) return likelyReadings(judged);
  // What was typed is no other letter: by a shape alone nothing says that a writer mistook one.
  const asWritten = from.kind === 'photo' ? judged : judged.filter(({ text }) => bareCode(text) === bareCode(code));
  return asWritten.filter(
    ({ text, probability }) => probability >= leastByShape && bareCode(text).length >= fewestByShape,
  );
}

const codeText = (decoding: Decoding) => decoding.readings[0]?.text ?? decoding.code;

const codeSource: Record<Decoding['from']['kind'], Source> = {
  photo: { kind: 'photo' },
  typed: { kind: 'user', as: 'code' },
  claim: { kind: 'listing', field: 'code' },
};

function common(decoding: Decoding, maker: string | null) {
  const ofMaker =
    maker !== null &&
    decoding.readings.every(({ system, plant: at }) => system.maker === maker && !system.soft && !at?.soft);
  return {
    basis: `code:${bareCode(codeText(decoding))}`,
    strength: ofMaker && decoding.from.kind !== 'claim' ? ('hard' as const) : ('soft' as const),
  };
}

function dated(decoding: Decoding, maker: string | null, spans: Span[]) {
  const { basis, strength } = common(decoding, maker);
  return { basis, ...makerDates(spans, strength) };
}

/** What each reading gives, or null as soon as one gives nothing: that one then allows everything. */
function alternatives<T>(readings: readonly Reading[], of: (reading: Reading) => readonly T[]): T[] | null {
  const given = readings.map(of);
  return given.some((values) => values.length === 0) ? null : given.flat();
}

/** By what it is read where that is not the stated maker's own file: the shape of a code alone first, then files. */
function byWhom({ readings }: Decoding, maker: string | null): { maker: string | null; invented: boolean }[] {
  const others = readings.map(({ system }) => system).filter((system) => system.maker !== maker || maker === null);
  const ways = new Map(
    others.map((system) => [system.maker, { maker: system.maker, invented: system.invented ?? false }]),
  );
  return [...ways.values()].sort((a, b) => Number(a.maker !== null) - Number(b.maker !== null));
}

/** The maker file, with the source that it gives for what was taken from it. */
const ruleBook = (decoding: Decoding, own: (reading: Reading) => string | undefined): Source => {
  const { maker = null, invented } = decoding.readings[0]?.system ?? {};
  if (maker === null) return { kind: 'practice', text: 'common practice, no source' };
  const sources = [...new Set(decoding.readings.map(own).filter((source) => source !== undefined))];
  return { kind: 'maker-file', maker, invented: invented ?? false, part: null, sources };
};

function reading(decoding: Decoding, maker: string | null): Dating | null {
  const spans = unionOf(alternatives(decoding.readings, (one) => (one.span ? [one.span] : [])) ?? []);
  const places = [...new Set(alternatives(decoding.readings, (one) => one.places) ?? [])];
  if (spans.length === 0 && places.length === 0) return null;
  return {
    id: evidenceId.reading(decoding.id),
    about: spans.length === 0 ? 'place' : places.length === 0 ? 'date' : 'date-and-place',
    from: { kind: 'reading', id: decoding.id },
    ...common(decoding, maker),
    spans,
    places,
    ownTime: ownTimes(decoding.readings),
    says: { kind: 'code', from: decoding.from.kind, code: codeText(decoding), by: byWhom(decoding, maker) },
    source: codeSource[decoding.from.kind],
  };
}

/**
 * Reading by reading: what one system gives is not saved by the years of another. Nothing is told where a reading has no
 * date, and nothing of plants where one has none.
 */
function ownTimes(readings: readonly Reading[]): NonNullable<Dating['ownTime']> {
  const stand = (usedBy: (reading: Reading) => readonly Span[]): OwnTime | null => {
    const dated = readings.flatMap((one) => {
      const used = usedBy(one);
      return one.span && used.length > 0 ? [{ span: one.span, used }] : [];
    });
    return dated.length < readings.length ? null : ownTime(dated);
  };
  return { system: stand(timesOfSystem), plant: stand((one) => one.plant?.used ?? []) };
}

/** When the system of a reading was in use, exceptions too. */
const timesOfSystem = ({ systemUsed, systemExcepted = [] }: Pick<Reading, 'systemUsed' | 'systemExcepted'>): Span[] => [
  systemUsed,
  ...systemExcepted,
];

/** Whether a reading may be that of its own system at all: without a date nothing speaks against it. */
export const isInOwnTime = ({ span, ...system }: Pick<Reading, 'span' | 'systemUsed' | 'systemExcepted'>): boolean =>
  span === null || ownTime([{ span, used: timesOfSystem(system) }]) === 'within';

/** Whether what was in use for a time was so at one of these dates. */
export const inUseAt = (used: Span, spans: readonly Span[]): boolean =>
  ownTime(spans.map((span) => ({ span, used: [used] }))) === 'within';

function system(decoding: Decoding, maker: string | null): Dating | null {
  // A shape without a maker was in use whenever somebody used it: that dates nothing.
  if (decoding.readings.some(({ system: { maker: of } }) => of === null)) return null;
  const spans = unionOf(decoding.readings.flatMap(timesOfSystem));
  if (spans.some((span) => span.from === null && span.to === null)) return null;
  return {
    id: evidenceId.system(decoding.id),
    about: 'date',
    from: { kind: 'system', id: decoding.id },
    ...dated(decoding, maker, spans),
    places: [],
    says: { kind: 'system', code: codeText(decoding) },
    source: ruleBook(decoding, (one) => one.system.source),
  };
}

function plant(decoding: Decoding, maker: string | null): Dating | null {
  const used = alternatives(decoding.readings, (one) => one.plant?.used ?? []);
  if (used === null) return null;
  const spans = unionOf(used);
  if (spans.some((span) => span.from === null && span.to === null)) return null;
  return {
    id: evidenceId.plant(decoding.id),
    about: 'date',
    from: { kind: 'plant', id: decoding.id },
    ...dated(decoding, maker, spans),
    places: [],
    says: { kind: 'plant', plants: [...new Set(decoding.readings.map((one) => one.plant?.code ?? ''))] },
    source: ruleBook(decoding, (one) => one.plant?.source),
  };
}
