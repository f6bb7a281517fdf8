import * as z from 'zod';
import { ageYears, evidenceId, roomYears } from '../evidence';
import { askFor } from './asks';
import { datedSchema } from './fact/date';
import { defineCheck, practice } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';
import { saidOf } from './said-claims';

export const freshAgainstAge = defineCheck({
  id: 'fresh-against-age',
  family: 'materials',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ words: z.string(), years: z.number(), dated: datedSchema }),
  limits: { darkenedYears: roomYears.darkened },
  needs: {
    claims: ['fresh-part'],
    now: true,
    pairs: true,
    facts: ['date'],
  },
  unless: ({ claims }) => (saidOf(claims['fresh-part']).length === 0 ? because('no-fresh-part', {}) : null),
  run(facts) {
    const { claims } = facts;
    const dated = facts.fact.date;
    const [fresh] = saidOf(claims['fresh-part']);
    if (!fresh) return [];
    const evidence = [evidenceId.age(fresh.id), dated.id] as const;
    const kind = pairKind(facts.pairOf('fresh-date', ...evidence));
    if (!kind) return [];
    const data = { words: fresh.words, years: ageYears(dated.spans, facts.now), dated: dated.said };
    const named = [fresh.id, ...dated.claims];
    return [{ kind, data, claims: named, evidence: [evidence[0]], photos: dated.photos, asks: [askFor('aging', {})] }];
  },
});
