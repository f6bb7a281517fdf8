import * as z from 'zod';
import { askFor } from './asks';
import { isCopy } from './copies';
import { defineCheck, practice } from './frame';
import { because } from './reasons';
import { photoNumber } from './types';

export const stampLegible = defineCheck({
  id: 'stamp-legible',
  family: 'photos',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({ photo: photoNumber, guess: z.string() }),
  needs: { decodings: true, photos: 'read' },
  run(facts) {
    const read = facts.decodings.filter((decoding) => decoding.accepted);
    const unclear = facts.decodings.filter((decoding) => !decoding.accepted && decoding.from.kind === 'photo');
    if (read.length > 0 || unclear.length === 0) return [];
    const copies = new Set(facts.photos.filter(isCopy).map(({ photoId }) => photoId));
    const judged = unclear.filter(({ from }) => from.kind === 'photo' && !copies.has(from.photoId));
    if (judged.length === 0) return { cannotTell: because('stamp-only-in-copy', {}) };
    return judged.flatMap(({ from, code, readings, id }) => {
      if (from.kind !== 'photo') return [];
      return [
        {
          kind: 'gap' as const,
          key: id,
          data: { photo: facts.photoNumber(from.photoId), guess: readings[0]?.text ?? code },
          photos: [from.photoId],
          asks: [askFor('stamp-photo', {})],
        },
      ];
    });
  },
});
