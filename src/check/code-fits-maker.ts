import * as z from 'zod';
import { differencesBetween } from '../code';
import type { Nearest } from '../code/types';
import { isInOwnTime } from '../evidence';
import { askFor } from './asks';
import { type NearCode, nearCodeSchema, readingSaidSchema, readingsSaid, shownCodeSchema } from './code-data';
import { defineCheck, fromMakerFile, makerFileSource, type Speech } from './frame';

const fitSchema = z.strictObject({
  shown: shownCodeSchema,
  maker: z.string(),
  /** The system by which it reads, null where none does. */
  system: z.string().nullable(),
  readings: z.array(readingSaidSchema),
  near: nearCodeSchema.nullable(),
});
type FitData = z.infer<typeof fitSchema>;

export const codeFitsMaker = defineCheck({
  id: 'code-fits-maker',
  family: 'code',
  kinds: ['doubt', 'agreement'],
  source: makerFileSource,
  data: fitSchema,
  needs: { maker: ['codeSystems'], facts: ['settledCodes'] },
  run(facts) {
    return facts.fact.settledCodes.flatMap(({ decoding, readings, shown, photos }): Speech<FitData>[] => {
      const source = fromMakerFile(facts.maker.name, { of: 'code-systems' }, readings[0]?.system.source);
      const key = decoding.id;
      if (readings[0]) {
        // Out of its system's time it is another check's contradiction, not an agreement here.
        if (!readings.some(isInOwnTime)) return [];
        const data = {
          shown,
          maker: facts.maker.name,
          system: readings[0].system.id,
          readings: readingsSaid(readings),
        };
        return [{ kind: 'agreement', key, data: { ...data, near: null }, photos, source }];
      }
      if (decoding.misfits.length > 0) return [];
      const near = decoding.nearest[0];
      const data = { shown, maker: facts.maker.name, system: null, readings: [] };
      return [
        {
          kind: 'doubt',
          key,
          data: { ...data, near: near ? nearCode(decoding.code, near) : null },
          photos,
          source,
          asks: [askFor('stamp-photo', {})],
        },
      ];
    });
  },
});

const nearCode = (read: string, { text, reading }: Nearest): NearCode => ({
  code: text,
  differences: differencesBetween(read, text),
  system: reading.system.id,
  used: reading.systemUsed,
  says: { span: reading.span, places: reading.places },
});
