import { checkShape } from '../check-character';
import type { SlotRule } from './cell';

/** A check character; which one it has to be follows from the characters that it covers. */
export const checkSlot: SlotRule<'check'> = {
  kind: 'check',
  shape: (slot) => {
    const { width, of } = checkShape[slot.check];
    const cells = Array.from({ length: width }, (_, place) => ({
      tight: of,
      wide: of,
      group: null,
      place,
      optional: false,
    }));
    return { name: width === 1 ? 'check character' : 'check characters', cells };
  },
};
