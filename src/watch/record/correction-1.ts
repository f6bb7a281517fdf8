import * as z from 'zod';
import { photoAddress1 } from './forms-1';
import { where1 } from './photo-read-2';

const photo = z.strictObject({ url: photoAddress1, hash: z.string().nullable() });
const value = z.union([z.number(), z.string(), z.boolean(), z.null()]);
const seen = z.strictObject({
  what: z.string(),
  value,
  unit: z.enum(['px', 'degree', 'share', 'step']).nullable(),
  where: where1.nullable(),
});
/** A statement as it was found or as the buyer says it: of a kind that the reader may have no name for any more. */
const claim = z.looseObject({ id: z.string(), kind: z.string() });
const id = z.string().min(1).max(40);

/** One thing that the buyer set right, added or struck. */
export const correction1 = z.discriminatedUnion('of', [
  z.strictObject({
    id,
    of: z.literal('seen'),
    photo: photo.nullable(),
    target: z.strictObject({ name: z.string(), what: z.string(), was: value }).nullable(),
    to: seen.nullable(),
  }),
  z.strictObject({ id, of: z.literal('claim'), target: claim.nullable(), to: claim.nullable() }),
  z.strictObject({
    id,
    of: z.literal('part'),
    photo,
    to: z.strictObject({
      turn: z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]),
      invert: z.boolean(),
      crop: z.tuple([z.number(), z.number(), z.number(), z.number()]).nullable(),
    }),
  }),
]);
