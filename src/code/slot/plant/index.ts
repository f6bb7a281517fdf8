import * as z from 'zod';
import { capitals, classOf, listCells } from '../cell';
import { defineSlot } from '../kind';

/** A plant's code. When the file lists no plant of that length, any letters fit and name no place. */
export const plantSlot = defineSlot({
  kind: 'plant',
  schemas: [
    z.strictObject({ plant: z.number().int().min(1).max(6) }).describe('The code of a plant, so many characters long.'),
  ],
  fresh: { plant: 2 },
  fields: [{ name: 'plant', as: 'number', label: 'length' }],
  shape: (slot, { plantCodes }) => {
    const codes = plantCodes.filter((code) => code.length === slot.plant);
    const writes = `${slot.plant} characters`;
    if (codes.length === 0) {
      const open = { tight: capitals, wide: capitals, group: 'plant' as const, optional: false };
      const cells = Array.from({ length: slot.plant }, (_, place) => ({ ...open, place }));
      return {
        name: 'plant',
        cells,
        group: { name: 'plant', writes, width: slot.plant, values: null, expected: { kind: 'letters' } },
      };
    }
    const wide = classOf(codes.join(''));
    const shown = codes.slice(0, 12).join(', ') + (codes.length > 12 ? ', …' : '');
    return {
      name: 'plant',
      cells: listCells(codes, 'plant', 0, slot.plant).map((cell) => ({ ...cell, wide })),
      group: { name: 'plant', writes, width: slot.plant, values: codes, expected: { kind: 'plant', codes: shown } },
    };
  },
});
