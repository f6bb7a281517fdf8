import { capitals, digits, type SlotRule } from './cell';

const classes = { digit: digits, letter: capitals, either: capitals + digits };

/** Characters whose meaning is not known or does not matter here. */
export const anySlot: SlotRule<'any'> = {
  kind: 'any',
  shape: (slot) => {
    const of = slot.from ?? classes[slot.of ?? 'either'];
    return {
      name: 'unexplained characters',
      cells: Array.from({ length: slot.any }, (_, place) => ({
        tight: of,
        wide: of,
        group: null,
        place,
        optional: false,
      })),
    };
  },
};
