import { capitals, classOf, listCells, type SlotRule } from './cell';

/** A plant's code. When the file lists no plant of that length, any letters fit and name no place. */
export const plantSlot: SlotRule<'plant'> = {
  kind: 'plant',
  shape: (slot, { plantCodes }) => {
    const codes = plantCodes.filter((code) => code.length === slot.plant);
    const writes = `${slot.plant} characters`;
    if (codes.length === 0) {
      const open = { tight: capitals, wide: capitals, group: 'plant' as const, optional: false };
      const cells = Array.from({ length: slot.plant }, (_, place) => ({ ...open, place }));
      return {
        name: 'plant',
        cells,
        group: { name: 'plant', writes, width: slot.plant, values: null, expected: 'letters' },
      };
    }
    const wide = classOf(codes.join(''));
    const shown = codes.slice(0, 12).join(', ') + (codes.length > 12 ? ', …' : '');
    return {
      name: 'plant',
      cells: listCells(codes, 'plant', 0, slot.plant).map((cell) => ({ ...cell, wide })),
      group: { name: 'plant', writes, width: slot.plant, values: codes, expected: `a plant on file: ${shown}` },
    };
  },
};
