import * as z from 'zod';

const dataSchema = z.record(z.string(), z.json());

/**
 * A failure as a value: which, where, and what its sentence is made with. Sentences stand with the languages; it carries
 * no stack.
 */
export const problemSchema = z.strictObject({
  code: z.string().regex(/^[a-z0-9-]+$/),
  where: z.string(),
  data: dataSchema.optional(),
  /** What was tried before it and failed too; told first. */
  after: z.strictObject({ code: z.string(), data: dataSchema.optional(), what: z.string().optional() }).optional(),
  /** In English: from the command line, which speaks nothing else, and in records of builds that wrote sentences. */
  what: z.string().optional(),
  expected: z.string().optional(),
  remedy: z.string().optional(),
});
