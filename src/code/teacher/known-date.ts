import { aboutYears, addDays, type Span } from '../../span';
import { foldWords, parseDates } from '../../text';
import { readStated, spanReads } from '../reads';

/** Words that say "bought" and not "made": they bound the making from above only. Seven languages, from memory. */
const bought =
  /\b(?:bought|purchased|purchase|receipt|invoice|gekauft|kauf|rechnung|achete|achetee|achat|comprado|comprada|compra|acquistato|acquistata|acquisto|scontrino|gekocht|aankoop|kassenbon)\b|購入/;
/** "Not before 1997": the year itself is allowed, and every later one. */
const notBefore =
  /\b(?:not before|no earlier than|not earlier than|nicht vor|fruhestens|pas avant|non prima del|no antes de|niet voor)\b/;

/** What the longest known date may be apart, in characters: nobody writes more. */
const longest = 80;

/** Seasons of the northern year, first and last day; winter runs into the next year. Common practice, no source. */
const seasons: Record<string, [string, string]> = {
  spring: ['03-01', '05-31'],
  summer: ['06-01', '08-31'],
  autumn: ['09-01', '11-30'],
  fall: ['09-01', '11-30'],
};
const season = new RegExp(`^(${Object.keys(seasons).join('|')}) (?:of )?([12]\\d{3})$`);

/** A day so many years later, or earlier; the leap day becomes the day before. */
const yearsOn = (day: string | null, years: number): string | null =>
  day && `${String(Number(day.slice(0, 4)) + years).padStart(4, '0')}${day.slice(4).replace('-02-29', '-02-28')}`;

/** The dates that the words may mean; none when they are no date, or say several. */
function vagueSpans(text: string, now: string): Span[] {
  const folded = foldWords(text).text.trim();
  const named = season.exec(folded);
  if (named) {
    const [first, last] = seasons[named[1]!]!;
    return [{ from: `${named[2]}-${first}`, to: `${named[2]}-${last}`, precision: 'season' }];
  }
  const dates = parseDates(text, { language: null, now });
  const [date] = dates;
  if (dates.length !== 1 || !date || date.form === 'relative' || date.form === 'without-year') return [];
  // Figures beside the date ("1994-13") mean that it is not what it seems.
  if (/\d/.test(text.slice(0, date.start) + text.slice(date.end))) return [];
  const { span } = date;
  if (notBefore.test(folded) && span.to !== null) {
    // The reader of dates knows "before 1997" alone, which ends the day before.
    return [{ from: span.from ?? addDays(span.to, 1), to: null, precision: 'range' }];
  }
  // "90s" may be of two centuries, and the reader of dates gives the likelier one first; a day as 03/04 may be either.
  const meant = date.form === 'decade' ? [span] : (date.ambiguous ?? [span]);
  // "Bought after 1997" says nothing of the making.
  if (bought.test(folded) && span.to === null) return [];
  return meant.map((one) => {
    const wide: Span = one.about
      ? { from: yearsOn(one.from, -aboutYears), to: yearsOn(one.to, aboutYears), precision: 'range' }
      : one;
    return bought.test(folded) ? { from: null, to: wide.to, precision: 'range' } : wide;
  });
}

/**
 * A known date as people write it, in the form of an example's `reads`: "about 1990" gives 1985..1995, "1990s"
 * 1990..1999, "bought 2001" ..2001, "not before 1997" 1997... Null when the text is no date. How far "about" may be
 * off is the one figure that claims of sellers have too.
 */
export function readKnownDate(text: string, now = '2050-01-01'): string | null {
  const plain = text.trim();
  if (plain === '' || plain.length > longest) return null;
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
