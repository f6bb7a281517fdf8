import * as z from 'zod';
import { type PhotoRead, printedIn, valueIn } from '../photo/read-types';
import { askFor } from './asks';
import { orWhyCopied, readAsGiven, whyCopied } from './copies';
import { defineCheck, practice } from './frame';
import { because } from './reasons';
import { photoNumber } from './types';

/**
 * A ground at least this light, with at most this much between its lightest and darkest, and with less noise than any
 * sensor leaves on a lit surface; steps of 255. All three have to hold. Common practice, no source; on our own
 * rendered photographs, white sheets among them, the spread is 28 and more.
 */
const leastLightness = 230;
const mostSpread = 4;
const mostNoise = 0.5;
/** A scanned receipt or label lies on an even white too; it carries lines of print. */
const linesOfPaper = 4;

export const photoStockLike = defineCheck({
  id: 'photo-stock-like',
  family: 'photos',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ photos: z.array(photoNumber) }),
  limits: { leastLightness, mostSpread, mostNoise, linesOfPaper },
  needs: { photos: 'read' },
  run({ photos, photoNumber: number }) {
    const measured = readAsGiven(photos).filter((photo) => groundOf(photo) !== null);
    if (measured.length === 0) return { cannotTell: whyCopied(photos) ?? because('ground-not-measured', {}) };
    const found = measured.filter(isStockLike).map(({ photoId }) => photoId);
    if (found.length === 0) return orWhyCopied([], photos);
    return [{ kind: 'doubt', data: { photos: found.map(number) }, photos: found, asks: [askFor('own-photo', {})] }];
  },
});

const isStockLike = (photo: PhotoRead): boolean => groundKind(photo) === 'even';

/** No ground at a home lies in the light so evenly: on our own rendered photographs the least spread. */
const leastAtHome = 28;

/** What a photo stands on: the even, light ground of a studio or a cut-out, a lit one as at a home, or none of both surely. */
export function groundKind(photo: PhotoRead): 'even' | 'lit' | null {
  const ground = groundOf(photo);
  if (!ground || printedIn(photo).length >= linesOfPaper) return null;
  const [lightness, spread, noise] = ground;
  if (lightness >= leastLightness && spread <= mostSpread && noise <= mostNoise) return 'even';
  return spread >= leastAtHome && noise > mostNoise ? 'lit' : null;
}

/** Lightness, spread and noise of the ground; null where it was not measured. */
function groundOf(photo: PhotoRead): [number, number, number] | null {
  const [lightness, spread, noise] = ['ground-lightness', 'ground-spread', 'ground-noise'].map((what) =>
    valueIn(photo, what),
  );
  return typeof lightness === 'number' && typeof spread === 'number' && typeof noise === 'number'
    ? [lightness, spread, noise]
    : null;
}
