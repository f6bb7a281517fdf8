import { type Cells, piecesByCell } from './cells';

/**
 * How much a set of pieces weighs: different facts first, then hard ones; what is said twice is not more. What only
 * follows from a reading (when its system and its plant were in use) weighs nothing: it falls with the reading.
 */
export interface PieceWeight {
  basis: string;
  hard: boolean;
  follows: boolean;
}

const piecesOf = (bits: bigint, count: number): number[] =>
  Array.from({ length: count }, (_, piece) => piece).filter((piece) => (bits >> BigInt(piece)) & 1n);

function weightOf(pieces: readonly number[], weights: readonly PieceWeight[]): [number, number] {
  const weighing = pieces.map((piece) => weights[piece]!).filter(({ follows }) => !follows);
  const countOf = (some: readonly PieceWeight[]) => new Set(some.map(({ basis }) => basis)).size;
  return [countOf(weighing), countOf(weighing.filter(({ hard }) => hard))];
}

const heavier = (a: readonly number[], b: readonly number[]): number => {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at < 0 ? 0 : a[at]! - b[at]!;
};

/**
 * The largest sets of pieces (as their numbers) that hold together: every maximal set is what allows one cell of
 * time and one cell of ground, so all of them are looked at. Largest by different facts, then by hard ones; all
 * that are equal in this are given, in the order of time, but none that is a part of another one given. What follows
 * from a reading is in no set without it, or it would narrow the dates of what speaks against the reading. Work: cells
 * of time × cells of ground, and the square of the sets given.
 */
export function largestAgreeing(dates: Cells, places: Cells, weights: readonly PieceWeight[]): number[][] {
  const candidates = new Set<bigint>();
  const grounds = piecesByCell(places);
  const standing = standingIn(weights);
  for (const when of piecesByCell(dates)) for (const where of grounds) candidates.add(standing(when & where));
  candidates.delete(0n);
  let best: [number, number] = [0, 0];
  let sets: bigint[] = [];
  for (const bits of candidates) {
    const weight = weightOf(piecesOf(bits, weights.length), weights);
    const order = heavier(weight, best);
    if (order > 0) {
      best = weight;
      sets = [];
    }
    if (order >= 0) sets.push(bits);
  }
  return sets
    .filter((bits) => !sets.some((other) => other !== bits && (other & bits) === bits))
    .map((bits) => piecesOf(bits, weights.length));
}

/** Takes out of a set what follows from a reading that is not in it; where no reading says anything, it stands. */
function standingIn(weights: readonly PieceWeight[]): (bits: bigint) => bigint {
  const readings = new Map<string, bigint>();
  for (const [piece, { basis, follows }] of weights.entries())
    if (!follows) readings.set(basis, (readings.get(basis) ?? 0n) | (1n << BigInt(piece)));
  const following = weights.flatMap(({ basis, follows }, piece) => {
    const from = readings.get(basis);
    return follows && from !== undefined ? [{ bit: 1n << BigInt(piece), from }] : [];
  });
  return (bits) => following.reduce((left, { bit, from }) => ((bits & from) === 0n ? left & ~bit : left), bits);
}
