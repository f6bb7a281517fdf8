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
  'edges-off': (points) => points === 4,
  'motif-off': (points) => points === 5 || points === 8,
  back: (points) => points === 8,
  'seam-off': (points) => points === 6,
  count: (points) => points === 2,
  pitch: (points) => points === 2,
  evenness: (points) => points === 2,
  slant: (points) => points === 2,
  skipped: (points) => points === 2,
  lab: () => true,
  difference: (points) => points >= 2 && points % 2 === 0,
};

/** Shares of the photo's longer side: by which a hand's point may be off, and by which it may be and still be looked for. */
const handWithin = 0.015;
const mostWithin = 0.05;

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
  const longer = Math.max(image.width, image.height);
  const off = within ?? handWithin * longer;
  if (off > mostWithin * longer) return notMeasured(what, 'loose');
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
    case 'skipped':
      return measureStitches(what, photo, points, off);
    default:
      return quadsOf(what, points).every(isInOrder)
        ? measurePanel(what, photo, points, off)
        : notMeasured(what, 'corners');
  }
}

/** The panels among a mark's points: a back lies behind its front. */
const quadsOf = (what: Measurable, points: readonly Point[]): (readonly Point[])[] =>
  what === 'back' ? [points.slice(0, 4), points.slice(4)] : [points.slice(0, 4)];

/** Whether corners follow each other clockwise: what is marked the other way round would be seen in a mirror. */
const isInOrder = (corners: readonly Point[]): boolean =>
  corners.every((corner, at) => {
    const [next, after] = [corners[(at + 1) % 4]!, corners[(at + 2) % 4]!];
    return (next.x - corner.x) * (after.y - next.y) - (next.y - corner.y) * (after.x - next.x) > 0;
  });
