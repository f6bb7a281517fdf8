import * as z from 'zod';
import { isExact, roomDays } from '../evidence';
import { askFor } from './asks';
import { claimedDate, claimedDateSchema } from './date-data';
import { daysApart, distinctDates } from './dates';
import { defineCheck, practice } from './frame';
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
  needs: { claims: ['made'] },
  run({ claims }) {
    const made = distinctDates(claims.made);
    if (made.length < 2) return { notApplicable: because('fewer-than-two-dates', {}) };
    const pairs = made.flatMap((first, index) => made.slice(index + 1).map((second) => [first, second] as const));
    const off = pairs.find(([first, second]) => {
      const apart = daysApart(first.span, second.span);
      return apart > (isExact(first.span) && isExact(second.span) ? 0 : roomDays.looseDates);
    });
    const asks = [askFor('made-date', {})];
    if (off) return [{ kind: 'doubt', data: { dates: off.map(claimedDate) }, claims: off.map(({ id }) => id), asks }];
    const together = pairs.every(([first, second]) => daysApart(first.span, second.span) === 0);
    const different = new Set(made.map(({ words }) => words.toLowerCase())).size > 1;
    if (!together || !different) return [];
    const dates = made.slice(0, mostNamed).map(claimedDate);
    return [{ kind: 'agreement', data: { dates }, claims: made.map(({ id }) => id) }];
  },
});
