import * as z from 'zod';
import { daySpan } from '../span';
import { askFor } from './asks';
import { readingSaidSchema, readingsSaid, shownCodeSchema } from './code-data';
import { settledCodes } from './codes';
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
  needs: { claims: ['made', 'bought'], decodings: true, photos: 'any', now: true, makerName: true },
  run(facts) {
    const today = facts.now.slice(0, 10);
    const now = daySpan(today);
    const claims = [...facts.claims.made, ...facts.claims.bought].filter(({ span }) => daysBefore(now, span) > 0);
    const early = claims.map((claim): Said => {
      const data = { claim: claimedDate(claim), today };
      return { kind: 'doubt', key: claim.id, data, claims: [claim.id], asks: [askFor('made-date', {})] };
    });
    const settled = facts.makerName === null ? null : settledCodes(facts, facts.makerName);
    if (settled && 'cannotTell' in settled && early.length === 0) return settled;
    const codes = settled && 'codes' in settled ? settled.codes : [];
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
