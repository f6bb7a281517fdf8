import { copiesWords, readAsGiven } from './copies';
import { defineCheck, practice } from './frame';
import { askPhoto } from './wording';

/** A photo whose longer side is shorter shows no stamp and no stitch. Common practice, no source. */
const smallestPx = 500;

export const photoLargeEnough = defineCheck({
  id: 'photo-large-enough',
  family: 'photos',
  title: 'Photos are large enough to see details',
  failureTitle: 'All photos are too small to see details',
  kinds: ['gap'],
  basis: 'Details such as stitches and stamps need photos of some size.',
  innocent: 'Some marketplaces shrink what sellers upload.',
  settles: 'Larger photos, also by message.',
  source: practice,
  needs: { photos: 'read' },
  run({ photos }) {
    const read = readAsGiven(photos).map(({ width, height }) => Math.max(width, height));
    const largest = Math.max(...read);
    if (largest >= smallestPx) return [];
    const copied = copiesWords(photos);
    if (copied !== null) return { cannotTell: copied };
    if (read.length < photos.length)
      return { cannotTell: `${photos.length - read.length} of ${photos.length} photos not read` };
    const ask = askPhoto(
      'larger-photos',
      'Could you send larger photos, above all of the stamp, the handles and the corners?',
    );
    return [{ kind: 'gap', statement: `The largest photo is ${largest} pixels long.`, asks: [ask] }];
  },
});
