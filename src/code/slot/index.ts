import type { Slot } from '../../maker/types';
import { anySlot } from './any';
import type { SlotContext, SlotRule, SlotShape } from './cell';
import { checkSlot } from './check';
import { daySlot } from './day';
import { dayOfYearSlot } from './day-of-year';
import { literalSlot } from './literal';
import { monthSlot } from './month';
import { plantSlot } from './plant';
import { quarterSlot } from './quarter';
import { separatorSlot } from './separator';
import { serialSlot } from './serial';
import { weekSlot } from './week';
import { yearSlot } from './year';

/** Every kind of slot a layout can have; a slot of a maker file has exactly one of these as a key. */
export const slotRules = [
  literalSlot,
  separatorSlot,
  plantSlot,
  yearSlot,
  monthSlot,
  weekSlot,
  quarterSlot,
  daySlot,
  dayOfYearSlot,
  serialSlot,
  checkSlot,
  anySlot,
] as const;

export function shapeSlot(slot: Slot, context: SlotContext): SlotShape {
  const rule = slotRules.find(({ kind }) => kind in slot) as SlotRule | undefined;
  if (!rule) throw new Error(`no slot rule for ${Object.keys(slot).join(', ')}`);
  return rule.shape(slot as never, context);
}
