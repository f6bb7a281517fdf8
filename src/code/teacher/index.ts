import type { CodeSystem, MakerFile, Plant } from '../../maker/types';
import { readStated, readsAs, readsOf } from '../reads';
import { type Compared, compare, readBriefly, type TellingCode, tellApart } from './apart';
import { type Candidate, isMet, readingsOf } from './candidates';
import type { Work } from './dated';
import { type Explanation, explain } from './explain';
import { type Fact, type KnownCode, readFacts, type Unusable } from './facts';
import { isCoarser, reachOf } from './rivals';
import { isDayUntold, mayBeDays } from './untold-days';

export type { TellingCode } from './apart';
export type { Candidate } from './candidates';
export type { Work } from './dated';
export type { Explanation } from './explain';
export type { KnownCode, Unusable } from './facts';
export { type KnownFault, type KnownRow, readKnownList } from './known-list';
export type { LayoutSays } from './says';

/** An example taken to be wrong, and what the best explanation reads in its code; null when it does not fit. */
export interface Doubted {
  index: number;
  reads: string | null;
}

/**
 * Why it is not settled: `codes`, there are too few codes to tell anything; `none`, nothing explains them; `rivals`, another layout does as
 * well, or would if one more example were wrong; `chance`, as much would fit by chance; `letters`, which letters of
 * a cycle are skipped is a guess; `two`, two examples do not fit, so there may be another system; `day`, what
 * it reads as the day of the month is borne out by no known day; `days`, two figures of what counts as a running number may be the day of the month.
 */
export type OpenReason = 'codes' | 'none' | 'rivals' | 'letters' | 'chance' | 'two' | 'day' | 'days';

export interface Learned {
  /** Explanations that remain, best first; none of them is clearly better than the others. */
  remaining: Explanation[];
  /** Explanations that are much less likely. */
  others: Explanation[];
  /** It is not settled, and why; null when one explanation remains. */
  open: OpenReason | null;
  ambiguous: boolean;
  /** Examples that the best explanation takes to be wrong. */
  doubted: Doubted[];
  /** A further example that would tell the remaining explanations apart. */
  tellingCode: TellingCode | null;
  /** Examples that could not be used, and why. */
  unusable: Unusable[];
}

/** A layout so many bits behind the best (about one in two hundred) no longer counts as open. */
const openBits = 7.5;
/** One that explains as many codes stays open longer: only when it is one in a million it is left out. */
const farBits = 20;
const mostRemaining = 12;
/** Explanations that are compared with each other. */
const mostCompared = 24;
/** One system in so many, found by chance alone, would still be called settled. */
const leastRare = 1 / 1000;
/** Fewest codes that settle anything. */
const leastSettled = 4;

/**
 * Works out a code system from known codes: searches the layouts of the language that explain them, as one system or
 * as an earlier and a later one, with none, one or two of the examples wrong, each at its price; ranks them by
 * simplicity and by how likely chance would make them fit; and says what is still open. Examples are `{ code, reads }`
 * as in a maker file; `reads` may also be in words ("about 1990", "bought 2001"). Separators between letters and
 * digits are learned as they stand; codes of changing length are taken as a fixed part with a running number before or
 * after it. At most `mostSigns` letters and digits. Yields now and then how much it has done, so that it can be run in turns.
 */
export function* learning(examples: readonly KnownCode[]): Generator<Work, Learned> {
  const { facts, unusable } = readFacts(examples);
  const nothing: Learned = {
    remaining: [],
    others: [],
    open: 'codes',
    ambiguous: true,
    doubted: [],
    tellingCode: null,
    unusable,
  };
  const codes = new Set(facts.map(({ bare }) => bare)).size;
  if (codes < 2) return nothing;
  const work: Work = { steps: 0, tried: 0 };
  const ranked = distinct(yield* explain(facts, work));
  const [best] = ranked;
  if (!best) return { ...nothing, open: 'none', ambiguous: false };
  const near = ranked.slice(0, mostCompared);
  const compared = compare(near);
  work.steps += near.length * compared.codes.length;
  yield work;
  const open = differing(near, compared).filter((at) => at === 0 || isOpen(near, compared, at, facts));
  const remaining = open.slice(0, mostRemaining);
  const why = openReason(best, remaining.length, facts);
  return {
    remaining: remaining.map((at) => near[at]!),
    others: ranked.filter((one) => !remaining.includes(near.indexOf(one))).slice(0, mostRemaining),
    open: why,
    ambiguous: why !== null,
    doubted: best.wrong.map((index) => ({ index, reads: doubtedReads(best, examples[index]!.code) })),
    tellingCode: remaining.length > 1 ? tellApart(compared, remaining) : null,
    unusable,
  };
}

