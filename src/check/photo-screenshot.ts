import * as z from 'zod';
import { valueIn } from '../photo/read-types';
import { askFor } from './asks';
import { orWhyCopied, readAsGiven } from './copies';
import { defineCheck, practice } from './frame';
import { photoNumber } from './types';

export const photoScreenshot = defineCheck({
  id: 'photo-screenshot',
  family: 'photos',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ photo: photoNumber, sign: z.string() }),
  needs: { photos: 'read' },
  run({ photos, photoNumber: number }) {
    const found = readAsGiven(photos).flatMap((photo) => {
      const sign = valueIn(photo, 'screen-bars');
      if (typeof sign !== 'string') return [];
      return [
        {
          kind: 'doubt' as const,
          key: photo.photoId,
          data: { photo: number(photo.photoId), sign },
          photos: [photo.photoId],
          asks: [askFor('own-photo', {})],
        },
      ];
    });
    return orWhyCopied(found, photos);
  },
});
