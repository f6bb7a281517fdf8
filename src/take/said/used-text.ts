import { blanked } from './blanked';
import { readPeriods, type SaidPeriod } from './period';

/** A text with its periods blanked, so that what else it tells can be read. */
export function withoutPeriods(text: string): { text: string; periods: SaidPeriod[] } {
  const periods = readPeriods(text);
  return { text: blanked(text, periods), periods };
}
