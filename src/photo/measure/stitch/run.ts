import { median } from '../median';
import { cellAt, type Fold, type Folded, foldRow, likeness, shareOf } from './fold';
import type { Strip } from './strip';
import { type Grounded, grounded, threadMiddle } from './thread';

/** The stitches of a row from its first to its last. */
export interface Run {
  /** Where each begins, samples of the strip, and where the last ends. */
  starts: number[];
  fold: Fold;
  /** Whether no other count fits nearly as well. */
  sure: boolean;
}

/**
 * Where the row begins and ends near its marked points: stitches stand there and none do beyond, or, where it goes on
 * past all that a hand may be off, the hole nearest to the mark.
 */
export function runOf(strip: Strip, fold: Folded, within: number): Run | null {
  const row = grounded(strip, fold);
  const middle = threadMiddle(strip, row) - 0.5;
  const ways = Array.from({ length: phases }, (_, at) => {
    const off = at / phases - Math.round(at / phases);
    const by = middle + off - Math.round(middle + off);
    const moved = { ...row, starts: row.starts.map((start) => start + by * row.pitch) };
    const run = runAt(strip, moved, within);
    return run === null ? [] : { ...run, between: run.between + clearly * (2 * off) ** 2 };
  })
    .flat()
    .sort((one, other) => one.between - other.between);
  const best = ways[0];
  if (best === undefined) return null;
  const alone = ways.every(
    ({ starts, between }) => starts.length === best.starts.length || between > best.between + clearly / 2,
  );
  return { ...best, sure: best.sure && alone };
}

/** Places in a stitch at which a row may be parted. */
const phases = 8;

/**
 * By how much less the stitches at the ends must lie between being there and not, for a row to be parted in the middle of
 * its threads rather than between them. Found on drawn rows.
 */
const clearly = 0.2;

/** Half a stitch at either end is none: from this share on it counts. Found on drawn rows, marked by a hand. */
const leastThere = 0.6;

type Parted = Run & {
  /** How far the stitches at the ends, and what lies beyond them, are from being wholly there or not at all, and the ends from the marks. */
  between: number;
};

function runAt(strip: Strip, fold: Grounded, within: number): Parted | null {
  const { pitch, swell } = fold;
  const own = fold.starts.length - 1;
  const laid = foldRow(strip, fold.starts, fold.reach);
  const startAt = (cell: number): number => {
    const share = cell / own;
    return fold.starts[0]! + pitch * (cell + swell * own * (share * share - share) * 0.5);
  };
  const extra = Math.floor(strip.before / pitch) + 1;
  const cells: { start: number; end: number }[] = [];
  for (let cell = -extra; cell < own + extra; cell++) {
    const [start, end] = [startAt(cell), startAt(cell + 1)];
    if (start >= -pitch * 0.1 && end <= strip.width + pitch * 0.1) cells.push({ start, end });
  }
  const there = presence(strip, fold, laid, cells);
  const gain = there.map((share) => (Math.max(-0.3, Math.min(1.1, share)) - leastThere) * 7);
  const sums = [0];
  for (const value of gain) sums.push(sums.at(-1)! + value);
  const spread = Math.max(1.5, within * 0.6);
  const [begin, finish] = [strip.before, strip.before + strip.length];
  const off = (place: number, mark: number): number => ((place - mark) / spread) ** 2 / 2;
  // Pitches by which an end lies farther from its mark than a hand is off.
  const beyond = (away: number): number => Math.max(0, Math.abs(away) - within) / pitch;
  const ranked: { i: number; j: number; worth: number }[] = [];
  for (let i = 0; i < cells.length; i++) {
    for (let j = i + 1; j < cells.length; j++)
      ranked.push({ i, j, worth: sums[j + 1]! - sums[i]! - off(cells[i]!.start, begin) - off(cells[j]!.end, finish) });
  }
  ranked.sort((a, b) => b.worth - a.worth);
  const top = ranked[0];
  if (top === undefined) return null;
  let { i, j } = top;
  const rival = ranked.find((other) => other.j - other.i !== j - i);
  let sure = rival === undefined || top.worth - rival.worth > 3;
  const nearest = (mark: number, of: 'start' | 'end'): number =>
    cells.reduce((least, cell, at) => (Math.abs(cell[of] - mark) < Math.abs(cells[least]![of] - mark) ? at : least), 0);
  if (cells[i]!.start < begin - within * 1.25 && (there[i - 1] ?? 1) > 0.5) {
    i = nearest(begin, 'start');
    sure = false;
  }
  if (cells[j]!.end > finish + within * 1.25 && (there[j + 1] ?? 1) > 0.5) {
    j = nearest(finish, 'end');
    sure = false;
  }
  if (j < i) return null;
  return {
    starts: [...cells.slice(i, j + 1).map(({ start }) => start), cells[j]!.end],
    fold: laid,
    sure,
    between:
      [i - 1, i, j, j + 1].reduce((sum, cell) => sum + halfThere(there[cell] ?? 0) ** 2, 0) +
      beyond(cells[i]!.start - begin) ** 2 +
      beyond(cells[j]!.end - finish) ** 2,
  };
}

/** How far a share is from both none and all. */
const halfThere = (share: number): number => Math.max(0, Math.min(share, 1 - share));

/**
 * How far a stitch stands in each cell, 1 as the row's own do on the average and 0 as the ground: half by the likeness of
 * its drawing to theirs, half by how far it leaves the ground as theirs do.
 */
function presence(
  strip: Strip,
  fold: Grounded,
  laid: Fold,
  cells: readonly { start: number; end: number }[],
): number[] {
  const usual = Math.max(0.2, median(laid.alike));
  const drawn = cells.map(({ start, end }) => {
    const cell = cellAt(strip, start, end, fold.reach, laid.rows, laid.means);
    // Half a stitch is more than half alike, and holds half of the drawing.
    return Math.min(likeness(cell, laid.common) / usual, shareOf(cell, laid.common));
  });
  const near = Math.max(1, fold.pitch * 0.16);
  const { ground } = fold;
  const core = foldRow(strip, fold.starts, near);
  const level = new Float64Array(core.rows).fill(ground);
  const standing = core.common.map((value, at) => value + core.means[Math.floor(at / core.columns)]! - ground);
  return cells.map(({ start, end }, place) => {
    const cell = cellAt(strip, start, end, near, core.rows, level);
    return [drawn[place]!, shareOf(cell, standing)].reduce((sum, share) => sum + held(share) / 2, 0);
  });
}

/** What stands out of a row by shine or shade counts no more than any other. */
const held = (share: number): number => Math.max(-0.5, Math.min(1.2, share));
