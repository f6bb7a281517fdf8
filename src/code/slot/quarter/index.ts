import * as z from 'zod';
import { quarterSpan } from '../../../span';
import { listedShape } from '../cell';
import { letters } from '../forms';
import { defineSlot } from '../kind';

const isLetter = (slot: Record<string, unknown>) => typeof slot.quarter === 'string';

/** A quarter of the year: 1 to 4, or one of four letters in order. */
export const quarterSlot = defineSlot({
  kind: 'quarter',
  schemas: [
    z
      .strictObject({ quarter: z.union([z.literal(1), letters.length(4)]) })
      .describe('Quarter as 1 to 4, or as one of four letters in order.'),
  ],
  fresh: { quarter: 1 },
  fields: [
    {
      name: 'quarter',
      as: 'choice',
      label: 'written',
      choices: (slot) => [
        [1, 'quarterDigit'],
        [isLetter(slot) ? String(slot.quarter) : 'ABCD', 'letter'],
      ],
    },
    { name: 'quarter', as: 'text', label: 'quarterLetters', required: true, when: isLetter },
  ],
  shape: (slot) => listedShape('quarter', slot.quarter === 1 ? '1234' : slot.quarter),
  dates: (quarter, year) => quarterSpan(year, quarter),
  write: ({ span }, group) => group.values?.[Math.ceil(Number(span.from.slice(5, 7)) / 3) - 1] ?? null,
});
