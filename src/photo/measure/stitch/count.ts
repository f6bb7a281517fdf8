import type { GreyImage, Point } from '../../types';
import { type Fold, foldRow, rowsOf, startsOf } from './fold';
import { findRows, leastPitch, type Row } from './row';
import { type Run, runOf } from './run';
import { type Strip, stripAlong } from './strip';

/** A row of stitches as it was found at a marked line. */
export interface Stitches {
  count: number;
  /** How many it may be off. */
  countWithin: number;
  pitch: number;
  pitchWithin: number;
  /** First hole and last. */
  ends: [Point, Point];
  strip: Strip;
  fold: Fold;
  /** What the decision rested on: likeness of the stitches to each other, and how much of it goes on beside them. */
  likeness: number;
  beside: number;
}

/** Least likeness of the stitches to each other, by how many there are; few must be more alike. Found on drawn rows. */
const limits = { alike: 0.36, few: 0.9, beside: 0.14 };

export interface Folded extends Fold {
  pitch: number;
  swell: number;
  reach: number;
}

/** Stitches along a marked line whose points may be off by `within` pixels; null where none are told from their ground. */
export function findStitches(grey: GreyImage, from: Point, to: Point, within: number): Stitches | null {
  const reach = within * 1.15 + 1;
  const marked = stripAlong(grey, from, to, 2, reach + 3);
  if (marked === null) return null;
  const looked = findRows(marked, reach, 7).flatMap((row) => looks(grey, marked, row, within));
  looked.sort((a, b) => worthOf(b.fold) - worthOf(a.fold));
  let best: (Stitches & { worth: number }) | null = null;
  for (const { strip, fold } of looked.slice(0, 3)) {
    const found = settle(strip, refined(strip, fold), within);
    if (found !== null && (best === null || found.worth > best.worth)) best = found;
  }
  return best;
}

/** Many that are alike tell more than few. */
const worthOf = (fold: Fold): number => fold.likeness * (fold.starts.length - 1) ** 0.25;

/** The strip along a row, and the row folded there by its pitch, twice and half of it. */
function looks(grey: GreyImage, marked: Strip, row: Row, within: number): { strip: Strip; fold: Folded }[] {
  const from = marked.place(0, row.first);
  const to = marked.place(marked.length, row.last);
  const strip = stripAlong(grey, from, to, within * 1.3 + row.pitch * 2.2, Math.max(4, row.pitch * 2.6));
  if (strip === null) return [];
  return [0.5, 1, 2].flatMap((times) => {
    const guess = row.pitch * times;
    const cycles = strip.length / guess;
    if (guess < leastPitch || cycles < 2.4) return [];
    const tried = [-4, -2, 0, 2, 4].map((at) => folded(strip, guess * (1 + (at * 0.12) / cycles), 0));
    return [{ strip, fold: tried.reduce((best, other) => (other.likeness > best.likeness ? other : best)) }];
  });
}

/** The row between the strip's marked points folded by a pitch; the stitches stand in its middle. */
function folded(strip: Strip, pitch: number, swell: number): Folded {
  const reach = Math.min(strip.aside, pitch * 0.75);
  const count = Math.max(2, Math.floor(strip.length / pitch + 0.25));
  const from = strip.before + (strip.length - count * pitch) / 2;
  return { ...foldRow(strip, startsOf(from, count, pitch, swell), reach), pitch, swell, reach };
}

/** The pitch, and how evenly it grows from end to end as by perspective, under which the stitches are most alike. */
function refined(strip: Strip, guess: Folded): Folded {
  const cycles = strip.length / guess.pitch;
  let best = guess;
  for (const step of [1, 0.4]) {
    const { pitch, swell } = best;
    for (let s = -3; s <= 3; s++) {
      for (let p = -2; p <= 2; p++) {
        const bent = Math.max(-0.3, Math.min(0.3, swell + (s * step * 0.7) / cycles));
        const other = folded(strip, pitch * (1 + (p * 0.1 * step) / cycles), bent);
        if (other.likeness > best.likeness) best = other;
      }
    }
  }
  return best;
}

/** Whether these are stitches, where they begin and end, and how many. */
function settle(strip: Strip, fold: Folded, within: number): (Stitches & { worth: number }) | null {
  const { pitch, likeness } = fold;
  const cells = fold.starts.length - 1;
  const enough = limits.alike + limits.few / cells ** 1.5;
  const beside = likeness < enough ? 1 : besideOf(strip, fold);
  if (beside > limits.beside) return null;
  const run = runOf(strip, fold, within);
  if (run === null || run.starts.length < 3) return null;
  return { ...measured(strip, run, pitch), strip, fold: run.fold, likeness, beside, worth: worthOf(fold) };
}

function measured(strip: Strip, { starts, sure }: Run, pitch: number) {
  const count = starts.length - 1;
  const [first, last] = [starts[0]!, starts[count]!];
  return {
    count,
    countWithin: sure ? 0 : 1,
    pitch: (last - first) / count,
    pitchWithin: (pitch * 0.3) / count + pitch * 0.004,
    ends: [strip.place(first - strip.before, 0), strip.place(last - strip.before, 0)] as [Point, Point],
  };
}

/** How much of the repeat goes on beside the row, against in it: cloth repeats everywhere, a row of stitches does not. */
function besideOf(strip: Strip, fold: Folded): number {
  const wide = Math.min(strip.aside, fold.pitch * 2.4);
  const all = foldRow(strip, fold.starts, wide);
  const rows = rowsOf(wide);
  const away = (row: number): number => Math.abs((row / (rows - 1)) * 2 - 1) * wide;
  let [own, far, farRows] = [0, 0, 0];
  for (let row = 0; row < rows; row++) {
    let swing = 0;
    for (let at = row * all.columns; at < (row + 1) * all.columns; at++) swing += all.common[at]! ** 2;
    if (away(row) <= fold.pitch * 0.6) own = Math.max(own, swing);
    else if (away(row) > fold.pitch * 0.9) {
      far += swing;
      farRows++;
    }
  }
  return own > 0 && farRows > 0 ? far / farRows / own : 1;
}
