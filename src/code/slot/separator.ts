import { plainSigns } from '../typed';
import type { SlotRule } from './cell';

/** One of several characters between other slots. It never counts for a check character. */
export const separatorSlot: SlotRule<'separator'> = {
  kind: 'separator',
  shape: (slot) => {
    const signs = plainSigns(slot.separator);
    return {
      name: 'separator',
      cells: [{ tight: signs, wide: signs, group: null, place: 0, optional: slot.optional === true }],
    };
  },
};
