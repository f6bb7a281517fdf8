import * as z from 'zod';
import type { Nearest } from '../code/types';
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
  data: z.strictObject({
    photo: photoNumber,
    guess: z.string(),
    /** Why the characters do not count though they may be legible; absent where they are too unclear. */
    open: z.enum(['may-go-on', 'upside-down']).optional(),
    /** What the stamp reads upside down. */
    other: z.string().optional(),
  }),
  needs: { decodings: true, photos: 'read' },
  run(facts) {
    const read = facts.decodings.filter((decoding) => decoding.accepted);
    const unclear = facts.decodings.filter((decoding) => !decoding.accepted && decoding.from.kind === 'photo');
    if (read.length > 0 || unclear.length === 0) return [];
    const copies = new Set(facts.photos.filter(isCopy).map(({ photoId }) => photoId));
    const judged = unclear.filter(({ from }) => from.kind === 'photo' && !copies.has(from.photoId));
    if (judged.length === 0) return { cannotTell: because('stamp-only-in-copy', {}) };
    return judged.flatMap(({ from, code, readings, nearest, id, open = [] }) => {
      if (from.kind !== 'photo') return [];
      const goesOn = open.some(({ kind }) => kind === 'may-go-on');
      const turned = open.find((left) => left.kind === 'upside-down');
      const why = goesOn ? ('may-go-on' as const) : turned?.kind;
      return [
        {
          kind: 'gap' as const,
          key: id,
          data: {
            photo: facts.photoNumber(from.photoId),
            guess: readings[0]?.text ?? (open.length > 0 ? nearest.find(asSeen)?.text : undefined) ?? code,
            ...(why === undefined ? {} : { open: why }),
            ...(turned === undefined ? {} : { other: turned.text }),
          },
          photos: [from.photoId],
          asks: [askFor(goesOn ? 'whole-stamp' : 'stamp-photo', {})],
        },
      ];
    });
  },
});

/** Whether a way to read a line changes none of its characters but those of one shape. */
const asSeen = ({ how }: Nearest): boolean => how !== 'differs';
