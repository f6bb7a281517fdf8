import * as z from 'zod';
import { evidenceId } from '../evidence';
import { spanSchema } from '../span/types';
import { askFor } from './asks';
import { shownCodeSchema } from './code-data';
import { datingReadings } from './fact/settled-codes';
import { defineCheck, fromMakerFile, makerFileSource, type Speech } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';

const dataSchema = z.strictObject({
  shown: shownCodeSchema,
  date: spanSchema,
  plant: z.string(),
  place: z.string(),
  used: z.array(spanSchema),
});

export const plantInUse = defineCheck({
  id: 'plant-in-use',
  family: 'code',
  kinds: ['contradiction', 'doubt', 'agreement'],
  source: makerFileSource,
  data: dataSchema,
  needs: { maker: ['plants'], pairs: true, facts: ['settledCodes'] },
  run(facts) {
    const codes = facts.fact.settledCodes.map((code) => ({ ...code, readings: datingReadings(code) }));
    const withPlant = codes.filter(({ readings }) => readings.some(({ plant, span }) => plant && span));
    if (withPlant.length === 0) return { notApplicable: because('no-plant-and-date', {}) };
    return withPlant.flatMap(({ decoding, readings, shown, photos }): Speech<z.infer<typeof dataSchema>>[] => {
      const first = readings.find(({ plant, span }) => plant && span);
      const evidence = [evidenceId.reading(decoding.id), evidenceId.plant(decoding.id)] as const;
      const kind = pairKind(facts.pairOf('code-plant', ...evidence));
      if (!first?.plant || !first.span || !kind) return [];
      const { code, place, used, source } = first.plant;
      return [
        {
          kind,
          key: decoding.id,
          data: { shown, date: first.span, plant: code, place, used },
          photos,
          evidence: [...evidence],
          source: fromMakerFile(facts.maker.name, { of: 'plant', name: code }, source),
          asks: [askFor('stamp-photo', {})],
        },
      ];
    });
  },
});
