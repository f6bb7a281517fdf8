import * as z from 'zod';
import { evidenceId, roomDays } from '../evidence';
import { spanSchema } from '../span/types';
import { askFor } from './asks';
import { shownCodeSchema } from './code-data';
import { daysApart } from './dates';
import { datingReadings } from './fact/settled-codes';
import { defineCheck, fromMakerFile, makerFileSource, type Speech } from './frame';
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
  needs: { maker: ['plants'], facts: ['settledCodes'] },
  run(facts) {
    const codes = facts.fact.settledCodes.map((code) => ({ ...code, readings: datingReadings(code) }));
    const withPlant = codes.filter(({ readings }) => readings.some(({ plant, span }) => plant && span));
    if (withPlant.length === 0) return { notApplicable: because('no-plant-and-date', {}) };
    return withPlant.flatMap(({ decoding, readings, shown, hard, photos }): Speech<z.infer<typeof dataSchema>>[] => {
      const known = readings.flatMap(({ plant, span }) =>
        plant && span && plant.used.length > 0 ? [{ plant, span }] : [],
      );
      const first = known[0];
      if (!first || known.length < readings.length) return [];
      const { code, place, used, source } = first.plant;
      const apart = Math.min(...known.flatMap(({ plant, span }) => plant.used.map((one) => daysApart(one, span))));
      const beyond = hard && apart > roomDays.makerPeriod;
      return [
        {
          kind: apart === 0 ? 'agreement' : beyond ? 'contradiction' : 'doubt',
          key: decoding.id,
          data: { shown, date: first.span, plant: code, place, used },
          photos,
          evidence: [evidenceId.reading(decoding.id), evidenceId.plant(decoding.id)],
          source: fromMakerFile(facts.maker.name, `plant ${code}`, source),
          asks: [askFor('stamp-photo', {})],
        },
      ];
    });
  },
});
