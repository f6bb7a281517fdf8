import * as z from 'zod';
import { evidenceId } from '../evidence';
import { askFor } from './asks';
import { shownCodeSchema } from './code-data';
import { defineCheck, makerFileSource, type Speech } from './frame';
import { marksInPhotos } from './marks';
import { pairKind } from './pairs';
import { placedMark, placedMarkSchema } from './place-data';
import { because } from './reasons';

const dataSchema = z.strictObject({ shown: shownCodeSchema, places: z.array(z.string()), mark: placedMarkSchema });

export const markAgainstPlant = defineCheck({
  id: 'mark-against-plant',
  family: 'place',
  kinds: ['doubt', 'agreement'],
  source: makerFileSource,
  data: dataSchema,
  needs: { marks: true, maker: ['plants'], pairs: true, facts: ['settledCodes'] },
  unless: ({ marks }) => (marksInPhotos(marks).length === 0 ? because('no-placed-mark', {}) : null),
  run(facts) {
    const placed = marksInPhotos(facts.marks);
    return facts.fact.settledCodes.flatMap(({ decoding, readings, shown, photos }) =>
      placed.flatMap((mark): Speech<z.infer<typeof dataSchema>>[] => {
        const evidence = [evidenceId.reading(decoding.id), evidenceId.mark(mark.id)] as const;
        const kind = pairKind(facts.pairOf('code-mark-place', ...evidence));
        if (!kind) return [];
        const places = [...new Set(readings.flatMap((reading) => reading.places))];
        return [
          {
            kind,
            key: `${decoding.id}/${mark.id}`,
            data: { shown, places, mark: placedMark(mark, facts.photoNumber) },
            photos: [...photos, ...(mark.photoId ? [mark.photoId] : [])],
            evidence: [...evidence],
            source: mark.source,
            asks: [askFor('origin', {})],
          },
        ];
      }),
    );
  },
});
