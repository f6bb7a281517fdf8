import type { Slot } from '../../maker/types';
import { capitals, listCells, numbersFrom, partName, type SlotRule, twoDigitCells } from './cell';

const twelve = numbersFrom(1, 12, 2);

type MonthSlot = Extract<Slot, { month: unknown }>;

/** The letters of a month written with one character; null when it is written with two digits. */
function lettersOf(slot: MonthSlot): string | null {
  if (slot.month === 'letter') return slot.letters ?? capitals.slice(0, 12);
  if (slot.month === '1-9') return '123456789';
  return slot.month === '1-9OND' ? '123456789OND' : null;
}

/** A month as two digits (together or apart), as 1 to 9 (and O, N, D), or as one of twelve letters. */
export const monthSlot: SlotRule<'month'> = {
  kind: 'month',
  shape: (slot) => {
    const letters = lettersOf(slot);
    if (letters !== null) {
      const values = [...letters];
      return {
        name: 'month',
        cells: listCells(values, 'month', 0, 1),
        group: { name: 'month', writes: letters, width: 1, values, expected: `a month as one of ${letters}` },
      };
    }
    const { month: part, reversed } = slot as Extract<MonthSlot, { month: 2 | 'tens' | 'units' }>;
    return {
      name: partName('month', part),
      cells: twoDigitCells(part, twelve, 'month', reversed),
      group: { name: 'month', writes: '2 digits', width: 2, values: twelve, expected: '01 to 12' },
    };
  },
};
