import * as z from 'zod';

/** Which part of a maker file says it. */
const makerPartSchema = z.discriminatedUnion('of', [
  z.strictObject({ of: z.enum(['code-systems', 'plants', 'sale']) }),
  z.strictObject({ of: z.enum(['code-system', 'plant', 'years', 'model']), name: z.string() }),
  z.strictObject({ of: z.literal('sizes'), names: z.array(z.string()) }),
  z.strictObject({ of: z.enum(['new-price', 'price']), year: z.number() }),
]);
export type MakerPart = z.infer<typeof makerPartSchema>;

/** A document as it names itself: `memory` was not held against it and is shown as "not verified". */
export const documentSchema = z.strictObject({ kind: z.enum(['published', 'memory', 'practice']), text: z.string() });
export type Document = z.infer<typeof documentSchema>;

/**
 * Where a rule or a figure comes from: a document, or common practice with no source; a maker file, with the sources
 * that it gives for its part (`maker` null: whichever file is used); the listing, a photo, or the user.
 */
export const sourceSchema = z.discriminatedUnion('kind', [
  documentSchema,
  z.strictObject({
    kind: z.literal('maker-file'),
    maker: z.string().nullable(),
    invented: z.boolean(),
    part: makerPartSchema.nullable(),
    sources: z.array(z.string()),
  }),
  /** `code`: the code that it quotes; else the field that says it. */
  z.strictObject({
    kind: z.literal('listing'),
    field: z.enum(['title', 'description', 'text', 'data', 'reply', 'code', 'measures', 'price']),
  }),
  z.strictObject({ kind: z.literal('photo') }),
  z.strictObject({ kind: z.literal('user'), as: z.enum(['code', 'note']) }),
]);
export type Source = z.infer<typeof sourceSchema>;

export const commonPractice: Source = { kind: 'practice', text: 'common practice, no source' };

/** A hard statement is a rule without exception; a soft one is a habit. Only hard ones may contradict. */
export const strengthSchema = z.enum(['hard', 'soft']);
export type Strength = z.infer<typeof strengthSchema>;

/** What an entry of a maker file says of how surely it holds. */
interface Held {
  strength?: Strength | undefined;
  standing?: { is: 'disputed' | 'withdrawn' } | undefined;
  exceptions?: readonly { models?: unknown; used?: unknown }[] | undefined;
}

/**
 * How surely an entry holds: what is disputed is never without exception, nor is what has an exception that only words
 * tell. `usual` is what its list takes for usual.
 */
export function strengthOf({ strength, standing, exceptions }: Held, usual: Strength): Strength {
  const openly = exceptions?.some(({ models, used }) => models === undefined && used === undefined);
  return standing?.is === 'disputed' || openly ? 'soft' : (strength ?? usual);
}
