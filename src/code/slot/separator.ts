import type { SlotRule } from './cell';

/** One of several characters between other slots. It never counts for a check character. */
export const separatorSlot: SlotRule<'separator'> = {
  kind: 'separator',
  shape: (slot) => ({
    name: 'separator',
    cells: [{ tight: slot.separator, wide: slot.separator, group: null, place: 0, optional: slot.optional === true }],
  }),
};
