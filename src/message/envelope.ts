import type { Problem, Told } from '../problem';

/**
 * What a message looks like on the wire. Kept free of zod: the script inside the page imports this file, and has to
 * stay small.
 */
export interface Envelope {
  tellstamp: 1;
  to: string;
  name: string;
  input: unknown;
}

export type Reply = { ok: true; value: unknown } | { ok: false; problem: Problem };

export const isEnvelope = (value: unknown): value is Envelope =>
  typeof value === 'object' &&
  value !== null &&
  (value as Envelope).tellstamp === 1 &&
  typeof (value as Envelope).to === 'string' &&
  typeof (value as Envelope).name === 'string';

/** A failure that nobody foresaw, as a value: a bug's message reaches the screen, its stack stays in the console. */
export function unforeseen(where: string, error: unknown): Problem {
  console.error(`[tellstamp] ${where}`, error);
  const said = error instanceof Error ? error.message : String(error);
  return { code: 'unforeseen', where, data: { said } } satisfies Told;
}
