import { type Cells, everyCell } from './cells';

/** Steps of the search for conflicts of any size before it falls back to conflicts of two and three pieces. */
const mostSteps = 20_000;
/** Conflicts that are listed at most; 60 pieces that all stand against each other make 1,770. */
const mostConflicts = 2_000;
/** Looking at every three of more pieces than this would take seconds; so many come only from hostile pages. */
const mostForTriples = 200;

export interface MinimalConflicts {
  /** Numbers of the pieces, ascending in each. */
  sets: number[][];
  complete: boolean;
}

/**
 * All minimal sets of pieces that leave no cell: the minimal covers of the cells by what the pieces forbid. With
 * plain intervals these are pairs (Helly's theorem in one dimension); unions of intervals and of places can need
 * three or more. The search (Murakami and Uno's MMCS, Discrete Applied Mathematics 170, 2014: branch on a cell that few
 * pieces forbid, keep only sets in which each piece alone forbids some cell) is exact; their number
 * can grow without bound, so beyond `mostSteps` or `mostConflicts` the conflicts of one to three pieces are given with
 * those larger ones that were found by then, up to `mostConflicts`, and `complete` is false.
 */
export function minimalConflicts({ count, allowed }: Cells): MinimalConflicts {
  const every = everyCell(count);
  const forbids = allowed.map((bits) => every & ~bits);
  if (forbids.reduce((all, bits) => all | bits, 0n) !== every) return { sets: [], complete: true };
  const { found, complete } = searchCovers(forbids, every, count);
  if (complete) return { sets: found, complete };
  const small = smallConflicts(allowed);
  return { sets: [...small, ...found.filter((set) => set.length > 3)].slice(0, mostConflicts), complete };
}

function searchCovers(
  forbids: readonly bigint[],
  every: bigint,
  count: number,
): { found: number[][]; complete: boolean } {
  const byCell = Array.from({ length: count }, (_, cell) =>
    forbids.map((_, piece) => piece).filter((piece) => (forbids[piece]! >> BigInt(cell)) & 1n),
  );
  // The search may branch on any cell that is left; the fewer pieces forbid it, the fewer branches.
  const order = byCell.map((_, cell) => cell).sort((a, b) => byCell[a]!.length - byCell[b]!.length);
  const found: number[][] = [];
  const candidate = forbids.map(() => true);
  let steps = 0;
  const search = (chosen: number[], critical: bigint[], left: bigint): boolean => {
    steps += 1;
    if (steps > mostSteps) return false;
    if (left === 0n) {
      if (found.length === mostConflicts) return false;
      found.push([...chosen].sort((a, b) => a - b));
      return true;
    }
    const cell = order.find((one) => (left >> BigInt(one)) & 1n)!;
    const branch = byCell[cell]!.filter((piece) => candidate[piece]);
    for (const piece of branch) candidate[piece] = false;
    for (const piece of branch) {
      const kept = critical.map((bits) => bits & ~forbids[piece]!);
      const fits = kept.every((bits) => bits !== 0n);
      if (fits && !search([...chosen, piece], [...kept, left & forbids[piece]!], left & ~forbids[piece]!)) return false;
      candidate[piece] = true;
    }
    return true;
  };
  return { complete: search([], [], every), found };
}

/** Minimal conflicts of one, two and three pieces by looking at them all, in this order, up to `mostConflicts`. */
function smallConflicts(allowed: readonly bigint[]): number[][] {
  const sets: number[][] = allowed.flatMap((bits, piece) => (bits === 0n ? [[piece]] : []));
  const open = allowed.map((_, piece) => piece).filter((piece) => allowed[piece] !== 0n);
  for (const [at, a] of open.entries()) {
    for (const b of open.slice(at + 1)) if ((allowed[a]! & allowed[b]!) === 0n) sets.push([a, b]);
    if (sets.length >= mostConflicts) return sets;
  }
  if (open.length > mostForTriples) return sets;
  for (const [at, a] of open.entries()) {
    const later = open.slice(at + 1);
    for (const [next, b] of later.entries()) {
      const both = allowed[a]! & allowed[b]!;
      if (both === 0n) continue;
      for (const c of later.slice(next + 1)) {
        const apart = (allowed[a]! & allowed[c]!) === 0n || (allowed[b]! & allowed[c]!) === 0n;
        if (!apart && (both & allowed[c]!) === 0n) sets.push([a, b, c]);
      }
      if (sets.length >= mostConflicts) return sets;
    }
  }
  return sets;
}
