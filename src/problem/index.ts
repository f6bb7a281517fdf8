import type * as z from 'zod';
import type { DataOf, ProblemCode, Within } from './codes';
import type { problemSchema } from './schema';

/* Free of zod at run time: what reads a page makes failures too. */

export type { Disturbance, NotShown, ProblemCode, ProblemData, RecordFault, Told, Within } from './codes';
export { disturbances } from './codes';

export type Problem = z.infer<typeof problemSchema>;

/** A failure of a known kind. */
export const problem = <C extends ProblemCode>(code: C, where: string, ...[data]: DataOf<C>): Problem => ({
  code,
  where,
  ...(data === undefined ? {} : { data: data as NonNullable<Problem['data']> }),
});

/** The same failure as a part of another one. */
export const within = ({ code, data, what }: Problem): Within => ({
  code,
  ...(data && { data }),
  ...(what !== undefined && { what }),
});

/** What an exception says of itself. */
export const reported = (error: unknown): { said: string } => ({
  said: error instanceof Error ? error.message : String(error),
});

export type Result<T> = { ok: true; value: T } | { ok: false; problem: Problem };

export const succeed = <T>(value: T): Result<T> => ({ ok: true, value });
export const fail = (problem: Problem): Result<never> => ({ ok: false, problem });
