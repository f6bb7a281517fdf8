import { listCells, type SlotRule } from './cell';

/** A quarter of the year: 1 to 4, or one of four letters in order. */
export const quarterSlot: SlotRule<'quarter'> = {
  kind: 'quarter',
  shape: (slot) => {
    const letters = slot.quarter === 1 ? '1234' : slot.quarter;
    const values = [...letters];
    return {
      name: 'quarter',
      cells: listCells(values, 'quarter', 0, 1),
      group: { name: 'quarter', writes: letters, width: 1, values, expected: `a quarter as one of ${letters}` },
    };
  },
};
