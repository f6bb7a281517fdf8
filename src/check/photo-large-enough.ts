import * as z from 'zod';
import { valueIn } from '../photo/read-types';
import { askFor } from './asks';
import { readAsGiven, whyCopied } from './copies';
import { defineCheck, practice } from './frame';
import { because } from './reasons';

/** A photo whose longer side is shorter shows no stamp and no stitch. Common practice, no source. */
const smallestPx = 500;

export const photoLargeEnough = defineCheck({
  id: 'photo-large-enough',
  family: 'photos',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({ longestPx: z.number() }),
  limits: { smallestPx },
  needs: { photos: 'read' },
  run({ photos }) {
    const read = readAsGiven(photos).map((photo) => Number(valueIn(photo, 'longer-side')));
    const longestPx = Math.max(...read);
    if (longestPx >= smallestPx) return [];
    const copied = whyCopied(photos);
    if (copied) return { cannotTell: copied };
    if (read.length < photos.length) {
      const data = { unread: photos.length - read.length, of: photos.length, cause: null };
      return { cannotTell: because('photos-not-read', data) };
    }
    return [{ kind: 'gap', data: { longestPx }, asks: [askFor('larger-photos', {})] }];
  },
});
