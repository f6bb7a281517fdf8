import * as z from 'zod';
import { checkShape } from '../../check-character';
import { defineSlot } from '../kind';

/** A check character; which one it has to be follows from the characters that it covers. */
export const checkSlot = defineSlot({
  kind: 'check',
  schemas: [
    z.strictObject({
      check: z.enum(['luhn', 'mod10', 'mod11', 'mod97', 'iso6346', 'vin']),
      /** For mod10 and mod11: from the first character when as many as characters, else repeated from the last one. */
      weights: z.array(z.number().int().min(0).max(97)).min(1).max(40).optional(),
      /** Which characters it covers: those before it (usual), or all the others. Separators never count. */
      over: z.enum(['before', 'all']).optional(),
    }),
  ],
  fresh: { check: 'luhn' },
  fields: [
    { name: 'check', as: 'rules', label: 'rule' },
    { name: 'over', as: 'choice', label: 'over', choices: [['all', 'overAll']], none: 'overBefore' },
    {
      name: 'weights',
      as: 'numbers',
      label: 'weights',
      example: '1, 3',
      when: (slot) => slot.check === 'mod10' || slot.check === 'mod11' || slot.weights !== undefined,
    },
  ],
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
});
