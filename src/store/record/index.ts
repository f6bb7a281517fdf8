import type * as z from 'zod';
import { origin1 } from './origin-1';

/**
 * Every form in which the store beside the watch list wrote a record, by its name and number. None of them is edited.
 * @internal
 */
export const frozenOrigins = { 'origin-1': origin1 } satisfies Record<string, z.ZodType>;

/** The form of today. */
export const originForm = origin1;
