import * as z from 'zod';
import { daySpan } from '../span';
import { askFor } from './asks';
import { readingSaidSchema, readingsSaid, shownCodeSchema } from './code-data';
import { claimedDate, claimedDateSchema } from './date-data';
import { daysBefore } from './dates';
import { defineCheck, practice, type Speech } from './frame';

/** A code or a claim of the listing, and the day on which the listing was looked at. */
const dataSchema = z.union([
  z.strictObject({ shown: shownCodeSchema, readings: z.array(readingSaidSchema), today: z.string() }),
  z.strictObject({ claim: claimedDateSchema, today: z.string() }),
]);
type Said = Speech<z.infer<typeof dataSchema>>;

export const dateNotInFuture = defineCheck({
  id: 'date-not-in-future',
  family: 'time',
  kinds: ['contradiction', 'doubt'],
  source: practice,
  data: dataSchema,
  needs: { claims: ['made', 'bought'], now: true, makerName: true, perhaps: ['settledCodes'] },
  run(facts) {
    const today = facts.now.slice(0, 10);
    const now = daySpan(today);
    const claims = [...facts.claims.made, ...facts.claims.bought].filter(({ span }) => daysBefore(now, span) > 0);
    const early = claims.map((claim): Said => {
      const data = { claim: claimedDate(claim), today };
      return { kind: 'doubt', key: claim.id, data, claims: [claim.id], asks: [askFor('made-date', {})] };
    });
    const settled = facts.fact.settledCodes;
    // Without a maker's file no code is settled, and the claimed dates are all that there is to judge.
    if ('cannotTell' in settled && facts.makerName !== null && early.length === 0) return settled;
    const codes = 'is' in settled ? settled.is : [];
    const late = codes.flatMap(({ readings, shown, hard, photos, decoding }): Said[] => {
      const spans = readings.flatMap(({ span }) => (span ? [span] : []));
      if (spans.length === 0 || spans.some((span) => daysBefore(now, span) === 0)) return [];
      const data = { shown, readings: readingsSaid(readings), today };
      const kind = hard ? 'contradiction' : 'doubt';
      return [{ kind, key: decoding.id, data, photos, asks: [askFor('stamp-photo', {})] }];
    });
    return [...late, ...early];
  },
});
