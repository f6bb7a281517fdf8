import { yearSpan } from '../span';
import { type FoundDate, parseDates, phrasePattern, sourceRange, Taken, wordsOf, yearsAgo } from '../text';
import type { Passage } from './passage';
import { shortYearsIn } from './short-years';

const known = new WeakMap<Passage, { readAt: string; dates: FoundDate[] }>();

/** The dates of a passage, in its order: several kinds of claims ask for them. */
export function datesIn(from: Passage, readAt: string): readonly FoundDate[] {
  const before = known.get(from);
  if (before?.readAt === readAt) return before.dates;
  const read = parseDates(from.text, { language: from.language, now: readAt });
  const written = [...read, ...shortYearsIn(from, read)];
  const dates = [...written, ...agoIn(from, written, readAt), ...futureIn(from, readAt)].sort(
    (a, b) => a.start - b.start,
  );
  known.set(from, { readAt, dates });
  return dates;
}

/** "Last year", "vor drei Jahren", where no date that was read holds their words. */
function agoIn({ folded, text }: Passage, read: readonly FoundDate[], readAt: string): FoundDate[] {
  const taken = new Taken(text.length);
  for (const { start, end } of read) taken.take(start, end);
  return yearsAgo(folded.text, readAt).flatMap(({ span, start, end }): FoundDate[] => {
    const said = sourceRange(folded, start, end);
    return taken.overlaps(said.start, said.end) ? [] : [{ ...said, span, form: 'ago' }];
  });
}

const madeThen = new RegExp(
  `(?:${phrasePattern(wordsOf('made-verb')).source})\\s(?:\\p{L}{1,5}\\s){0,2}(2\\d{3})(?![\\d\\p{L}]|[.,]\\d)|(?<!\\d)(2\\d{3})年製`,
  'gu',
);
/** "Made in 2031": a year that has not come is read only where nothing but a year can stand. */
const futureIn = ({ folded }: Passage, readAt: string): FoundDate[] =>
  Array.from(folded.text.matchAll(madeThen)).flatMap((match): FoundDate[] => {
    const year = match[1] ?? (match[2] as string);
    // Next year's is read as any other.
    if (Number(year) <= Number(readAt.slice(0, 4)) + 1) return [];
    const start = match.index + match[0].indexOf(year);
    return [{ ...sourceRange(folded, start, start + year.length), span: yearSpan(Number(year)), form: 'year' }];
  });
