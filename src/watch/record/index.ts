import type * as z from 'zod';
import { case0 } from './case-0';
import { case1 } from './case-1';
import { case2 } from './case-2';

/** Every form in which a record was ever written, by its name and number. None of them is edited once it was published. */
export const frozenRecords = { 'case-0': case0, 'case-1': case1, 'case-2': case2 } satisfies Record<string, z.ZodType>;

/** The form of a saved listing by its version. */
export const formOf = (version: number): z.ZodType | undefined =>
  (frozenRecords as Record<string, z.ZodType>)[`case-${version}`];
