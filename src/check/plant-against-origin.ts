import * as z from 'zod';
import { evidenceId } from '../evidence';
import { askFor } from './asks';
import { shownCodeSchema } from './code-data';
import { defineCheck, fromMakerFile, makerFileSource, type Speech } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';

const dataSchema = z.strictObject({
  shown: shownCodeSchema,
  /** The plant of the likeliest reading, null where it names none. */
  plant: z.string().nullable(),
  places: z.array(z.string()),
  claimed: z.string(),
});

export const plantAgainstOrigin = defineCheck({
  id: 'plant-against-origin',
  family: 'place',
  kinds: ['contradiction', 'doubt', 'agreement'],
  source: makerFileSource,
  data: dataSchema,
  needs: { maker: ['plants'], claims: ['origin'], pairs: true, facts: ['settledCodes'] },
  unless: ({ claims }) => (claims.origin.length === 0 ? because('no-origin-claimed', {}) : null),
  run(facts) {
    const placed = facts.fact.settledCodes.filter(({ readings }) => readings.some(({ places }) => places.length > 0));
    if (placed.length === 0) return { notApplicable: because('no-placed-code', {}) };
    return placed.flatMap(({ decoding, readings, shown, photos }) =>
      facts.claims.origin.flatMap((claim): Speech<z.infer<typeof dataSchema>>[] => {
        const evidence = [evidenceId.claim(claim.id), evidenceId.reading(decoding.id)] as const;
        const kind = pairKind(facts.pairOf('origin-code', ...evidence));
        if (!kind) return [];
        const plant = readings[0]?.plant ?? null;
        const places = [...new Set(readings.flatMap((reading) => reading.places))];
        return [
          {
            kind,
            key: `${decoding.id}/${claim.id}`,
            data: { shown, plant: plant?.code ?? null, places, claimed: claim.words },
            photos,
            claims: [claim.id],
            evidence: [...evidence],
            source: fromMakerFile(
              facts.maker.name,
              plant ? { of: 'plant', name: plant.code } : { of: 'plants' },
              plant?.source,
            ),
            asks: [askFor('origin', {})],
          },
        ];
      }),
    );
  },
});
