import * as z from 'zod';
import { evidenceId, roomDays } from '../evidence';
import { spanSchema } from '../span/types';
import { askFor } from './asks';
import { shownCodeSchema } from './code-data';
import { daysApart } from './dates';
import { defineCheck, fromMakerFile, makerFileSource, type Speech } from './frame';

const dataSchema = z.strictObject({
  shown: shownCodeSchema,
  date: spanSchema,
  system: z.string(),
  maker: z.string(),
  used: spanSchema,
});

export const codeSystemInUse = defineCheck({
  id: 'code-system-in-use',
  family: 'code',
  kinds: ['contradiction', 'doubt'],
  source: makerFileSource,
  data: dataSchema,
  needs: { maker: ['codeSystems', 'plants'], facts: ['settledCodes', 'misfitsInTime'] },
  run(facts) {
    const maker = facts.maker.name;
    return facts.fact.settledCodes.flatMap((code): Speech<z.infer<typeof dataSchema>>[] => {
      const { decoding, readings, shown, hard, photos } = code;
      const dated = readings.flatMap((reading) => (reading.span ? [{ reading, span: reading.span }] : []));
      const first = dated[0];
      if (!first) return [];
      const apart = Math.min(...dated.map(({ reading, span }) => daysApart(span, reading.systemUsed)));
      if (apart === 0 || facts.fact.misfitsInTime.has(decoding.id)) return [];
      const { system, systemUsed } = first.reading;
      return [
        {
          kind: hard && apart > roomDays.makerPeriod ? 'contradiction' : 'doubt',
          key: decoding.id,
          data: { shown, date: first.span, system: system.id, maker, used: systemUsed },
          photos,
          evidence: [evidenceId.reading(decoding.id), evidenceId.system(decoding.id)],
          source: fromMakerFile(maker, `code system ${system.id}`, system.source),
          asks: [askFor('stamp-photo', {})],
        },
      ];
    });
  },
});
