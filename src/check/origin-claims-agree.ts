import * as z from 'zod';
import { evidenceId } from '../evidence';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';

const namedSchema = z.strictObject({ words: z.string(), place: z.string() });

export const originClaimsAgree = defineCheck({
  id: 'origin-claims-agree',
  family: 'place',
  kinds: ['doubt'],
  source: practice,
  /** The two countries that are not the same. */
  data: z.strictObject({ first: namedSchema, other: namedSchema }),
  needs: { claims: ['origin'], pairs: true },
  run({ claims: { origin }, pairOf }) {
    if (origin.length < 2) return { notApplicable: because('fewer-than-two-origins', {}) };
    for (const [at, first] of origin.entries())
      for (const other of origin.slice(at + 1)) {
        const evidence = [evidenceId.claim(first.id), evidenceId.claim(other.id)] as const;
        if (pairKind(pairOf('origins', ...evidence)) !== 'doubt') continue;
        const named = ({ words, place }: typeof first) => ({ words, place });
        const data = { first: named(first), other: named(other) };
        const claims = [first.id, other.id];
        return [{ kind: 'doubt', data, claims, evidence: [...evidence], asks: [askFor('origin', {})] }];
      }
    return [];
  },
});
