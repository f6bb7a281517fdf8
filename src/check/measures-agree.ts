import * as z from 'zod';
import type { Measure } from '../listing/types';
import { askFor } from './asks';
import { defineCheck } from './frame';
import { statedSchema } from './sizes';

/** What two people measure apart on a soft piece. Common practice, no source. */
const tapeMm = 10;

const twiceSchema = z.enum(['width', 'height', 'depth', 'strap']);

export const measuresAgree = defineCheck({
  id: 'measures-agree',
  family: 'size',
  kinds: ['doubt'],
  source: {
    kind: 'memory',
    text: 'international yard and pound agreement of 1959: 1 inch = 25.4 mm',
  },
  data: z.strictObject({ side: twiceSchema, one: statedSchema, other: statedSchema }),
  limits: { tapeMm },
  needs: { claims: ['measure'], listing: ['measures'] },
  run({ claims, listing }) {
    const measures = [...listing.measures.map(({ value }) => value), ...claims.measure.map(({ measure }) => measure)];
    return twiceSchema.options.flatMap((side) => {
      const pair = farthest(measures.filter(({ dimension }) => dimension === side));
      if (!pair) return [];
      const [one, other] = pair;
      const ids = claims.measure.filter(({ measure }) => measure.dimension === side).map(({ id }) => id);
      const data = { side, one: { words: one.words, mm: one.mm }, other: { words: other.words, mm: other.mm } };
      return [{ kind: 'doubt' as const, key: side, data, claims: ids, asks: [askFor('measures', {})] }];
    });
  },
});

/** The two measures that differ by more than rounding and tape explain; null when all agree. */
function farthest(measures: Measure[]): [Measure, Measure] | null {
  const sorted = [...measures].sort((a, b) => a.mm - b.mm);
  const [a, b] = [sorted[0], sorted.at(-1)];
  return a && b && b.mm - a.mm > a.precisionMm + b.precisionMm + tapeMm ? [a, b] : null;
}
