import * as z from 'zod';
import { evidenceId } from '../evidence';
import { askFor } from './asks';
import { readingSaidSchema, readingsSaid, shownCodeSchema } from './code-data';
import { datedMark, datedMarkSchema } from './date-data';
import { defineCheck, practice } from './frame';
import { datedMarks, oncePerMark } from './marks';
import { pairKind } from './pairs';
import { because } from './reasons';

export const markAgainstCodeDate = defineCheck({
  id: 'mark-against-code-date',
  family: 'time',
  kinds: ['contradiction', 'doubt', 'agreement'],
  source: practice,
  data: z.strictObject({ shown: shownCodeSchema, readings: z.array(readingSaidSchema), mark: datedMarkSchema }),
  needs: { marks: true, claims: ['replaced'], maker: ['codeSystems'], pairs: true, facts: ['settledCodes'] },
  unless: ({ marks, claims }) =>
    datedMarks(marks, claims.replaced).length === 0 ? because('no-dating-mark', {}) : null,
  run(facts) {
    const dated = datedMarks(facts.marks, facts.claims.replaced);
    const said = facts.fact.settledCodes.flatMap(({ decoding, readings, shown, photos }) =>
      dated.flatMap((mark) => {
        const evidence = [evidenceId.reading(decoding.id), evidenceId.mark(mark.id)] as const;
        const kind = pairKind(facts.pairOf('code-mark', ...evidence));
        if (!kind) return [];
        const speech = {
          kind,
          key: `${decoding.id}/${mark.id}`,
          data: { shown, readings: readingsSaid(readings), mark: datedMark(mark, facts.photoNumber) },
          photos: [...photos, ...(mark.photoId ? [mark.photoId] : [])],
          evidence: [...evidence],
          source: mark.source,
          asks: [askFor('stamp-photo', {})],
        };
        return [{ mark, against: decoding.id, speech }];
      }),
    );
    return oncePerMark(said);
  },
});
