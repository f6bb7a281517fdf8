import * as z from 'zod';
import { dayOfYearSpan } from '../../../span';
import { listCells, numbersFrom } from '../cell';
import { reversed } from '../forms';
import { defineSlot } from '../kind';

const ordinals = numbersFrom(1, 366, 3);

/** A day counted from 1 January, three digits. Day 366 is held against its year when the code is read. */
export const dayOfYearSlot = defineSlot({
  kind: 'dayOfYear',
  schemas: [z.strictObject({ dayOfYear: z.literal(3), reversed }).describe('Day of the year, 001 to 366.')],
  fresh: { dayOfYear: 3 },
  fields: [{ name: 'reversed', as: 'tick', label: 'reversed' }],
  shape: (slot) => {
    const cells = listCells(ordinals, 'dayOfYear', 0, 3);
    return {
      name: 'day of year',
      cells: slot.reversed ? cells.reverse() : cells,
      group: {
        name: 'dayOfYear',
        writes: '3 digits',
        width: 3,
        values: ordinals,
        expected: { kind: 'range', first: '001', last: '366' },
      },
    };
  },
  dates: (ordinal, year) => dayOfYearSpan(year, ordinal),
  write: ({ span, year }) => {
    const ordinal = ordinals.findIndex((_, at) => dayOfYearSpan(year, at + 1)?.from === span.from);
    return ordinals[ordinal] ?? null;
  },
  blamed: 2,
});
