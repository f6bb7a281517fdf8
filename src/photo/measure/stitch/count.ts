import type { GreyImage, Point } from '../../types';
import { mean } from '../mean';
import { besideOf, unrestBeside } from './beside';
import { type Fold, type Folded, foldRow, startsOf } from './fold';
import { findRows, leastPitch, type Row } from './row';
import { type Run, runOf } from './run';
import { type Strip, stripAlong } from './strip';
import { isSewn } from './thread';

/** A row of stitches as it was found at a marked line. */
export interface Stitches {
  count: number;
  /** How many it may be off. */
  countWithin: number;
  pitch: number;
  pitchWithin: number;
  /** First hole and last. */
  ends: [Point, Point];
  /** Each hole from first to last, samples of the strip. */
  holes: readonly number[];
  strip: Strip;
  fold: Folded;
  /** What the decision rested on: likeness of the stitches to each other, and how much of it goes on beside them. */
  likeness: number;
  beside: number;
}

/**
 * Least likeness of the stitches to each other, by how many there are (few must be more alike), how much of it may go on
 * beside them (`cloth`: before the row is looked at closely), the share of them that may be alike in nothing, and how
 * many may be skipped where so many others are so much alike, how
 * restless the ground may be beside them (by how many there are), by how much less they may be alike once the row is
 * parted, and likeness from which they are no stairs of pixels. Found on drawn rows, and on photographs of number plates,
 * where letters stand in rows.
 */
const limits = {
  alike: 0.47,
  few: 0.9,
  beside: 0.085,
  odd: 0.05,
  skipped: 3,
  besideSkipped: 5,
  alikeBesideSkipped: 0.6,
  cloth: 0.3,
  ground: 1.2,
  fewGround: 2.5,
  parted: 0.1,
  stairs: 0.75,
};

/** Likeness under which a place of the row is like none of the others. */
const leastOdd = 0.1;

/** Share by which pitch may grow from end to end: a row seen from a hand's breadth, sideways. */
const mostSwell = 0.5;

/** Pixels by which the ends of a row are looked for at the least: a hole is no point, and a row looked at aside loses its thread. */
const leastWithin = 2;

/** Stitches along a marked line whose points may be off by `off` pixels; null where none are told from their ground. */
export function findStitches(grey: GreyImage, from: Point, to: Point, off: number): Stitches | null {
  const within = Math.max(off, leastWithin);
  const reach = within * 1.15 + 1;
  const marked = stripAlong(grey, from, to, 2, reach + 3);
  if (marked === null) return null;
  const looked = findRows(marked, reach, 7)
    .flatMap((row) => looks(grey, marked, row, within))
    .filter(({ strip, fold }) => besideOf(strip, fold, 0) < limits.cloth);
  looked.sort((a, b) => worthOf(b.fold) - worthOf(a.fold));
  const straight = looked.slice(0, 3).map((first) => straightened(grey, first));
  straight.sort((a, b) => worthOf(b.fold) - worthOf(a.fold));
  // One that is far behind does not come to the front by a finer pitch.
  const near = straight.filter(({ fold }) => worthOf(fold) >= worthOf(straight[0]!.fold) * 0.8);
  const settled = near.flatMap(({ strip, fold }) => {
    const ends = [strip.place(0, 0), strip.place(strip.length, 0)] as const;
    const wide = stripAlong(grey, ...ends, within * 1.3 + fold.pitch * 2.2, Math.max(4, fold.pitch * 2.6));
    return wide === null ? [] : (settle(wide, refined(wide, folded(wide, fold.pitch, fold.swell)), within) ?? []);
  });
  // Several of what is no thread are no thread either.
  const other = settled.filter(({ sewn }) => !sewn);
  const rows = settled.filter(({ sewn, pitch }) => sewn && other.every((one) => pitch < one.pitch * several));
  return rows.sort((a, b) => b.worth - a.worth)[0] ?? null;
}

/** From how many times another's pitch a row holds several of it in each of its stitches. */
const several = 1.6;

/** Many that are alike tell more than few. */
const worthOf = (fold: Fold): number => fold.likeness * (fold.starts.length - 1) ** 0.25;

/** Rows beside a row that its own stitches lie in. */
const narrow = (pitch: number): number => Math.max(4, pitch * 1.6);

/** The strip along a row, and the row folded there by its pitch, twice and half of it. */
function looks(grey: GreyImage, marked: Strip, row: Row, within: number): { strip: Strip; fold: Folded }[] {
  const from = marked.place(0, row.first);
  const to = marked.place(marked.length, row.last);
  const strip = stripAlong(grey, from, to, within * 1.3 + row.pitch * 2.2, narrow(row.pitch));
  if (strip === null) return [];
  return [0.5, 1, 2].flatMap((times) => {
    const guess = row.pitch * times;
    const cycles = strip.length / guess;
    if (guess < leastPitch || cycles < 2.4) return [];
    const tried = [-4, -2, 0, 2, 4].map((at) => folded(strip, guess * (1 + (at * 0.12) / cycles), 0));
    return [{ strip, fold: tried.reduce((best, other) => (other.likeness > best.likeness ? other : best)) }];
  });
}

