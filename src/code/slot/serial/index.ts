import * as z from 'zod';
import { period } from '../../../span/types';
import { digits } from '../cell';
import { reversed } from '../forms';
import { defineSlot } from '../kind';

/** As many digits as the longest running number that is read. */
const count = z.number().int().min(1).max(20);

/** A running number of `min` to `max` digits; the table says when which numbers were made. */
const serialSchema = z.strictObject({
  serial: z.union([count, z.strictObject({ min: count, max: count })]),
  table: z
    .array(
      z.strictObject({
        first: z.number().int().nonnegative(),
        last: z.number().int().nonnegative().nullable(),
        made: period,
      }),
    )
    .max(2000)
    .optional(),
  reversed,
});
export type SerialSlot = z.infer<typeof serialSchema>;

/** Fewest and most digits of a serial number. */
export const serialWidth = ({ serial }: SerialSlot): { min: number; max: number } =>
  typeof serial === 'number' ? { min: serial, max: serial } : serial;

/** A running number; when it was made is in the slot's table, if it has one. */
export const serialSlot = defineSlot({
  kind: 'serial',
  schemas: [serialSchema],
  fresh: { serial: { min: 4, max: 6 } },
  fields: [{ name: 'serial', as: 'serial', label: 'written' }],
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
});
