import { type Cells, everyCell } from './cells';

/** Steps of the search for conflicts of any size before it falls back to conflicts of two and three pieces. */
const mostSteps = 20_000;
/** Conflicts that are listed at most; 60 pieces that all stand against each other make 1,770. */
const mostConflicts = 2_000;

export interface MinimalConflicts {
  /** Numbers of the pieces, ascending in each. */
  sets: number[][];
  complete: boolean;
}

/**
 * All minimal sets of pieces that leave no cell: the minimal covers of the cells by what the pieces forbid. With
 * plain intervals these are pairs (Helly's theorem in one dimension); unions of intervals and of places can need
 * three or more. The search (Murakami and Uno's MMCS, Discrete Applied Mathematics 170, 2014: branch on the cell
 * that the fewest pieces forbid, keep only sets in which each piece alone forbids some cell) is exact; their number
 * can grow without bound, so beyond `mostSteps` or `mostConflicts` the conflicts of one to three pieces are given, up
 * to `mostConflicts` and in order of the pieces, and `complete` is false.
 */
export function minimalConflicts({ count, allowed }: Cells): MinimalConflicts {
  const every = everyCell(count);
  const forbids = allowed.map((bits) => every & ~bits);
  if (forbids.reduce((all, bits) => all | bits, 0n) !== every) return { sets: [], complete: true };
  const found = searchCovers(forbids, every, count);
  return found
    ? { sets: found, complete: true }
    : { sets: smallConflicts(allowed).slice(0, mostConflicts), complete: false };
}

function searchCovers(forbids: readonly bigint[], every: bigint, count: number): number[][] | null {
  const byCell = Array.from({ length: count }, (_, cell) =>
    forbids.map((_, piece) => piece).filter((piece) => (forbids[piece]! >> BigInt(cell)) & 1n),
  );
  const found: number[][] = [];
  const candidate = forbids.map(() => true);
  let steps = 0;
  const search = (chosen: number[], critical: bigint[], left: bigint): boolean => {
    steps += 1;
    if (steps > mostSteps || found.length > mostConflicts) return false;
    if (left === 0n) {
      found.push([...chosen].sort((a, b) => a - b));
      return true;
    }
    const branch = fewest(byCell, left, candidate);
    for (const piece of branch) candidate[piece] = false;
    for (const piece of branch) {
      const kept = critical.map((bits) => bits & ~forbids[piece]!);
      const fits = kept.every((bits) => bits !== 0n);
      if (fits && !search([...chosen, piece], [...kept, left & forbids[piece]!], left & ~forbids[piece]!)) return false;
      candidate[piece] = true;
    }
    return true;
  };
  return search([], [], every) ? found : null;
}

/** The candidates that forbid the uncovered cell which the fewest forbid. */
function fewest(byCell: readonly number[][], left: bigint, candidate: readonly boolean[]): number[] {
  let best: number[] | null = null;
  for (const [cell, pieces] of byCell.entries()) {
    if (!((left >> BigInt(cell)) & 1n)) continue;
    const open = pieces.filter((piece) => candidate[piece]);
    if (!best || open.length < best.length) best = open;
    if (best.length === 0) break;
  }
  return best ?? [];
}

/** Every minimal conflict of one, two or three pieces, by looking at them all. */
function smallConflicts(allowed: readonly bigint[]): number[][] {
  const sets: number[][] = allowed.flatMap((bits, piece) => (bits === 0n ? [[piece]] : []));
  const triples: number[][] = [];
  for (let a = 0; a < allowed.length; a += 1) {
    for (let b = a + 1; b < allowed.length; b += 1) {
      const both = allowed[a]! & allowed[b]!;
      if (allowed[a] === 0n || allowed[b] === 0n) continue;
      if (both === 0n) {
        sets.push([a, b]);
        continue;
      }
      for (let c = b + 1; c < allowed.length; c += 1) {
        const apart = (allowed[a]! & allowed[c]!) === 0n || (allowed[b]! & allowed[c]!) === 0n;
        if (!apart && (both & allowed[c]!) === 0n) triples.push([a, b, c]);
      }
    }
  }
  return [...sets, ...triples];
}
