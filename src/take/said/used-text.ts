import { blanked } from './blanked';
import { readPeriods, type SaidPeriod } from './period';

/** A text with its periods blanked, so that what else it tells can be read. */
export function withoutPeriods(text: string): { text: string; periods: SaidPeriod[] } {
  const periods = readPeriods(text);
  return { text: blanked(text, periods), periods };
}

/** What stands before a range and tells nothing more of it: "de 1960 à 1985". */
const smallWords =
  /^(?:de|du|in|the|from|years?|jahre|années|anni|años|jaren|entre|between|zwischen|tussen|tra|fra)?$/iu;

/** Whether a text is a period and nothing else. */
export const isPeriod = (text: string): boolean => {
  const [period, ...more] = readPeriods(text);
  return (
    period !== undefined &&
    more.length === 0 &&
    smallWords.test((text.slice(0, period.start) + text.slice(period.end)).replace(/[^\p{L}\d]/gu, ''))
  );
};
