import type { Span } from '../span';
import { parseDates } from './date';
import { foldWords, type Said, sourceRange } from './fold';
import { wordsOf } from './lexicon';
import { anyOf, phrasePattern } from './phrases';

const cue = phrasePattern(wordsOf('member-since'));
const forTime = new RegExp(`(?<!\\d)(\\d{1,2})\\s?(?:${anyOf(wordsOf('years'))})(?:以上|間)?`, 'u');

/** When the seller joined: "Member since March 2019", "Mitglied seit 2015"; "for 6 years" counts back from `now`. */
export function findMemberSince(text: string, hints: { language: string | null; now: string }): Said<Span>[] {
  const folded = foldWords(text);
  const found: Said<Span>[] = [];
  for (const match of folded.text.matchAll(cue)) {
    const end = match.index + match[0].length;
    const right = folded.text.slice(end, end + 40).split(/\n\s*\n|[;|•]/u)[0] as string;
    const [date] = parseDates(right, hints).filter((item) => item.form !== 'relative');
    if (date && date.start <= 12) {
      found.push({
        value: { ...date.span, ...closed(date.span) },
        ...sourceRange(folded, match.index, end + date.end),
      });
      continue;
    }
    const years = forTime.exec(right);
    if (!years || years.index > 12) continue;
    const year = Number(hints.now.slice(0, 4)) - Number(years[1]);
    const value: Span = { from: `${year - 1}-01-01`, to: `${year}-12-31`, precision: 'range', about: true };
    found.push({ value, ...sourceRange(folded, match.index, end + years.index + years[0].length) });
  }
  return found;
}

/** "Since 1994" reads as open; joining happened within the date itself. */
function closed(span: Span): Partial<Span> {
  if (span.to !== null || span.from === null) return {};
  return { to: `${span.from.slice(0, 4)}-12-31` };
}
