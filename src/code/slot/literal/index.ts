import * as z from 'zod';
import { plainSigns } from '../../typed';
import { printable } from '../forms';
import { defineSlot } from '../kind';

/** Characters that always stand there; written in capitals because codes are compared in capitals. */
export const literalSlot = defineSlot({
  kind: 'literal',
  schemas: [
    z
      .strictObject({ literal: printable.max(20), optional: z.boolean().optional() })
      .describe('Characters that always stand there; optional: there all or not at all.'),
  ],
  fresh: { literal: 'A' },
  fields: [
    { name: 'literal', as: 'text', label: 'characters', required: true },
    { name: 'optional', as: 'tick', label: 'optional' },
  ],
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
});
