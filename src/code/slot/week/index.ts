import * as z from 'zod';
import { weekSpan } from '../../week';
import { numbersFrom, partName, twoDigitCells } from '../cell';
import { reversed, two, twoDigits } from '../forms';
import { defineSlot, halves } from '../kind';

const weeks = numbersFrom(1, 53, 2);

/** A week as two digits, together or apart. Week 53 is held against its year when the code is read. */
export const weekSlot = defineSlot({
  kind: 'week',
  schemas: [
    /** `count` says which week is the first: ISO 8601's, or the first full week from Sunday to Saturday. */
    z
      .strictObject({ week: two, count: z.enum(['iso', 'first-full-sunday']).optional(), reversed })
      .describe('Week of the year, ISO 8601 unless counted from the first full week from Sunday to Saturday.'),
  ],
  fresh: { week: 2 },
  fields: [
    { name: 'week', as: 'choice', label: 'written', choices: halves },
    { name: 'count', as: 'choice', label: 'weekCount', choices: [['first-full-sunday', 'fromSunday']], none: 'iso' },
    { name: 'reversed', as: 'tick', label: 'reversed' },
  ],
  shape: (slot) => ({
    name: partName('week', slot.week),
    cells: twoDigitCells(slot.week, weeks, 'week', slot.reversed),
    group: {
      name: 'week',
      writes: `2 digits, ${slot.count ?? 'iso'}`,
      width: 2,
      values: weeks,
      expected: { kind: 'range', first: '01', last: '53' },
    },
  }),
  dates: (week, year, group) => weekSpan(year, week, group.writes.split(', ')[1]),
  write: ({ week }) => (week === null ? null : twoDigits(week)),
  blamed: 1,
});
