import * as z from 'zod';
import { evidenceId } from '../evidence';
import { askFor } from './asks';
import { readingSaidSchema, readingsSaid, shownCodeSchema } from './code-data';
import { claimedDate, claimedDateSchema } from './date-data';
import { defineCheck, practice, type Speech } from './frame';
import { pairKind } from './pairs';

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
  needs: { claims: ['made', 'bought'], now: true, pairs: true, makerName: true, perhaps: ['settledCodes'] },
  run(facts) {
    const today = facts.now.slice(0, 10);
    const conflict = (id: string) => {
      const pair = facts.pairOf('today-date', evidenceId.today, id);
      return pair?.relation === 'conflicts' ? pairKind(pair) : null;
    };
    const claims = [
      ...facts.claims.made.map((claim) => ({ claim, id: evidenceId.claim(claim.id) })),
      ...facts.claims.bought.map((claim) => ({ claim, id: evidenceId.age(claim.id) })),
    ];
    const early = claims.flatMap(({ claim, id }): Said[] => {
      const kind = conflict(id);
      if (!kind) return [];
      const evidence = [evidenceId.today, id];
      const data = { claim: claimedDate(claim), today };
      return [{ kind, key: claim.id, data, claims: [claim.id], evidence, asks: [askFor('made-date', {})] }];
    });
    const settled = facts.fact.settledCodes;
    // Without a maker's file no code is settled, and the claimed dates are all that there is to judge.
    if ('cannotTell' in settled && facts.makerName !== null && early.length === 0) return settled;
    const codes = 'is' in settled ? settled.is : [];
    const late = codes.flatMap(({ readings, shown, photos, decoding }): Said[] => {
      const evidence = [evidenceId.today, evidenceId.reading(decoding.id)];
      const kind = conflict(evidenceId.reading(decoding.id));
      if (!kind) return [];
      const data = { shown, readings: readingsSaid(readings), today };
      return [{ kind, key: decoding.id, data, photos, evidence, asks: [askFor('stamp-photo', {})] }];
    });
    return [...late, ...early];
  },
});