/** As `learning`, in one go. */
export function learnSystem(examples: readonly KnownCode[]): Learned {
  const search = learning(examples);
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}

function openReason(best: Explanation, remaining: number, facts: readonly Fact[]): OpenReason | null {
  if (remaining > 1) return 'rivals';
  if (best.eras.some(({ guessed }) => guessed !== '')) return 'letters';
  if (best.wrong.length > 1) return 'two';
  if (best.byChance > leastRare || best.explains.length < leastSettled) return 'chance';
  if (isDayUntold(best, facts)) return 'day';
  return mayBeDays(best, facts) ? 'days' : null;
}

/** Whether an explanation is as good as the best, or would be if one more example were wrong. */
function isOpen(near: readonly Explanation[], { readings }: Compared, at: number, facts: readonly Fact[]): boolean {
  const [best, other] = [near[0]!, near[at]!];
  if (best.score - other.score < openBits) return true;
  if (other.score <= 0 || isCoarser(readings[at]!, readings[0]!)) return false;
  // Two eras that explain no more than one layout does are no rival to it.
  if (other.eras.length > best.eras.length && other.explains.length <= best.explains.length) return false;
  if (other.explains.length >= best.explains.length) return best.score - other.score < farBits;
  const reached = other.explains.length >= best.explains.length - 1;
  return reached && best.score - other.score < reachOf(best, facts.length);
}

/** What the layouts read in a doubted code; a plant that no other code has may be its own. */
const doubtedReads = (best: Explanation, code: string): string | null =>
  readBriefly(best, code) ?? readBriefly({ eras: best.eras.map((era) => ({ ...era, plants: [] })) }, code);

function distinct(ranked: readonly Explanation[]): Explanation[] {
  const seen = new Set<string>();
  return ranked.filter(({ eras }) => {
    const key = JSON.stringify(eras.map(({ layout }) => layout));
    return seen.has(key) ? false : seen.add(key);
  });
}

/** Leaves out explanations that no code would tell from a better one (a month of one digit written in two ways, say). */
function differing(near: readonly Explanation[], { readings }: Compared): number[] {
  const seen = new Set<string>();
  return near.flatMap((_, at) => {
    const key = JSON.stringify(readings[at]);
    if (seen.has(key)) return [];
    seen.add(key);
    return [at];
  });
}

/**
 * Writes what was learned into a maker file: a system for each era, with the examples that it explains, and its
 * plants. Where the code says something else than was known ("about 1990"), the example says what the code says.
 * Plants already on file keep their entry. The file given is not changed.
 */
export function writeLearned(
  file: MakerFile,
  { eras }: Pick<Explanation, 'eras'>,
  examples: readonly KnownCode[],
  id: string,
): MakerFile {
  const onFile = (plant: Plant) => file.plants.some(({ code, place }) => code === plant.code && place === plant.place);
  const systems = eras.map((era, at): CodeSystem => {
    const explained = examples.filter((_, index) => era.explains.includes(index));
    return {
      id: at === 0 ? id : `${id}-later`,
      used: era.used,
      layout: era.layout,
      examples: explained.map(({ code, reads }) => ({ code, reads: exampleReads(era, code, reads) })),
      sources: [`learned from ${explained.length} known codes`],
    };
  });
  const added = eras
    .flatMap(({ plants }) => plants)
    .filter((plant, at, all) => !onFile(plant) && !isListed(all, plant, at));
  const ids = systems.map((system) => system.id);
  const codeSystems = [...file.codeSystems.filter((known) => !ids.includes(known.id)), ...systems];
  return { ...file, plants: [...file.plants, ...added], codeSystems };
}

const isListed = (plants: readonly Plant[], { code, place }: Plant, before: number) =>
  plants.slice(0, before).some((known) => known.code === code && known.place === place);

function exampleReads(era: Candidate, code: string, reads: string): string {
  const stated = readStated(reads);
  const readings = readingsOf(era, code);
  if (!('unknown' in stated) && readings.some((reading) => readsAs(reading, stated))) return reads;
  const met = 'unknown' in stated ? readings[0] : readings.find((reading) => isMet(reading, stated));
  return met ? readsOf(met) : reads;
}
