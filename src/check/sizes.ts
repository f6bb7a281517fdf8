import * as z from 'zod';
import { bagSideSchema } from '../evidence';

/** A side's length as it is stated. */
export const sidedSchema = z.strictObject({ side: bagSideSchema, mm: z.number() });
/** The same with the words that state it. */
export const statedSchema = z.strictObject({ words: z.string(), mm: z.number() });
