import * as z from 'zod';
import { claimPlaceSchema, partSchema } from '../claim/types';
import { markSaysSchema } from '../mark/types';
import { spanSchema } from '../span/types';

/** Whose words a statement is, and the words. */
const by = { field: claimPlaceSchema.shape.field, words: z.string() };

/**
 * What a piece of evidence states, beside its dates and places: what its sentence is made of. The sentence itself
 * stands with the languages.
 */
export const saysSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('made'), ...by }),
  z.strictObject({ kind: z.literal('bought'), ...by }),
  z.strictObject({ kind: z.literal('origin'), ...by }),
  /** The country that the words name existed in these days. */
  z.strictObject({ kind: z.literal('country'), ...by, place: z.string() }),
  z.strictObject({
    kind: z.literal('code'),
    from: z.enum(['photo', 'typed', 'claim']),
    code: z.string(),
    /** By what it is read where that is not the stated maker's own file: a file, or (null) the shape of a code alone. */
    by: z.array(z.strictObject({ maker: z.string().nullable(), invented: z.boolean() })),
  }),
  z.strictObject({ kind: z.literal('system'), code: z.string() }),
  z.strictObject({ kind: z.literal('plant'), plants: z.array(z.string()) }),
  z.strictObject({ kind: z.literal('mark'), inText: z.boolean(), words: z.string(), tells: markSaysSchema }),
  z.strictObject({
    kind: z.literal('material'),
    ...by,
    maker: z.string(),
    part: partSchema,
    is: z.array(z.string()),
  }),
  /** In these years the maker used others for the part, and not what the words name. */
  z.strictObject({
    kind: z.literal('other-material'),
    ...by,
    maker: z.string(),
    part: partSchema,
    is: z.array(z.string()),
    used: z.array(spanSchema),
  }),
  z.strictObject({ kind: z.literal('model'), ...by, maker: z.string(), model: z.string() }),
]);
export type Says = z.infer<typeof saysSchema>;
