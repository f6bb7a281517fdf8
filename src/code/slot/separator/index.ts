import * as z from 'zod';
import { plainSigns } from '../../typed';
import { printable } from '../forms';
import { defineSlot } from '../kind';

/** One of several characters between other slots. It never counts for a check character. */
export const separatorSlot = defineSlot({
  kind: 'separator',
  schemas: [
    z
      .strictObject({ separator: printable.max(10), optional: z.boolean().optional() })
      .describe('Any one of these characters; never counted by a check character.'),
  ],
  fresh: { separator: '-', optional: true },
  fields: [
    { name: 'separator', as: 'text', label: 'anyOf', required: true },
    { name: 'optional', as: 'tick', label: 'optional' },
  ],
  shape: (slot) => {
    const signs = plainSigns(slot.separator);
    return {
      name: 'separator',
      cells: [{ tight: signs, wide: signs, group: null, place: 0, optional: slot.optional === true }],
    };
  },
});
