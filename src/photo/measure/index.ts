import type { PixelImage, Point } from '../types';
import { measureDifference, measureLab } from './colour';
import { type MarkedPhoto, markedPhoto } from './marked-photo';
import type { Mark, Measurable, Measure } from './measure-types';
import { notMeasured } from './not-measured';
import { measurePanel } from './panel';
import { measureStitches } from './stitch';

/** How many points each measure takes. */
const takes: Readonly<Record<Measurable, (points: number) => boolean>> = {
  'repeat-x': (points) => points === 4,
  'repeat-y': (points) => points === 4,
  'mirror-off': (points) => points === 4,
  'motif-off': (points) => points === 5 || points === 8,
  back: (points) => points === 8,
  'seam-off': (points) => points === 6,
  count: (points) => points === 2,
  pitch: (points) => points === 2,
  evenness: (points) => points === 2,
  slant: (points) => points === 2,
  lab: () => true,
  difference: (points) => points >= 2 && points % 2 === 0,
};

/** Share of the photo's longer side by which a hand's point may be off. */
const handWithin = 0.015;

/**
 * What the marks on a photo measure, in their order; a `white` measures nothing and serves those of its photo. Pure: the
 * same pixels and marks give the same measures.
 */
export const measureMarks = (image: PixelImage, marks: readonly Mark[]): Measure[] =>
  measureOn(markedPhoto(image), marks);

/** The same for one of several times on the same photo. */
export function measureOn(photo: MarkedPhoto, marks: readonly Mark[]): Measure[] {
  const white = marks.find(({ what }) => what === 'white')?.points ?? null;
  return marks.flatMap((mark) => (mark.what === 'white' ? [] : [measureOf(photo, mark, mark.what, white)]));
}

function measureOf(
  photo: MarkedPhoto,
  { points, within }: Mark,
  what: Measurable,
  white: readonly Point[] | null,
): Measure {
  const { image } = photo;
  if (!takes[what](points.length)) return notMeasured(what, 'points');
  const off = within ?? handWithin * Math.max(image.width, image.height);
  const reach = off + 1;
  const far = ({ x, y }: Point): boolean =>
    x < -reach || y < -reach || x > image.width + reach || y > image.height + reach;
  if (points.some(far)) return notMeasured(what, 'outside');
  switch (what) {
    case 'lab':
      return measureLab(image, points, white);
    case 'difference':
      return measureDifference(image, points, white);
    case 'count':
    case 'pitch':
    case 'evenness':
    case 'slant':
      return measureStitches(what, photo, points, off);
    default:
      return measurePanel(what, photo, points, off);
  }
}
