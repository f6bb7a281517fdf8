import { readPeriods, type SaidPeriod } from './period';

/** A text with its periods blanked, so that what else it tells can be read. */
export function withoutPeriods(text: string): { text: string; periods: SaidPeriod[] } {
  const periods = readPeriods(text);
  const kept: string[] = [];
  let from = 0;
  for (const { start, end } of periods) {
    kept.push(text.slice(from, Math.max(from, start)), ' '.repeat(Math.max(0, end - Math.max(start, from))));
    from = Math.max(from, end);
  }
  return { text: kept.join('') + text.slice(from), periods };
}
