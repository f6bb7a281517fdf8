import { type HandMark, type MarkKind, type Point, pointsOf, type Where } from '../../photo';
import type { Size } from './view';

/** A hand sets a point on the screen within so many CSS pixels in 95 of 100 cases. Own estimate, no source. */
const handPixels = 4;
/** As shares of the photo's longer side: no hand is surer than the least, nor taken for less sure than the most. */
const [surest, leastSure] = [0.002, 0.015];

/** How far off a point may be that a hand sets at this enlargement. */
export const withinAt = (zoom: number, { width, height }: Size): number =>
  Math.min(leastSure, Math.max(surest, handPixels / zoom / Math.max(width, height)));

/** Corners as shares of what is seen: where a new mark's points lie at first. */
const corners: readonly Point[] = [
  { x: 0.3, y: 0.3 },
  { x: 0.7, y: 0.3 },
  { x: 0.7, y: 0.7 },
  { x: 0.3, y: 0.7 },
];
const ends: readonly Point[] = [
  { x: 0.25, y: 0.5 },
  { x: 0.75, y: 0.5 },
];
const middle: readonly Point[] = [{ x: 0.5, y: 0.5 }];

/** Whether a mark's points enclose a place of one colour. */
const isPatch = (kind: MarkKind): boolean => ['patch', 'white', 'open-leather', 'rivet', 'touched'].includes(kind);

/** A patch is small: it is to lie on one colour. Yet its five handles do not lie over each other, CSS pixels. */
const [patchShare, leastPatch] = [0.3, 76];

/** Where a new mark's points lie, as shares of what is seen of the photo; several do not lie over each other. */
export function firstPoints(kind: MarkKind, others: number, stage: Size): readonly Point[] {
  const aside = ((others % 5) - 2) * 0.05;
  return around(kind, stage).map(({ x, y }) => ({ x: x + aside / 2, y: y + aside }));
}

function around(kind: MarkKind, { width, height }: Size): readonly Point[] {
  const points = pointsOf[kind] === 1 ? middle : pointsOf[kind] === 2 ? ends : corners;
  if (!isPatch(kind)) return points;
  const [first, , opposite] = corners as [Point, Point, Point];
  const across = Math.max(patchShare, leastPatch / ((opposite.x - first.x) * width));
  const down = Math.max(patchShare, leastPatch / ((opposite.y - first.y) * height));
  return points.map(({ x, y }) => ({ x: 0.5 + (x - 0.5) * across, y: 0.5 + (y - 0.5) * down }));
}

/** One above all others, so that no number is given twice while its mark stands. */
export const nextNumber = (marks: readonly HandMark[]): number =>
  Math.min(999, Math.max(0, ...marks.map(({ number }) => number)) + 1);

/** A place that is kept is not finer than a hundredth of a pixel: its record stays small. */
const rounded = (share: number): number => Math.round(Math.min(1, Math.max(0, share)) * 1e6) / 1e6;

export const placed = (mark: HandMark, points: readonly Point[], within: number): HandMark => ({
  ...mark,
  points: points.map(({ x, y }) => ({ x: rounded(x), y: rounded(y) })),
  within: Math.round(within * 1e5) / 1e5,
});

/** A mark as the overlay draws it. */
export function whereOf({ points, kind }: Pick<HandMark, 'points' | 'kind'>): Where {
  const [a, b, c, d] = points;
  if (a && b && c && d && points.length === 4 && !isPatch(kind)) return { form: 'quad', points: [a, b, c, d] };
  if (points.length > 2) return { form: 'polygon', points: [...points] };
  if (a && b) return { form: 'line', points: [a, b] };
  return { form: 'point', points: [a ?? { x: 0.5, y: 0.5 }] };
}

/** Whether a mark's four corners say how a flat thing lies. */
export const isStraightened = ({ kind }: HandMark): boolean =>
  kind === 'panel' || kind === 'back' || kind === 'lettering' || kind === 'card';
