import * as z from 'zod';
import { slotForms } from '../code';

/**
 * The slots of a layout. There are no patterns and no expressions, only slots of bounded width: the time to read a
 * code is bounded by layouts times length whatever a file says. Each kind's own form stands with the kind.
 */
const slotSchema = z.union(slotForms);
export type Slot = z.infer<typeof slotSchema>;

export const layoutSchema = z.array(slotSchema).min(1).max(40);
export type Layout = z.infer<typeof layoutSchema>;
