import * as z from 'zod';
import { evidenceId } from '../evidence';
import { askFor } from './asks';
import { readingSaidSchema, readingsSaid, shownCodeSchema } from './code-data';
import { settledCodes } from './codes';
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
  needs: { marks: true, claims: ['replaced'], maker: ['codeSystems'], decodings: true, photos: 'any', pairs: true },
  run(facts) {
    const dated = datedMarks(facts.marks, facts.claims.replaced);
    if (dated.length === 0) return { notApplicable: because('no-dating-mark', {}) };
    const settled = settledCodes(facts, facts.maker.name);
    if (!('codes' in settled)) return settled;
    const said = settled.codes.flatMap(({ decoding, readings, shown, photos }) =>
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
