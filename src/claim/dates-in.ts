import { type FoundDate, parseDates } from '../text';
import type { Passage } from './passage';
import { shortYearsIn } from './short-years';

const known = new WeakMap<Passage, { readAt: string; dates: FoundDate[] }>();

/** The dates of a passage, in its order: several kinds of claims ask for them. */
export function datesIn(from: Passage, readAt: string): readonly FoundDate[] {
  const before = known.get(from);
  if (before?.readAt === readAt) return before.dates;
  const read = parseDates(from.text, { language: from.language, now: readAt });
  const dates = [...read, ...shortYearsIn(from, read)].sort((a, b) => a.start - b.start);
  known.set(from, { readAt, dates });
  return dates;
}
