import * as z from 'zod';
import { daySpan, daysInMonth, isoDate } from '../../../span';
import { numbersFrom, partName, twoDigitCells } from '../cell';
import { reversed, two } from '../forms';
import { defineSlot, halves } from '../kind';

const days = numbersFrom(1, 31, 2);

/** A day of the month as two digits. Whether the month has that day is judged when the code is read. */
export const daySlot = defineSlot({
  kind: 'day',
  schemas: [
    z.strictObject({ day: two, reversed }).describe('Day of the month: both digits, or its tens or units alone.'),
  ],
  fresh: { day: 2 },
  fields: [
    { name: 'day', as: 'choice', label: 'written', choices: halves },
    { name: 'reversed', as: 'tick', label: 'reversed' },
  ],
  shape: (slot) => ({
    name: partName('day', slot.day),
    cells: twoDigitCells(slot.day, days, 'day', slot.reversed),
    group: {
      name: 'day',
      writes: '2 digits',
      width: 2,
      values: days,
      expected: { kind: 'range', first: '01', last: '31' },
    },
  }),
  dates: (day, year, _, { month }) => {
    if (month === null) return undefined;
    return day <= daysInMonth(year, month) ? daySpan(isoDate(year, month, day)) : null;
  },
  write: ({ span }) => span.from.slice(8),
  blamed: 3,
});
