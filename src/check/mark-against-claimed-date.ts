import * as z from 'zod';
import { evidenceId } from '../evidence';
import { askFor } from './asks';
import { claimedDate, claimedDateSchema, datedMark, datedMarkSchema } from './date-data';
import { defineCheck, practice } from './frame';
import { datedMarks, oncePerMark } from './marks';
import { pairKind } from './pairs';
import { because } from './reasons';

export const markAgainstClaimedDate = defineCheck({
  id: 'mark-against-claimed-date',
  family: 'time',
  kinds: ['contradiction', 'doubt', 'agreement'],
  source: practice,
  data: z.strictObject({ mark: datedMarkSchema, claim: claimedDateSchema }),
  needs: { marks: true, claims: ['made', 'replaced'], pairs: true },
  run({ marks, claims, pairOf, photoNumber }) {
    if (claims.made.length === 0) return { notApplicable: because('no-date-claimed', {}) };
    const dated = datedMarks(marks, claims.replaced);
    if (dated.length === 0) return { notApplicable: because('no-dating-mark', {}) };
    const said = dated.flatMap((mark) =>
      claims.made.flatMap((claim) => {
        const evidence = evidenceId.mark(mark.id);
        const kind = pairKind(pairOf('claimed-date-mark', evidenceId.claim(claim.id), evidence));
        if (!kind) return [];
        const speech = {
          kind,
          key: `${mark.id}/${claim.id}`,
          data: { mark: datedMark(mark, photoNumber), claim: claimedDate(claim) },
          photos: mark.photoId ? [mark.photoId] : [],
          claims: [claim.id],
          evidence: [evidence],
          source: mark.source,
          asks: [askFor('made-date', {})],
        };
        return [{ mark, against: claim.id, speech }];
      }),
    );
    return oncePerMark(said);
  },
});
