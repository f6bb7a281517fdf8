import { numbersFrom, partName, type SlotRule, twoDigitCells } from './cell';

const weeks = numbersFrom(1, 53, 2);

/** A week as two digits, together or apart. Week 53 is held against its year when the code is read. */
export const weekSlot: SlotRule<'week'> = {
  kind: 'week',
  shape: (slot) => ({
    name: partName('week', slot.week),
    cells: twoDigitCells(slot.week, weeks, 'week', slot.reversed),
    group: { name: 'week', writes: `2 digits, ${slot.count ?? 'iso'}`, width: 2, values: weeks, expected: '01 to 53' },
  }),
};
