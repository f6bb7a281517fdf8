import type { PhotoRead } from '../stamp/types';
import { copiesWords, orCopied, readAsGiven } from './copies';
import { practice } from './frame';
import { askPhoto, listWords, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

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

export const photoStockLike = defineWritten({
  id: 'photo-stock-like',
  family: 'photos',
  title: 'No photo stands on the even white ground of a catalogue picture',
  failureTitle: 'A photo looks like a catalogue picture',
  kinds: ['doubt'],
  basis: 'Catalogue pictures stand on a perfectly even white ground; a camera at home leaves shade and grain there.',
  innocent: 'A piece photographed at home on a white sheet, then cut out by the phone, looks the same.',
  settles: 'A photo of the piece itself where it lies, with today’s date on a slip of paper.',
  source: practice,
  needs: { photos: 'read' },
  run({ photos, photoWords }) {
    const measured = readAsGiven(photos).filter(({ background }) => background !== undefined);
    if (measured.length === 0)
      return { cannotTell: copiesWords(photos) ?? 'the ground around the piece was not measured in any photo' };
    const found = measured.filter(isStockLike).map(({ photoId }) => photoId);
    if (found.length === 0) return orCopied([], photos);
    const speech: WrittenSpeech = {
      kind: 'doubt',
      statement: `${sentence(listWords(found.map(photoWords)))} ${found.length === 1 ? 'stands' : 'stand'} on an even white ground without the grain of a camera.`,
      photos: found,
      asks: [
        askPhoto(
          'own-photo',
          'Could you add photos of the piece itself, one of them with today’s date on a slip of paper?',
        ),
      ],
    };
    return [speech];
  },
});

function isStockLike({ background, printed }: Extract<PhotoRead, { state: 'read' }>): boolean {
  if (!background || printed.length >= linesOfPaper) return false;
  const { lightness, spread, noise } = background;
  return lightness >= leastLightness && spread <= mostSpread && noise <= mostNoise;
}
