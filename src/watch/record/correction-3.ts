import * as z from 'zod';
import { correction2 } from './correction-2';
import { photoAddress1 } from './forms-1';
import { where1 } from './photo-read-2';

const id = z.string().min(1).max(40);
const share = z.number().min(0).max(1);

/** What was measured at a mark, in kinds that a reader may have no name for any more. */
const measure = z.strictObject({
  what: z.string(),
  value: z.union([z.number(), z.string(), z.tuple([z.number(), z.number(), z.number()]), z.null()]),
  uncertainty: z.number().nonnegative().nullable(),
  unit: z.string().nullable(),
  where: where1.nullable(),
  against: z.number().int().optional(),
  why: z.string().optional(),
});

/** As the form before, and marks on photos with what was measured there. */
export const correction3 = z.discriminatedUnion('of', [
  ...correction2.options,
  z.strictObject({
    id,
    of: z.literal('mark'),
    photo: z.strictObject({
      url: photoAddress1,
      hash: z.string().nullable(),
    }),
    mark: z.strictObject({
      number: z.number().int().min(1).max(999),
      kind: z.string(),
      points: z
        .array(z.strictObject({ x: share, y: share }))
        .min(1)
        .max(24),
      within: z.number().nonnegative().max(1),
      mm: z.number().positive().max(10_000).nullable(),
      name: z.string().max(60),
    }),
    measured: z.array(measure).max(12),
  }),
]);
