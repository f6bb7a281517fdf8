import * as z from 'zod';
import { askFor } from './asks';
import { datedSchema } from './fact/date';
import { defineCheck, practice } from './frame';
import { because } from './reasons';
import { saidOf } from './said-claims';

/** From this age on untreated leather has darkened and bright metal has dulled. Common practice, no source. */
const darkenedYears = 10;

export const freshAgainstAge = defineCheck({
  id: 'fresh-against-age',
  family: 'materials',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ words: z.string(), years: z.number(), dated: datedSchema }),
  limits: { darkenedYears },
  needs: {
    claims: ['fresh-part', 'stored', 'condition', 'replaced'],
    now: true,
    facts: ['date'],
  },
  unless: ({ claims }) => (saidOf(claims['fresh-part']).length === 0 ? because('no-fresh-part', {}) : null),
  run(facts) {
    const { claims } = facts;
    const dated = facts.fact.date;
    const [fresh] = saidOf(claims['fresh-part']);
    if (!fresh) return [];
    const year = Number(facts.now.slice(0, 4));
    const newest = Math.max(...dated.spans.map(({ to }) => (to ? Number(to.slice(0, 4)) : year)));
    if (year - newest < darkenedYears) return [];
    // Why something old may be fresh, as the seller tells it.
    const unused = claims.condition.some(({ condition }) => condition === 'new' || condition === 'unused');
    if (unused || claims.replaced.length > 0 || saidOf(claims.stored).length > 0) return [];
    const data = { words: fresh.words, years: year - newest, dated: dated.said };
    const named = [fresh.id, ...dated.claims];
    return [{ kind: 'doubt', data, claims: named, photos: dated.photos, asks: [askFor('aging', {})] }];
  },
});
