import * as z from 'zod';
import { evidenceId } from '../evidence';
import { spanSchema } from '../span/types';
import { askFor } from './asks';
import { shownCodeSchema } from './code-data';
import { defineCheck, fromMakerFile, makerFileSource, type Speech } from './frame';
import { pairKind } from './pairs';

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
  needs: { maker: ['codeSystems', 'plants'], pairs: true, facts: ['settledCodes', 'misfitsInTime'] },
  run(facts) {
    const maker = facts.maker.name;
    return facts.fact.settledCodes.flatMap((code): Speech<z.infer<typeof dataSchema>>[] => {
      const { decoding, readings, shown, photos } = code;
      const first = readings.find(({ span }) => span !== null);
      const evidence = [evidenceId.reading(decoding.id), evidenceId.system(decoding.id)] as const;
      const kind = pairKind(facts.pairOf('code-system', ...evidence));
      if (!first?.span || !kind || facts.fact.misfitsInTime.has(decoding.id)) return [];
      const { system, systemUsed } = first;
      return [
        {
          kind,
          key: decoding.id,
          data: { shown, date: first.span, system: system.id, maker, used: systemUsed },
          photos,
          evidence: [...evidence],
          source: fromMakerFile(maker, { of: 'code-system', name: system.id }, system.source),
          asks: [askFor('stamp-photo', {})],
        },
      ];
    });
  },
});
