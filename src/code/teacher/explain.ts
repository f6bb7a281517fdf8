import { type Built, build, type Candidate } from './candidates';
import { type Dated, datedWritings, hasOwnFrame, type Work } from './dated';
import { pairsOfEras } from './eras';
import type { Fact } from './facts';
import { type Frame, framesOf } from './frame';
import { serialTable } from './serial-table';

/** One way to explain a list of known codes: one system, or an earlier and a later one; and the codes it cannot. */
export interface Explanation {
  /** One layout, or two in order of time. */
  eras: Candidate[];
  /** Indexes of the examples that it explains, and of those that it takes to be wrong. */
  explains: number[];
  wrong: number[];
  /** Bits of agreement less bits of choice: higher is better. */
  score: number;
  /** How many of all the layouts tried would be expected to explain as much by chance. */
  byChance: number;
}

/** Fewest codes that are a system of their own: two fit some layout nearly always. */
export const leastOf = (codes: number): number => (codes < 6 ? 2 : Math.max(3, Math.ceil(codes / 10)));

/** Most examples that are taken to be wrong: none of three, one of seven, two of more. */
const mostWrong = (codes: number): number => (codes < 4 ? 0 : codes < 8 ? 1 : 2);

/**
 * Bits that wrong examples cost: which ones they are, and that they are rare. In lists as people write them one in
 * three has a slip: our own estimate, from trying it.
 */
export const wrongCost = (codes: number, wrong: number): number =>
  wrong === 0 ? 0 : log2Choose(codes, wrong) + 4 + (wrong - 1) * 5;

/** Bits that a second era costs, beside its own layout: that there is one, and where it begins. */
export const eraCost = (codes: number): number => 3 + Math.log2(Math.max(2, codes - 1));

const log2Choose = (of: number, some: number): number => {
  let bits = 0;
  for (let step = 0; step < some; step++) bits += Math.log2((of - step) / (step + 1));
  return bits;
};

/** Layouts of one era, and pairs of eras, that are built and tried with the decoder. */
const mostBuilt = 60;
const mostPairs = 50;
/** What building one costs, in steps of comparison. */
const buildSteps = 200;

interface Found {
  built: Built[];
  /** Layouts tried, in bits. */
  tried: number;
}

/** Every explanation of the codes, best first. Yields as often as it has done a little work, and says how much. */
export function* explain(facts: readonly Fact[], work: Work): Generator<Work, Explanation[]> {
  const [count, wrong] = [facts.length, mostWrong(facts.length)];
  const least = Math.min(leastOf(count), count);
  const frames = framesOf(facts, least);
  const dated: Dated[] = [];
  for (const frame of frames) dated.push(...(yield* datedWritings(frame, count, least, work)));
  const found: Found[] = [];
  const tries = () => Math.log2(Math.max(1, work.tried));
  for (const one of bestSingle(dated, count, wrong)) {
    found.push({
      built: [
        build(
          one,
          agreeing(one, () => true),
        ),
      ],
      tried: tries(),
    });
    work.steps += buildSteps * count;
    yield work;
  }
  for (const frame of frames) {
    const table = serialTable(frame, wrong);
    if (table) found.push({ built: [table], tried: 1 });
  }
  if (count >= 2 * least) {
    const pairs = yield* pairsOfEras(dated, facts, { least, wrong, most: mostPairs, work });
    for (const { early, late, isEarly, isLate } of pairs) {
      const built = [build(early, agreeing(early, isEarly)), build(late, agreeing(late, isLate))];
      found.push({ built, tried: 2 * tries() + Math.log2(count) });
      work.steps += 2 * buildSteps * count;
      yield work;
    }
  }
  return found
    .map((one) => explanationOf(one, facts))
    .filter((one) => one.wrong.length <= wrong && one.eras.every(({ explains }) => explains.length >= least))
    .sort((a, b) => b.score - a.score);
}

const agreeing = ({ frame, bits }: Dated, isOf: (order: number) => boolean): Frame['facts'] =>
  frame.facts.filter(({ order }) => bits[order] !== null && isOf(order));

function bestSingle(dated: readonly Dated[], count: number, wrong: number): Dated[] {
  return dated
    .flatMap((one) => {
      const agreed = one.bits.filter((bits) => bits !== null);
      const missed = count - agreed.length;
      if (missed > wrong || !hasOwnFrame(one, () => true)) return [];
      return [{ one, score: agreed.reduce((sum, bits) => sum + bits, 0) - one.cost - wrongCost(count, missed) }];
    })
    .sort((a, b) => b.score - a.score)
    .slice(0, mostBuilt)
    .map(({ one }) => one);
}

function explanationOf({ built, tried }: Found, facts: readonly Fact[]): Explanation {
  const eras = built.map(({ candidate }) => candidate);
  const explained = new Set(eras.flatMap(({ explains }) => explains));
  const explains = [...explained].sort((a, b) => a - b);
  const wrong = facts.flatMap(({ index }) => (explained.has(index) ? [] : [index])).sort((a, b) => a - b);
  const count = facts.length;
  const choice = wrongCost(count, wrong.length) + (eras.length > 1 ? eraCost(count) : 0);
  const score = built.reduce((sum, one) => sum + one.score, 0) - choice;
  const bits = built.reduce((sum, one) => sum + one.bits, 0);
  const expected = tried + log2Choose(count, wrong.length) - bits;
  return { eras, explains, wrong, score, byChance: 2 ** Math.max(-1000, Math.min(60, expected)) };
}
