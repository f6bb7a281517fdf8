import type * as z from 'zod';
import { origin1 } from './origin-1';
import { origin2 } from './origin-2';

/**
 * Every form in which the store beside the watch list wrote a record, by its name and number. None of them is edited.
 * @internal
 */
export const frozenOrigins = { 'origin-1': origin1, 'origin-2': origin2 } satisfies Record<string, z.ZodType>;

/** An origin of any form as one of today's; throws for what is none. */
export function openOrigin(raw: unknown): z.infer<typeof origin2> {
  const former = origin1.safeParse(raw);
  // What its troubles say stays in English, as it was kept, until the address is asked again.
  return former.success ? { ...former.data, version: 2 } : origin2.parse(raw);
}
