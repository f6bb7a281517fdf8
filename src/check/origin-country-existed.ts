import * as z from 'zod';
import { evidenceId } from '../evidence';
import { countryPeriod } from '../place';
import { spanSchema } from '../span/types';
import { askFor } from './asks';
import { datedSchema } from './fact/date';
import { defineCheck, type Speech } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';

const dataSchema = z.strictObject({ claimed: z.string(), place: z.string(), existed: spanSchema, dated: datedSchema });

export const originCountryExisted = defineCheck({
  id: 'origin-country-existed',
  family: 'place',
  kinds: ['contradiction', 'doubt', 'agreement'],
  source: {
    kind: 'published',
    text: 'ISO 3166-3:2020, codes of former countries, with the days on which they began and ended',
  },
  data: dataSchema,
  needs: { claims: ['origin'], pairs: true, facts: ['date'] },
  unless: ({ claims }) => (claims.origin.length === 0 ? because('no-origin-claimed', {}) : null),
  run(facts) {
    const { origin } = facts.claims;
    const dated = facts.fact.date;
    return origin.flatMap((claim): Speech<z.infer<typeof dataSchema>>[] => {
      const evidence = [evidenceId.country(claim.id), dated.id] as const;
      const kind = pairKind(facts.pairOf('country-date', ...evidence));
      if (!kind) return [];
      const { span, verified, source } = countryPeriod(claim.place);
      return [
        {
          kind,
          key: claim.id,
          data: { claimed: claim.words, place: claim.place, existed: span, dated: dated.said },
          claims: [claim.id, ...dated.claims],
          evidence: [...evidence],
          photos: dated.photos,
          source: { kind: verified ? 'published' : 'memory', text: source },
          asks: [askFor('origin', {})],
        },
      ];
    });
  },
});
