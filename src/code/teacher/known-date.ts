import { aboutYears, addDays, isoWeekSpan, quarterSpan, type Span } from '../../span';
import { anyOf, befalls, denies, foldWords, parseDates, seasonWords, supposes, yearPartWords } from '../../text';
import { readStated, spanReads } from '../reads';

/** "Not before 1997": the year itself is allowed, and every later one. */
const notBefore =
  /\b(?:not before|no earlier than|not earlier than|nicht vor|fruhestens|pas avant|non prima del|no antes de|niet voor)\b/;

/** What the longest known date may be apart, in characters: nobody writes more. */
const longest = 80;

/** Seasons of the northern year, first and last day. Common practice, no source. */
const seasonDays = {
  spring: ['03-01', '05-31'],
  summer: ['06-01', '08-31'],
  autumn: ['09-01', '11-30'],
} as const;

/** "Winter 1994" may be either end of the year. */
const winterSpan = (year: number): Span => ({ from: `${year}-01-01`, to: `${year + 1}-02-28`, precision: 'range' });

type Season = keyof typeof seasonWords;
const seasonSpan = (season: Season, year: number): Span => {
  if (season === 'winter') return winterSpan(year);
  const [first, last] = seasonDays[season];
  return { from: `${year}-${first}`, to: `${year}-${last}`, precision: 'season' };
};

const year = String.raw`(?<year>[12]\d{3})`;
/** What may stand between a part of a year and the year: "of", "in the year", a stroke. */
const joint = String.raw`[^\p{L}\d]{0,3}(?:\p{L}{1,4}[^\p{L}\d]{1,2}){0,2}`;
const bothWays = (part: string): RegExp[] => [
  new RegExp(`(?<![\\p{L}\\d])${part}(?![\\p{L}\\d])${joint}${year}(?!\\d)`, 'u'),
  new RegExp(`(?<!\\d)${year}${joint}(?:年の?)?${part}(?![\\p{L}\\d])`, 'u'),
];
const ordinal = String.raw`(?:\.|st|nd|rd|th|e|er|eme|o|a|º|ª)?`;

/** A part of a year in words, with the span that it means. */
const parts: readonly { patterns: RegExp[]; span: (of: number, number: number) => Span | null }[] = [
  ...(Object.keys(seasonWords) as Season[]).map((season) => ({
    patterns: bothWays(`(?:${anyOf(seasonWords[season])})`),
    span: (of: number) => seasonSpan(season, of),
  })),
  {
    patterns: [
      ...bothWays(`(?:${anyOf(yearPartWords.week)})\\.?\\s?(?<number>\\d{1,2})`),
      ...bothWays(String.raw`(?<number>\d{1,2})${ordinal}\s?(?:${anyOf(yearPartWords.week)})`),
      ...bothWays(String.raw`w\s?(?<number>\d{1,2})`),
    ],
    span: (of, number) => isoWeekSpan(of, number),
  },
  {
    patterns: [
      ...bothWays(String.raw`(?<number>[1-4])${ordinal}\s?(?:${anyOf(yearPartWords.quarter)})`),
      ...bothWays(String.raw`q\s?(?<number>[1-4])`),
    ],
    span: (of, number) => quarterSpan(of, number),
  },
];

/** A season, week or quarter of a year, where the text names one and no other figures. */
function partOfYear(folded: string): Span | null {
  for (const { patterns, span } of parts) {
    for (const pattern of patterns) {
      const found = pattern.exec(folded);
      if (!found) continue;
      if (/\d/.test(folded.slice(0, found.index) + folded.slice(found.index + found[0].length))) return null;
      return span(Number(found.groups?.year), Number(found.groups?.number ?? 0));
    }
  }
  return null;
}

/** A day so many years later, or earlier; the leap day becomes the day before. */
const yearsOn = (day: string | null, years: number): string | null =>
  day && `${String(Number(day.slice(0, 4)) + years).padStart(4, '0')}${day.slice(4).replace('-02-29', '-02-28')}`;

const loosely = ({ from, to }: Span): Span => ({
  from: yearsOn(from, -aboutYears),
  to: yearsOn(to, aboutYears),
  precision: 'range',
});

