import * as z from 'zod';
import { capitals, digits } from '../cell';
import { letters } from '../forms';
import { defineSlot } from '../kind';

const classes = { digit: digits, letter: capitals, either: capitals + digits };

/** Characters whose meaning is not known or does not matter here. */
export const anySlot = defineSlot({
  kind: 'any',
  schemas: [
    z.strictObject({
      any: z.number().int().min(1).max(20),
      of: z.enum(['digit', 'letter', 'either']).optional(),
      /** Only these characters, instead of a whole class. */
      from: letters.optional(),
    }),
  ],
  fresh: { any: 1 },
  fields: [
    { name: 'any', as: 'number', label: 'length' },
    {
      name: 'of',
      as: 'choice',
      label: 'kind',
      choices: [
        ['digit', 'digit'],
        ['letter', 'letters'],
        ['either', 'either'],
      ],
      none: 'either',
    },
    { name: 'from', as: 'text', label: 'only' },
  ],
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
});
