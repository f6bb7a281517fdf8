import { numbersFrom, partName, type SlotRule, twoDigitCells } from './cell';

const days = numbersFrom(1, 31, 2);

/** A day of the month as two digits. Whether the month has that day is judged when the code is read. */
export const daySlot: SlotRule<'day'> = {
  kind: 'day',
  shape: (slot) => ({
    name: partName('day', slot.day),
    cells: twoDigitCells(slot.day, days, 'day', slot.reversed),
    group: { name: 'day', writes: '2 digits', width: 2, values: days, expected: '01 to 31' },
  }),
};
