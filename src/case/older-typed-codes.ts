import { correct, typedCode } from './correction';
import type { Correction } from './correction-types';

/** A case kept when typed codes were a list of their own: each becomes a correction. Anything else is left as it is. */
export function liftTypedCodes(kase: unknown): unknown {
  if (!isFields(kase) || !Array.isArray(kase.typedCodes) || 'corrections' in kase) return kase;
  const { typedCodes, ...rest } = kase;
  const codes = typedCodes.flatMap((typed) => (isFields(typed) && typeof typed.code === 'string' ? [typed] : []));
  if (codes.length < typedCodes.length) return kase;
  // The photo was named by its number on that day's page; all codes were typed of the piece as a whole.
  const corrections = codes.reduce<Correction[]>((list, { code }) => correct(list, typedCode(String(code))), []);
  return { ...rest, corrections };
}

type Fields = Record<string, unknown>;
const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null;
