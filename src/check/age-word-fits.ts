import * as z from 'zod';
import { askFor } from './asks';
import { datedSchema } from './fact/date';
import { defineCheck, practice } from './frame';
import { because } from './reasons';
import { saidOf } from './said-claims';

/** Under this age marketplaces do not call a piece so. Common practice, no source. */
const leastYears = { vintage: 20, antique: 100 };

export const ageWordFits = defineCheck({
  id: 'age-word-fits',
  family: 'text',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ words: z.string(), least: z.number(), dated: datedSchema }),
  limits: leastYears,
  needs: {
    claims: ['age-word'],
    now: true,
    facts: ['date'],
  },
  unless: ({ claims }) => (saidOf(claims['age-word']).length === 0 ? because('no-age-word', {}) : null),
  run(facts) {
    const dated = facts.fact.date;
    const said = saidOf(facts.claims['age-word']);
    const found = said.find(({ word }) => word === 'antique') ?? said[0];
    if (!found) return [];
    const year = Number(facts.now.slice(0, 4));
    const oldest = Math.min(...dated.spans.map(({ from }) => (from ? Number(from.slice(0, 4)) : 0)));
    const least = leastYears[found.word];
    if (year - oldest >= least) return [];
    const claims = [found.id, ...dated.claims];
    const data = { words: found.words, least, dated: dated.said };
    return [{ kind: 'doubt', data, claims, photos: dated.photos, asks: [askFor('made-date', {})] }];
  },
});
