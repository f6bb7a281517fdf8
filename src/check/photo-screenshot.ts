import * as z from 'zod';
import type { PhotoRead } from '../stamp/types';
import { askFor } from './asks';
import { orWhyCopied, readAsGiven } from './copies';
import { defineCheck, practice } from './frame';
import { photoNumber } from './types';

/** Sides of phone screens, longer by shorter. Common practice, no source. */
const screenRatio = { least: 1.75, most: 2.3 };
const clock = /(^|\s)([01]?\d|2[0-3]):[0-5]\d(\s|$)/;
const screenWords = /\b\d{1,3} ?%|\b(5G|LTE|4G|Wi-?Fi)\b|\b(like|share|follow|comment|add to (cart|bag)|buy now)\b/i;

export const photoScreenshot = defineCheck({
  id: 'photo-screenshot',
  family: 'photos',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ photo: photoNumber, sign: z.string() }),
  needs: { photos: 'read' },
  run({ photos, photoNumber: number }) {
    const found = readAsGiven(photos).flatMap((photo) => {
      const sign = screenSign(photo);
      if (!sign) return [];
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

function screenSign({ width, height, printed }: Extract<PhotoRead, { state: 'read' }>): string | null {
  const ratio = Math.max(width, height) / Math.min(width, height);
  if (ratio < screenRatio.least || ratio > screenRatio.most) return null;
  const time = printed.find((line) => clock.test(line));
  const words = printed.find((line) => screenWords.test(line));
  return time && words ? (time === words ? time : `${time} … ${words}`) : null;
}
