import { shownCode } from './codes';
import { isCopy } from './copies';
import { practice } from './frame';
import { commonAsks } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const stampLegible = defineWritten({
  id: 'stamp-legible',
  family: 'photos',
  title: 'The stamp in the photo could be read',
  failureTitle: 'A stamp is shown but too unclear to read',
  kinds: ['gap'],
  basis: 'A code counts as read only when its characters are certain enough.',
  innocent: 'Blind stamps wear, and a flat light hides them.',
  settles: 'A sharper photo of the stamp, or its characters typed in by hand.',
  source: practice,
  needs: { decodings: true, photos: 'read' },
  run(facts) {
    const read = facts.decodings.filter((decoding) => decoding.accepted);
    const unclear = facts.decodings.filter((decoding) => !decoding.accepted && decoding.from.kind === 'photo');
    if (read.length > 0 || unclear.length === 0) return [];
    const copies = new Set(facts.photos.filter(isCopy).map(({ photoId }) => photoId));
    const judged = unclear.filter(({ from }) => from.kind === 'photo' && !copies.has(from.photoId));
    if (judged.length === 0) return { cannotTell: 'the stamp was seen only in a copy of its photo' };
    return judged.flatMap(({ from, code, readings, id }): WrittenSpeech[] => {
      if (from.kind !== 'photo') return [];
      const best = readings[0]?.text ?? code;
      const guess = best ? ` The best guess, ${shownCode(best)}, is not certain enough to count.` : '';
      return [
        {
          kind: 'gap',
          key: id,
          statement: `The stamp in ${facts.photoWords(from.photoId)} is too unclear to read.${guess}`,
          photos: [from.photoId],
          asks: [commonAsks.stampPhoto],
        },
      ];
    });
  },
});
