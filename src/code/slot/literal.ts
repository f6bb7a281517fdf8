import { plainSigns } from '../typed';
import type { SlotRule } from './cell';

/** Characters that always stand there; written in capitals because codes are compared in capitals. */
export const literalSlot: SlotRule<'literal'> = {
  kind: 'literal',
  shape: (slot) => ({
    name: 'fixed characters',
    cells: [...plainSigns(slot.literal)].map((character, place) => ({
      tight: character,
      wide: character,
      group: null,
      place,
      optional: place === 0 && slot.optional === true,
    })),
  }),
};
