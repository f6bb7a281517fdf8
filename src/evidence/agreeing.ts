import { type Cells, piecesByCell } from './cells';

/**
 * How much a set of pieces weighs: different facts first, then hard pieces, then pieces. What only follows from a
 * reading (when its system and its plant were in use) weighs nothing: where the reading is wrong, it falls with it.
 */
export interface PieceWeight {
  basis: string;
  hard: boolean;
  follows: boolean;
}

const piecesOf = (bits: bigint, count: number): number[] =>
  Array.from({ length: count }, (_, piece) => piece).filter((piece) => (bits >> BigInt(piece)) & 1n);

function weightOf(pieces: readonly number[], weights: readonly PieceWeight[]): [number, number, number] {
  const weighing = pieces.map((piece) => weights[piece]!).filter(({ follows }) => !follows);
  return [
    new Set(weighing.map(({ basis }) => basis)).size,
    weighing.filter(({ hard }) => hard).length,
    weighing.length,
  ];
}

const heavier = (a: readonly number[], b: readonly number[]): number => {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at < 0 ? 0 : a[at]! - b[at]!;
};

/**
 * The largest sets of pieces (as their numbers) that hold together: every maximal set is what allows one cell of
 * time and one cell of ground, so all of them are looked at. Largest by different facts, then by hard pieces, then
 * by pieces; all that are equal in this are given, in the order of time. Work: cells of time × cells of ground.
 */
export function largestAgreeing(dates: Cells, places: Cells, weights: readonly PieceWeight[]): number[][] {
  const candidates = new Set<bigint>();
  const grounds = piecesByCell(places);
  for (const when of piecesByCell(dates)) for (const where of grounds) candidates.add(when & where);
  candidates.delete(0n);
  let best: [number, number, number] = [0, 0, 0];
  let sets: number[][] = [];
  for (const bits of candidates) {
    const pieces = piecesOf(bits, weights.length);
    const weight = weightOf(pieces, weights);
    const order = heavier(weight, best);
    if (order > 0) {
      best = weight;
      sets = [];
    }
    if (order >= 0) sets.push(pieces);
  }
  return sets;
}
