import * as z from 'zod';
import { anySlot } from './any';
import type { GroupName, SlotContext, SlotShape } from './cell';
import { checkSlot } from './check';
import { daySlot } from './day';
import { dayOfYearSlot } from './day-of-year';
import type { SlotKind } from './kind';
import { literalSlot } from './literal';
import { monthSlot } from './month';
import { plantSlot } from './plant';
import { quarterSlot } from './quarter';
import { separatorSlot } from './separator';
import { serialSlot } from './serial';
import { weekSlot } from './week';
import { yearSlot } from './year';

/** Every kind of slot a layout can have; a slot of a maker file has exactly one of these as a key. */
export const slotKinds = [
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

export type SlotKindName = (typeof slotKinds)[number]['kind'];
type SlotSchema = (typeof slotKinds)[number]['schemas'][number];
export type Slot = z.infer<SlotSchema>;

/** The forms of all slots in a maker file, one after the other. */
export const slotForms = slotKinds.flatMap(({ schemas }): SlotSchema[] => [...schemas]) as [
  SlotSchema,
  ...SlotSchema[],
];

/** The kinds as their users see them: each takes its own slots only, which `kindOfSlot` sees to. */
const kinds = slotKinds as unknown as readonly SlotKind[];

/** The kind of a slot; null for what is no slot. */
export const kindOfSlot = (slot: object): SlotKind | null => kinds.find(({ kind }) => kind in slot) ?? null;

export function shapeSlot(slot: Slot, context: SlotContext): SlotShape {
  const kind = kindOfSlot(slot);
  if (!kind) throw new Error(`no kind of slot for ${Object.keys(slot).join(', ')}`);
  return kind.shape(slot, context);
}

/** The kind whose slots write a group. */
export const kindOfGroup = (name: GroupName): SlotKind => kinds.find(({ kind }) => kind === name)!;

/** The form of a kind's slots in a maker file. */
export const formOfKind = ({ schemas }: SlotKind): z.ZodType => (schemas.length === 1 ? schemas[0] : z.union(schemas));
