import * as z from 'zod';
import { monthSpan } from '../../../span';
import { capitals, listedShape, numbersFrom, partName, twoDigitCells } from '../cell';
import { letters, reversed, two, twoDigits } from '../forms';
import { defineSlot, halves, hasHalves } from '../kind';

const twelve = numbersFrom(1, 12, 2);

const schemas = [
  z.strictObject({ month: two, reversed }),
  /** `1-9OND`: 1 to 9, then O, N, D. `1-9`: one digit; October to December are written in another layout. */
  z.strictObject({ month: z.enum(['1-9OND', '1-9']) }),
  z.strictObject({ month: z.literal('letter'), letters: letters.length(12).optional() }),
] as const;
type MonthSlot = z.infer<(typeof schemas)[number]>;

/** The letters of a month written with one character; null when it is written with two digits. */
function lettersOf(slot: MonthSlot): string | null {
  if (slot.month === 'letter') return slot.letters ?? capitals.slice(0, 12);
  if (slot.month === '1-9') return '123456789';
  return slot.month === '1-9OND' ? '123456789OND' : null;
}

/** A month as two digits (together or apart), as 1 to 9 (and O, N, D), or as one of twelve letters. */
export const monthSlot = defineSlot({
  kind: 'month',
  schemas,
  fresh: { month: 2 },
  fields: [
    {
      name: 'month',
      as: 'choice',
      label: 'written',
      choices: [...halves, ['1-9OND', { as: '1–9 O N D' }], ['1-9', { as: '1–9' }], ['letter', 'letter']],
      remake: (month) => ({ month }) as MonthSlot,
    },
    {
      name: 'letters',
      as: 'text',
      label: 'monthLetters',
      example: 'ABCDEFGHIJKL',
      when: (slot) => slot.month === 'letter',
    },
    { name: 'reversed', as: 'tick', label: 'reversed', when: hasHalves({ name: 'month' }) },
  ],
  shape: (slot) => {
    const listed = lettersOf(slot);
    if (listed !== null) return listedShape('month', listed);
    const { month: part, reversed: turned } = slot as Extract<MonthSlot, { month: 2 | 'tens' | 'units' }>;
    return {
      name: partName('month', part),
      cells: twoDigitCells(part, twelve, 'month', turned),
      group: {
        name: 'month',
        writes: '2 digits',
        width: 2,
        values: twelve,
        expected: { kind: 'range', first: '01', last: '12' },
      },
    };
  },
  dates: (month, year) => monthSpan(year, month),
  write: ({ span }, group) => {
    const month = Number(span.from.slice(5, 7));
    return group.width === 1 ? (group.values?.[month - 1] ?? null) : twoDigits(month);
  },
});
