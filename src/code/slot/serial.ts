import type { Slot } from '../../maker/types';
import { digits, type SlotRule } from './cell';

export type SerialSlot = Extract<Slot, { serial: unknown }>;

/** Fewest and most digits of a serial number. */
export const serialWidth = ({ serial }: SerialSlot): { min: number; max: number } =>
  typeof serial === 'number' ? { min: serial, max: serial } : serial;

/** A running number; when it was made is in the slot's table, if it has one. */
export const serialSlot: SlotRule<'serial'> = {
  kind: 'serial',
  shape: (slot) => {
    const { min, max } = serialWidth(slot);
    return {
      name: 'serial number',
      cells: Array.from({ length: Math.max(min, max) }, (_, place) => ({
        tight: digits,
        wide: digits,
        group: null,
        place,
        optional: place >= min,
      })),
    };
  },
};
