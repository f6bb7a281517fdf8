import * as z from 'zod';

/** Forms that the settings of several slots share. */
export const letters = z.string().regex(/^[A-Z0-9]{1,36}$/, 'capitals');
export const reversed = z.boolean().optional();
export const two = z.union([z.literal(2), z.literal('tens'), z.literal('units')]);
/** One place of a code holds one UTF-16 unit, so signs beyond U+FFFF are not taken. */
export const printable = z.string().regex(/^[^\p{C}\u{10000}-\u{10FFFF}]+$/u, 'printable');

export const twoDigits = (value: number): string => String(value).padStart(2, '0');
