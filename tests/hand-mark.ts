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

/** A patch of leather that lay open, as a hand marks it. */
export const openLeather: HandMark = {
  number: 2,
  kind: 'open-leather',
  points: [
    { x: 0.4, y: 0.4 },
    { x: 0.5, y: 0.4 },
    { x: 0.5, y: 0.5 },
    { x: 0.4, y: 0.5 },
  ],
  within: 0.004,
  mm: null,
  name: 'handle',
};

/** So much darker than where it was covered, in steps of CIELAB, to the half-width given. */
export const darkened = (by: number, within: number): HandMeasure => ({
  what: 'darkening',
  value: by,
  uncertainty: within,
  unit: 'lab-step',
  where: null,
});

/** A mark on a photo with what was measured there, as the buyer's hand leaves it. */
export const marked = (photo: Photo, mark: HandMark, measured: HandMeasure[]): Marked => ({
  of: 'mark',
  photo,
  mark,
  measured,
});