/** The row moved at either end, by a fifth of the pitch and then less, to where its stitches are most alike. */
function straightened(grey: GreyImage, looked: { strip: Strip; fold: Folded }): { strip: Strip; fold: Folded } {
  let best = looked;
  const { pitch, swell } = looked.fold;
  for (const step of [pitch * 0.14, pitch * 0.06]) {
    const { strip } = best;
    for (const [first, last] of [
      [1, 1],
      [-1, -1],
      [1, -1],
      [-1, 1],
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ] as const) {
      const [from, to] = [strip.place(0, first * step), strip.place(strip.length, last * step)];
      const moved = stripAlong(grey, from, to, pitch * pastEnds + 2, Math.max(2, pitch * besideThread));
      if (moved === null) continue;
      const fold = folded(moved, pitch, swell);
      if (fold.likeness > best.fold.likeness) best = { strip: moved, fold };
    }
  }
  return best;
}

/**
 * Rows to either side, as a share of the pitch, in which the stitches are compared: what lies farther off is the ground,
 * whose weave would drown a thread. Found on drawn rows.
 */
const besideThread = 0.45;

/** Pitches by which a folded row may reach past the strip's marked points on either side, at most. */
const pastEnds = 0.125;

/** The row between the strip's marked points folded by a pitch; the stitches stand in its middle. */
function folded(strip: Strip, pitch: number, swell: number): Folded {
  const reach = Math.min(strip.aside, pitch * besideThread);
  const count = Math.max(2, Math.floor(strip.length / pitch + 2 * pastEnds));
  const from = strip.before + (strip.length - count * pitch) / 2;
  return { ...foldRow(strip, startsOf(from, count, pitch, swell), reach), pitch, swell, reach };
}

/** The pitch, up to one stitch more or less in all, and how evenly it grows from end to end as by perspective, under which the stitches are most alike. */
function refined(strip: Strip, guess: Folded): Folded {
  const cycles = strip.length / guess.pitch;
  let best = guess;
  const better = (pitch: number, swell: number): void => {
    if (Math.abs(swell) > mostSwell) return;
    const other = folded(strip, pitch, swell);
    if (other.likeness > best.likeness) best = other;
  };
  const step = 0.8 / cycles;
  for (let s = -Math.floor(mostSwell / step); s <= mostSwell / step; s++)
    for (let p = -4; p <= 4; p++) better(guess.pitch * (1 + (p * 0.26) / cycles), s * step);
  const { pitch, swell } = best;
  for (let s = -2; s <= 2; s++)
    for (let p = -3; p <= 3; p++) better(pitch * (1 + (p * 0.05) / cycles), swell + s * step * 0.35);
  return best;
}

/** A row that repeats as stitches do; whether it is sewn tells the shape of what repeats. */
type Settled = Stitches & { worth: number; sewn: boolean };

/** Whether these are stitches, where they begin and end, and how many. */
function settle(strip: Strip, fold: Folded, within: number): Settled | null {
  const { pitch } = fold;
  const { alike, likeness } = withoutEmptyEnds(strip, fold, within);
  const cells = alike.length;
  const enough = limits.alike + limits.few / cells ** 1.5;
  const beside = likeness < enough || areOdd(alike) ? 1 : besideOf(strip, fold, 1);
  const ground = limits.ground - limits.fewGround / cells;
  if (beside > limits.beside || unrestBeside(strip, fold) > ground) return null;
  const run = runOf(strip, fold, within);
  if (run === null || run.starts.length < 3 || run.fold.likeness < likeness - limits.parted) return null;
  const parted = { ...fold, ...run.fold };
  if (areStairs(strip, pitch, likeness)) return null;
  return {
    ...measured(strip, run, pitch, likeness),
    strip,
    fold: parted,
    likeness,
    beside,
    worth: worthOf(fold),
    sewn: isSewn(strip, parted),
  };
}

/** Whether too many are like none of the others; a few stitches that were skipped are, where all others are much alike. */
function areOdd(alike: readonly number[]): boolean {
  const others = alike.filter((one) => one >= leastOdd);
  const odd = alike.length - others.length;
  if (odd <= limits.odd * alike.length) return false;
  return odd > limits.skipped || others.length < limits.besideSkipped || mean(others) < limits.alikeBesideSkipped;
}

/**
 * Whether the row goes over to the next row of the photo's pixels at each of its stitches, at every other or twice in
 * each, and they are hardly alike: an edge that lies aslant to the pixels has such stairs.
 */
function areStairs(strip: Strip, pitch: number, alike: number): boolean {
  const [from, to] = [strip.place(0, 0), strip.place(1, 0)];
  const slope = Math.min(Math.abs(to.x - from.x), Math.abs(to.y - from.y));
  return alike < limits.stairs && [0.5, 1, 2].some((stairs) => Math.abs((pitch * slope) / stairs - 1) < 0.04);
}

/** The row without places at its ends that are like none, as far as a mark may have been set beyond the last hole. */
function withoutEmptyEnds(strip: Strip, fold: Folded, within: number): Fold {
  const { alike, starts, pitch } = fold;
  const reach = Math.ceil(within / pitch);
  const empty = (ends: readonly number[]): number => {
    const first = ends.findIndex((one) => one >= leastOdd);
    return Math.min(reach, Math.max(0, first));
  };
  const [from, to] = [empty(alike), alike.length - empty([...alike].reverse())];
  if (to - from === alike.length || to - from < 3) return fold;
  return foldRow(strip, starts.slice(from, to + 1), fold.reach);
}

function measured(strip: Strip, { starts, sure }: Run, pitch: number, alike: number) {
  const count = starts.length - 1;
  const [first, last] = [starts[0]!, starts[count]!];
  return {
    count,
    countWithin: sure && alike > 0.6 ? 0 : 1,
    pitch: (last - first) / count,
    pitchWithin: (pitch * 0.3) / count + pitch * 0.004,
    holes: starts,
    ends: [strip.place(first - strip.before, 0), strip.place(last - strip.before, 0)] as [Point, Point],
  };
}
