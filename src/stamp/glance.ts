import { type GreyImage, quadSize, release, resizeGrey, sizeWithin } from '../photo';
import type { FoundLine, StampEngines } from './engines';

/**
 * Longest side that is glanced at, pixels. At it the finder takes a sixth of the time that it takes in its own size, and on
 * each demo listing with a legible stamp the stamp's photo still comes first (tests/unit/stamp/glance.test.ts).
 */
export const glanceSide = 384;
/**
 * Longest side of a second look. Both looks together put the stamp's photo first more often than either alone; own
 * measurement (`npm run bench -- first-stamp`).
 */
export const closerSide = 512;
/** Codes are lines of three characters and more; what is shorter is mostly a rivet, a buckle or a slot. Own measurement. */
const shortestLine = 2.2;
const shareOfShort = 0.5;

/**
 * How likely a photo shows a code stamp, 0 to 1, by one quick look at a small copy: good enough to say which photo to
 * read first, and for nothing else. 0 without nets: then no order is better than the listing's own. The photo stays as it is.
 */
export async function glanceAt(grey: GreyImage, { net }: StampEngines, side = glanceSide): Promise<number> {
  if (net === undefined) return 0;
  const { width, height } = sizeWithin(grey.width, grey.height, side);
  const small = width === grey.width ? grey : resizeGrey(grey, width, height);
  try {
    return Math.max(0, ...(await net.findLines(small)).map(likelihoodOf));
  } finally {
    if (small !== grey) release(small.data);
  }
}

function likelihoodOf({ quad, stampScore }: FoundLine): number {
  const { across, down } = quadSize(quad);
  return across >= shortestLine * down ? stampScore : stampScore * shareOfShort;
}