const isUnsure = (text: string): boolean => /[?？]\)?$/.test(text) || supposes(text).length > 0;

/** The dates that the words may mean; none when they are no date, or say several. */
function vagueSpans(text: string, now: string): Span[] {
  const folded = foldWords(text).text.trim();
  // A sale, a gift or a repair bounds the making from above only.
  const isBefallen = befalls(text).length > 0;
  const stated = (span: Span): Span => {
    const wide = span.about || isUnsure(text) ? loosely(span) : span;
    return isBefallen ? { from: null, to: wide.to, precision: 'range' } : wide;
  };
  const isNotBefore = notBefore.test(folded);
  // "Not 2000" is no date.
  if (!isNotBefore && supposes(text).length === 0 && denies(text).length > 0) return [];
  const part = partOfYear(folded);
  if (part) return [stated(part)];
  const dates = parseDates(text, { language: null, now });
  const [date] = dates;
  if (dates.length !== 1 || !date || date.form === 'relative' || date.form === 'without-year') return [];
  // Figures beside the date ("1994-13") mean that it is not what it seems.
  if (/\d/.test(text.slice(0, date.start) + text.slice(date.end))) return [];
  const { span } = date;
  if (isNotBefore && span.to !== null) {
    // The reader of dates knows "before 1997" alone, which ends the day before.
    return [{ from: span.from ?? addDays(span.to, 1), to: null, precision: 'range' }];
  }
  // "90s" may be of two centuries, and the reader of dates gives the likelier one first; a day as 03/04 may be either.
  const meant = date.form === 'decade' ? [span] : (date.ambiguous ?? [span]);
  // "Bought after 1997" says nothing of the making.
  return isBefallen && span.to === null ? [] : meant.map(stated);
}

/** Dates as people type them, in the form that the reader of stated dates knows; what is none stays as it is. */
function tidied(text: string): string {
  const part = String.raw`(?:1[89]|20)\d{2}(?:-\d{2}){0,2}`;
  return (
    text
      .trim()
      .replace(/[‐-―]/g, '-')
      .replace(/-w(\d)/i, '-W$1')
      .replace(/-q(\d)/i, '-Q$1')
      .replace(new RegExp(`^(${part})\\s*(?:\\.\\.+|…|/|\\bto\\b|\\s-\\s)\\s*(${part})$`, 'i'), '$1..$2')
      .replace(/^((?:1[89]|20)\d\d)-((?:1[89]|20)\d\d)$/, '$1..$2')
      // "03/95", "bought 95", "Mar 95": a number that no day and no month has is a year of the last century.
      .replace(
        /^(0?[1-9]|1[0-2])[./-]([4-9]\d)$/,
        (_, month: string, short: string) => `19${short}-${month.padStart(2, '0')}`,
      )
      .replace(/^(\D*\p{L}[.]?\s)([4-9]\d)$/u, '$119$2')
  );
}

/**
 * A known date as people write it, in the form of an example's `reads`: "about 1990" gives 1985..1995, "1990s"
 * 1990..1999, "bought 2001" ..2001, "not before 1997" 1997.., "spring 1994" 1994-03-01..1994-05-31, "1990 to 1993"
 * 1990..1993. Null when the text is no date. How far "about", or a question mark, may be off is the one figure that
 * claims of sellers have too.
 */
export function readKnownDate(text: string, now = '2050-01-01'): string | null {
  if (text.trim().length > longest) return null;
  const plain = tidied(text);
  if (plain === '') return null;
  const stated = readStated(plain);
  if (!('unknown' in stated)) {
    const dated = stated.spans.length > 0 && stated.places.length === 0 && !stated.undated && !stated.nothing;
    return dated && stated.spans.every(isForward) ? plain : null;
  }
  const spans = vagueSpans(plain, now);
  return spans.length > 0 && spans.every(isForward)
    ? spans.map((one) => wholeYears(spanReads(one))).join(' or ')
    : null;
}

/** Ends of whole years are said as years. */
const wholeYears = (reads: string): string =>
  reads.replace(/^(\d{4})-01-01\.\./, '$1..').replace(/\.\.(\d{4})-12-31$/, '..$1');

const isForward = ({ from, to }: Span): boolean => from === null || to === null || from <= to;
