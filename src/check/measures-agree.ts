import * as z from 'zod';
import { roomMm } from '../evidence';
import { askFor } from './asks';
import { defineCheck } from './frame';
import { pairKind } from './pairs';
import { statedSchema } from './sizes';

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
  /** Two tapes on a soft piece. */
  limits: { tapeMm: 2 * roomMm.tape },
  needs: { onePiece: true, claims: ['measure'], evidence: true, pairs: true },
  run({ claims, evidence, pairOf }) {
    const stated = evidence.flatMap(({ id, says }) => (says.kind === 'size' ? [{ ...says, id }] : []));
    return twiceSchema.options.flatMap((side) => {
      const own = stated.filter((one) => one.side === side).sort((a, b) => a.mm - b.mm);
      // The farthest two that do not agree.
      const apart = own.flatMap((one, at) =>
        own.slice(at + 1).flatMap((other) => {
          const pair = pairOf('sizes', one.id, other.id) ?? pairOf('sizes', other.id, one.id);
          return pairKind(pair) === 'doubt' ? [[one, other] as const] : [];
        }),
      );
      const [pair] = apart.sort(([a, b], [c, d]) => d.mm - c.mm - (b.mm - a.mm));
      if (!pair) return [];
      const [one, other] = pair;
      const ids = claims.measure.filter(({ measure }) => measure.dimension === side).map(({ id }) => id);
      const data = { side, one: { words: one.words, mm: one.mm }, other: { words: other.words, mm: other.mm } };
      const named = [one.id, other.id];
      return [
        { kind: 'doubt' as const, key: side, data, claims: ids, evidence: named, asks: [askFor('measures', {})] },
      ];
    });
  },
});
