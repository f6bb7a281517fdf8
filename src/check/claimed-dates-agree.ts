import * as z from 'zod';
import { evidenceId } from '../evidence';
import { askFor } from './asks';
import { claimedDate, claimedDateSchema } from './date-data';
import { distinctDates } from './dates';
import { defineCheck, practice } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';

/** Dates that agree and are named. */
const mostNamed = 3;

export const claimedDatesAgree = defineCheck({
  id: 'claimed-dates-agree',
  family: 'time',
  kinds: ['doubt', 'agreement'],
  source: practice,
  /** The two that do not agree, or the first of those that do. */
  data: z.strictObject({ dates: z.array(claimedDateSchema) }),
  needs: { claims: ['made'], pairs: true },
  run({ claims, pairOf }) {
    const made = distinctDates(claims.made);
    if (made.length < 2) return { notApplicable: because('fewer-than-two-dates', {}) };
    const pairs = made.flatMap((first, index) => made.slice(index + 1).map((second) => [first, second] as const));
    const kindOf = ([first, second]: (typeof pairs)[number]) =>
      pairKind(pairOf('claimed-dates', evidenceId.claim(first.id), evidenceId.claim(second.id)));
    const off = pairs.find((pair) => kindOf(pair) === 'doubt');
    const asks = [askFor('made-date', {})];
    if (off) {
      const evidence = off.map(({ id }) => evidenceId.claim(id));
      const claims = off.map(({ id }) => id);
      return [{ kind: 'doubt', data: { dates: off.map(claimedDate) }, claims, evidence, asks }];
    }
    const together = pairs.every((pair) => kindOf(pair) === 'agreement');
    const different = new Set(made.map(({ words }) => words.toLowerCase())).size > 1;
    if (!together || !different) return [];
    const dates = made.slice(0, mostNamed).map(claimedDate);
    return [{ kind: 'agreement', data: { dates }, claims: made.map(({ id }) => id) }];
  },
});
