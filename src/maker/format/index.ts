import type * as z from 'zod';
import { fromFormat1 } from './from-1';
import { makerFile1 } from './maker-file-1';

/** The format in which files are written. */
export const currentFormat = 2;

/**
 * Every former format by its name: none is edited once files of it were written.
 * @internal
 */
export const frozenMakerFiles = { 'maker-file-1': makerFile1 } satisfies Record<string, z.ZodType>;

/** The forms of earlier formats, as their files were written. */
const earlier: Record<number, { form: z.ZodType; raise: (value: Record<string, unknown>) => Record<string, unknown> }> =
  { 1: { form: makerFile1, raise: fromFormat1 } };

/** What an earlier format asks of a value that says it is of it; null for the current format and for anything else. */
export const earlierFormOf = (value: unknown): z.ZodType | null => earlier[formatOf(value)]?.form ?? null;

/** A value in the format of today, whatever is unfinished in it; one of no earlier format is left as it is. */
export function inCurrentFormat<T>(value: T): T | Record<string, unknown> {
  const raise = earlier[formatOf(value)]?.raise;
  return raise ? raise(value as Record<string, unknown>) : value;
}

function formatOf(value: unknown): number {
  const format = typeof value === 'object' && value !== null ? Reflect.get(value, 'format') : undefined;
  return typeof format === 'number' ? format : currentFormat;
}
