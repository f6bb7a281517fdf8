import * as z from 'zod';
import { evidenceId } from '../evidence';
import { askFor } from './asks';
import { defineCheck, practice, type Speech } from './frame';
import { marksInPhotos } from './marks';
import { pairKind } from './pairs';
import { placedMark, placedMarkSchema } from './place-data';
import { because } from './reasons';

const dataSchema = z.strictObject({ mark: placedMarkSchema, claimed: z.string() });

export const markAgainstOrigin = defineCheck({
  id: 'mark-against-origin',
  family: 'place',
  kinds: ['doubt', 'agreement'],
  source: practice,
  data: dataSchema,
  needs: { marks: true, claims: ['origin'], pairs: true },
  run({ marks, claims, pairOf, photoNumber }) {
    if (claims.origin.length === 0) return { notApplicable: because('no-origin-claimed', {}) };
    const placed = marksInPhotos(marks);
    if (placed.length === 0) return { notApplicable: because('no-placed-mark', {}) };
    return placed.flatMap((mark) =>
      claims.origin.flatMap((claim): Speech<z.infer<typeof dataSchema>>[] => {
        const evidence = [evidenceId.claim(claim.id), evidenceId.mark(mark.id)] as const;
        const kind = pairKind(pairOf('origin-mark', ...evidence));
        if (!kind) return [];
        return [
          {
            kind,
            key: `${mark.id}/${claim.id}`,
            data: { mark: placedMark(mark, photoNumber), claimed: claim.words },
            photos: mark.photoId ? [mark.photoId] : [],
            claims: [claim.id],
            evidence: [...evidence],
            source: mark.source,
            asks: [askFor('origin', {})],
          },
        ];
      }),
    );
  },
});
