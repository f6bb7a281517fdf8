import * as z from 'zod';

const data = z.record(z.string(), z.json());

/** A failure as looks keep it since its sentences stand with the languages; older ones have theirs in English. */
export const problem2 = z.strictObject({
  code: z.string().regex(/^[a-z0-9-]+$/),
  where: z.string(),
  data: data.optional(),
  after: z.strictObject({ code: z.string(), data: data.optional(), what: z.string().optional() }).optional(),
  what: z.string().optional(),
  expected: z.string().optional(),
  remedy: z.string().optional(),
});
