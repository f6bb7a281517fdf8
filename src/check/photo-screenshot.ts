import type { PhotoRead } from '../stamp/types';
import { orCopied, readAsGiven } from './copies';
import { practice } from './frame';
import { askPhoto, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

/** Sides of phone screens, longer by shorter. Common practice, no source. */
const screenRatio = { least: 1.75, most: 2.3 };
const clock = /(^|\s)([01]?\d|2[0-3]):[0-5]\d(\s|$)/;
const screenWords = /\b\d{1,3} ?%|\b(5G|LTE|4G|Wi-?Fi)\b|\b(like|share|follow|comment|add to (cart|bag)|buy now)\b/i;

export const photoScreenshot = defineWritten({
  id: 'photo-screenshot',
  family: 'photos',
  title: 'No photo is a picture of a screen',
  failureTitle: 'A photo looks like a picture of a screen',
  kinds: ['doubt'],
  basis: 'A screenshot shows what another page showed, not the piece in the seller’s hands.',
  innocent: 'The seller may show a shop’s page for the size or the price.',
  settles: 'The same view as a photo of the piece itself.',
  source: practice,
  needs: { photos: 'read' },
  run({ photos, photoWords }) {
    const found = readAsGiven(photos).flatMap((photo): WrittenSpeech[] => {
      const sign = screenSign(photo);
      if (!sign) return [];
      const where = photoWords(photo.photoId);
      return [
        {
          kind: 'doubt',
          key: photo.photoId,
          statement: `${where.replace(/^p/, 'P')} has the shape of a phone screen and shows ${quote(sign)}.`,
          photos: [photo.photoId],
          asks: [
            askPhoto(
              'own-photo',
              'Could you add photos of the piece itself, one of them with today’s date on a slip of paper?',
            ),
          ],
        },
      ];
    });
    return orCopied(found, photos);
  },
});

function screenSign({ width, height, printed }: Extract<PhotoRead, { state: 'read' }>): string | null {
  const ratio = Math.max(width, height) / Math.min(width, height);
  if (ratio < screenRatio.least || ratio > screenRatio.most) return null;
  const time = printed.find((line) => clock.test(line));
  const words = printed.find((line) => screenWords.test(line));
  return time && words ? (time === words ? time : `${time} … ${words}`) : null;
}
