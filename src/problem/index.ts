import * as z from 'zod';

/** A failure as a value: what went wrong, where, and what the user can do. It carries no stack. */
export const problemSchema = z.strictObject({
  code: z.string().regex(/^[a-z0-9-]+$/),
  where: z.string(),
  what: z.string(),
  expected: z.string().optional(),
  remedy: z.string(),
});
export type Problem = z.infer<typeof problemSchema>;

export type Result<T> = { ok: true; value: T } | { ok: false; problem: Problem };

export const succeed = <T>(value: T): Result<T> => ({ ok: true, value });
export const fail = (problem: Problem): Result<never> => ({ ok: false, problem });
