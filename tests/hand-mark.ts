import type { NewCorrection } from '../src/case';
import type { HandMark, HandMeasure } from '../src/photo';

type Marked = Extract<NewCorrection, { of: 'mark' }>;
type Photo = Marked['photo'];

/** A row of stitches as a hand marks it; whatever is left out is that of a row across the middle of its photo. */
export const rowOfStitches = (mark: Partial<HandMark> = {}): HandMark => ({
  number: 1,
  kind: 'stitches',
  points: [
    { x: 0.25, y: 0.5 },
    { x: 0.75, y: 0.5 },
  ],
  within: 0.004,
  mm: null,
  name: 'tab',
  ...mark,
});

/** So many stitches counted along it, to the half-width given. */
export const counted = (stitches: number, within: number): HandMeasure => ({
  what: 'count',
  value: stitches,
  uncertainty: within,
  unit: 'stitch',
  where: null,
});

/** A mark on a photo with what was measured there, as the buyer's hand leaves it. */
export const marked = (photo: Photo, mark: HandMark, measured: HandMeasure[]): Marked => ({
  of: 'mark',
  photo,
  mark,
  measured,
});
