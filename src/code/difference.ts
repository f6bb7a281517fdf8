import * as z from 'zod';

/** One character that tells a near code from the one that was read; places count from 1. */
export const differenceSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('other'),
    was: z.string(),
    is: z.string(),
    place: z.number().int(),
    alike: z.boolean(),
  }),
  z.strictObject({ kind: z.literal('left-out'), was: z.string(), place: z.number().int() }),
  z.strictObject({ kind: z.literal('added'), is: z.string(), place: z.number().int() }),
  /** As a case kept it before its words stood with the languages. */
  z.strictObject({ kind: z.literal('as-written'), words: z.string() }),
]);
export type Difference = z.infer<typeof differenceSchema>;

/** In English, for the command line. */
export function differenceWords(difference: Difference): string {
  switch (difference.kind) {
    case 'other':
      return `"${difference.was}" in place ${difference.place} read as "${difference.is}"${difference.alike ? ', which look alike' : ''}`;
    case 'left-out':
      return `"${difference.was}" in place ${difference.place} left out`;
    case 'added':
      return `"${difference.is}" added after place ${difference.place}`;
    case 'as-written':
      return difference.words;
  }
}
