import { type Cells, dateCells, everyCell, placeCells } from './cells';
import type { Explanation } from './reasoning-types';
import { canBeHard, onlyHardPlaces, withHardReach, withReach } from './room';
import { stretchOf } from './stretch';
import type { Dating } from './types';

/**
 * The single facts that, if wrong, leave everything else in agreement. A fact is a basis with all its evidence: when
 * the code is misread, its reading, its system and its plant go together. When no one fact explains all the evidence,
 * the same is asked of the hard evidence alone. Facts that are easiest to be wrong come first: soft before hard,
 * the seller's statements before what was read.
 */
export function explain(evidence: readonly Dating[]): Explanation[] {
  const overAll = singleFacts(evidence, withReach(evidence), 'all');
  if (overAll.length > 0) return overAll;
  const hard = evidence.filter(canBeHard);
  return singleFacts(hard, onlyHardPlaces(withHardReach(hard)), 'hard');
}

/** `roomy` is the same evidence with the dates that it is given here. */
function singleFacts(evidence: readonly Dating[], roomy: readonly Dating[], rest: Explanation['rest']) {
  if (evidence.length === 0 || stretchOf(roomy)) return [];
  const bases = new Set(evidence.map((piece) => piece.basis));
  const byDate = factsInTheWay(evidence, dateCells(roomy));
  const byPlace = factsInTheWay(evidence, placeCells(roomy));
  const alone = [...bases].filter((basis) => byDate(basis) && byPlace(basis));
  const found = alone.flatMap((basis) => {
    const pieces = evidence.filter((piece) => piece.basis === basis);
    const without = (some: readonly Dating[]) => some.filter((piece) => piece.basis !== basis);
    const others = without(evidence);
    // Where the rest holds only with its room, that is what it allows.
    const stretch = others.length > 0 ? (stretchOf(others) ?? stretchOf(without(roomy))) : null;
    if (!stretch) return [];
    const order =
      Number(pieces.some(({ strength }) => strength === 'hard')) * 2 + Number(pieces[0]!.from.kind !== 'claim');
    const explanation: Explanation = { basis, evidence: pieces.map(({ id }) => id), rest, ...stretch };
    return [{ order, explanation }];
  });
  return found.sort((a, b) => a.order - b.order).map(({ explanation }) => explanation);
}

/**
 * Which facts leave some cell to all the rest when they are left out: those that are alone in the way of a cell. One
 * look at every cell answers it for all facts.
 */
function factsInTheWay(evidence: readonly Dating[], { count, allowed }: Cells): (basis: string) => boolean {
  const alone = new Set<string>();
  const forbids = allowed.map((bits) => everyCell(count) & ~bits);
  for (let cell = 0; cell < count; cell += 1) {
    const inTheWay = new Set<string>();
    for (const [piece, bits] of forbids.entries()) {
      if ((bits >> BigInt(cell)) & 1n) inTheWay.add(evidence[piece]!.basis);
      if (inTheWay.size > 1) break;
    }
    if (inTheWay.size === 0) return () => true;
    if (inTheWay.size === 1) alone.add([...inTheWay][0]!);
  }
  return (basis) => alone.has(basis);
}
