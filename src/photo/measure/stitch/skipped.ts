import { mean } from '../mean';
import { median } from '../median';
import { cellAt, foldRow, shareOf } from './fold';
import type { Strip } from './strip';

/** Stitches that a row lacks. */
export interface Skipped {
  missing: number;
  /** How many more or fewer they may be. */
  within: number;
  /** Where: each from hole to hole, by the holes' numbers in the row. */
  places: [from: number, to: number][];
}

/** Fewer are too few to tell what is usual among them. */
const fewest = 6;

/**
 * What is taken for a stitch that is not there, each as a share of what is usual in its row, and by how many times the
 * spread of the others it must lie below them. `drawn`: of its drawing; `hole`: of the drawing about a hole; `tone`: how
 * far it leaves the ground; `bare`: the same where holes alone are left, so that their drawing is; `thread`: how far what
 * lies loose over a hole leaves the ground; `steady`: how far the ground beside it may differ from that of its
 * neighbours. Found on drawn rows with stitches skipped, and on sound ones, rubbed and unevenly lit.
 */
const limits = {
  drawn: { share: 0.4, spreads: 3 },
  hole: { share: 0.1, spreads: 3 },
  tone: { share: 0.4, spreads: 2 },
  bare: { share: 0.25, spreads: 5 },
  thread: 0.6,
  steady: 0.3,
};

/**
 * Where stitches are missing inside a row: a place of the ground's own tone that holds nothing of what all others are,
 * or a thread that lies over a hole as it does over its own stitch. Null where single stitches do not stand out enough
 * for either to be told. `holes`: samples of the strip, first to last.
 */
export function skippedIn(strip: Strip, holes: readonly number[], pitch: number): Skipped | null {
  const count = holes.length - 1;
  if (count < fewest) return null;
  const middles = holes.slice(1).map((hole, at) => (hole + holes[at]!) / 2);
  const reach = Math.max(1, pitch * 0.45);
  const { threads, between, grounds } = tonesOf(strip, holes, pitch);
  const [drawn, over, tone] = [drawnShares(strip, holes, reach), drawnShares(strip, middles, reach), threads].map(
    againstUsual,
  ) as [Against, Against, Against];
  const usual = median(threads);
  const isSteady = (at: number): boolean => {
    const near = grounds.filter((_, other) => other !== at && Math.abs(other - at) <= 2);
    return Math.abs(grounds[at]! - median(near)) < limits.steady * Math.abs(usual);
  };
  const places: Skipped['places'] = [];
  let [missing, unclear] = [0, 0];
  // What was told of a stitch is not told again of the holes beside it.
  const settled = new Set<number>();
  for (let at = 1; at < count - 1; at++) {
    const gone = drawn.isBelow(at, limits.drawn) && tone.isBelow(at, limits.tone);
    const isBare = (gone || tone.isBelow(at, limits.bare)) && isSteady(at);
    if (!isBare && drawn.of(at) >= limits.drawn.share && tone.of(at) >= limits.bare.share) continue;
    settled.add(at);
    if (isBare) places.push([at, at + 1]);
    if (isBare) missing++;
    else unclear++;
  }
  for (let at = 0; at < count - 1; at++) {
    if (over.of(at) >= limits.hole.share) continue;
    const lies = [tone.of(at), between[at]! / usual, tone.of(at + 1)].every((share) => share > limits.thread);
    if (over.isBelow(at, limits.hole) && lies) {
      places.push([at, at + 2]);
      missing++;
    } else if (!settled.has(at) && !settled.has(at + 1)) unclear++;
  }
  const isTold =
    ((drawn.tells(limits.drawn) && tone.tells(limits.tone)) || tone.tells(limits.bare)) && over.tells(limits.hole);
  if (missing === 0 && (unclear > 0 || !isTold)) return null;
  return { missing, within: isTold ? unclear : Math.max(1, unclear), places: joined(places) };
}

interface Limit {
  share: number;
  spreads: number;
}

/** Values of one row, each against the usual one. */
interface Against {
  of: (at: number) => number;
  isBelow: (at: number, limit: Limit) => boolean;
  /** Whether the row is even enough for anything to lie below. */
  tells: (limit: Limit) => boolean;
}

/** No row is so even that a smaller spread were no chance. */
const leastSpread = 0.04;

function againstUsual(values: readonly number[]): Against {
  const usual = median(values);
  const shares = values.map((value) => value / usual);
  // Of a normal spread, by its median (Rousseeuw and Croux 1993).
  const spread = Math.max(leastSpread, 1.4826 * median(shares.map((share) => Math.abs(share - 1))));
  return {
    of: (at) => shares[at]!,
    isBelow: (at, { share, spreads }) => shares[at]! < share && 1 - shares[at]! > spreads * spread,
    tells: ({ share, spreads }) => spreads * spread < 1 - share,
  };
}

/** How much of what all have in common is drawn between each two starts. */
function drawnShares(strip: Strip, starts: readonly number[], reach: number): number[] {
  const { rows, common } = foldRow(strip, [...starts], reach);
  const none = new Float64Array(rows);
  return starts.slice(1).map((end, at) => shareOf(cellAt(strip, starts[at]!, end, reach, rows, none), common));
}

/** Tones along the row: of the middle of each stitch and of each hole between two, over the ground beside them. */
function tonesOf(strip: Strip, holes: readonly number[], pitch: number) {
  const near = Math.max(1, Math.round(pitch * 0.14));
  const far = Math.min(strip.aside, Math.round(pitch * 0.9));
  const aside = upTo(Math.ceil(pitch * 0.5), far);
  const beside = [...aside.map((row) => -row), ...aside];
  const own = upTo(-near, near);
  const grounds = holes.slice(1).map((end, at) => median(samples(strip, beside, holes[at]!, end)));
  const threads = grounds.map((ground, at) => {
    const [start, end] = [holes[at]!, holes[at + 1]!];
    const quarter = (end - start) / 4;
    return mean(samples(strip, own, start + quarter, end - quarter)) - ground;
  });
  const by = Math.max(0.5, pitch * 0.12);
  const between = grounds.slice(1).map((ground, at) => {
    const hole = holes[at + 1]!;
    return mean(samples(strip, own, hole - by, hole + by)) - (grounds[at]! + ground) / 2;
  });
  return { grounds, threads, between };
}

const upTo = (least: number, most: number): number[] =>
  Array.from({ length: Math.max(1, most - least + 1) }, (_, at) => least + at);

/** What the strip holds in some rows, from its middle, between two of its samples. */
function samples(strip: Strip, rows: readonly number[], start: number, end: number): number[] {
  const from = Math.max(0, Math.round(start));
  const columns = upTo(from, Math.max(from, Math.min(strip.width, Math.round(end)) - 1));
  return rows.flatMap((row) => columns.map((column) => strip.data[(strip.aside + row) * strip.width + column]!));
}

/** Places in the row's order, those that touch as one. */
function joined(places: readonly [number, number][]): [number, number][] {
  const all: [number, number][] = [];
  for (const [from, to] of [...places].sort((a, b) => a[0] - b[0])) {
    const last = all.at(-1);
    if (last !== undefined && from <= last[1]) last[1] = Math.max(last[1], to);
    else all.push([from, to]);
  }
  return all;
}
