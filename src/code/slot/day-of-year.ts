import { listCells, numbersFrom, type SlotRule } from './cell';

const ordinals = numbersFrom(1, 366, 3);

/** A day counted from 1 January, three digits. Day 366 is held against its year when the code is read. */
export const dayOfYearSlot: SlotRule<'dayOfYear'> = {
  kind: 'dayOfYear',
  shape: (slot) => {
    const cells = listCells(ordinals, 'dayOfYear', 0, 3);
    return {
      name: 'day of year',
      cells: slot.reversed ? cells.reverse() : cells,
      group: { name: 'dayOfYear', writes: '3 digits', width: 3, values: ordinals, expected: '001 to 366' },
    };
  },
};
