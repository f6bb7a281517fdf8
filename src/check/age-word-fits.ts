import * as z from 'zod';
import { evidenceId, roomYears } from '../evidence';
import { askFor } from './asks';
import { datedSchema } from './fact/date';
import { defineCheck, practice } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';
import { saidOf } from './said-claims';

export const ageWordFits = defineCheck({
  id: 'age-word-fits',
  family: 'text',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ words: z.string(), least: z.number(), dated: datedSchema }),
  limits: { vintage: roomYears.vintage, antique: roomYears.antique },
  needs: {
    claims: ['age-word'],
    pairs: true,
    facts: ['date'],
  },
  unless: ({ claims }) => (saidOf(claims['age-word']).length === 0 ? because('no-age-word', {}) : null),
  run(facts) {
    const dated = facts.fact.date;
    const said = saidOf(facts.claims['age-word']);
    const found = said.find(({ word }) => word === 'antique') ?? said[0];
    if (!found) return [];
    const evidence = [evidenceId.age(found.id), dated.id] as const;
    const kind = pairKind(facts.pairOf('age-word-date', ...evidence));
    if (!kind) return [];
    const claims = [found.id, ...dated.claims];
    const data = { words: found.words, least: roomYears[found.word], dated: dated.said };
    return [{ kind, data, claims, evidence: [evidence[0]], photos: dated.photos, asks: [askFor('made-date', {})] }];
  },
});
