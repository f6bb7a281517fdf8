import { daySpan, isoDate, meetSpans, monthSpan, type Span, yearSpan } from '../span';
import { dayOf, type RawDate } from './date-parts';
import { japaneseEras } from './date-words';

const western = /(?<!\d)(\d{4})年\s?(\d{1,2})月(?:\s?(\d{1,2})日?(?!\d))?/g;
const names = japaneseEras.map((era) => era.name).join('|');
const era = new RegExp(`(${names})\\s?(元|\\d{1,2})年(代)?(?:\\s?(\\d{1,2})月(?:\\s?(\\d{1,2})日)?)?`, 'g');
const eraAlone = new RegExp(`(${names})(?:時代|期)?(初期|中期|後期|末期|の初め)?(?:製|物|頃)?(?!\\s?(?:元|\\d))`, 'g');

function eraSpan(match: RegExpMatchArray): Span | null {
  const found = japaneseEras.find((item) => item.name === match[1]);
  if (!found) return null;
  const year = found.offset + (match[2] === '元' ? 1 : Number(match[2]));
  const reign: Span = { from: found.from, to: found.to, precision: 'range' };
  if (match[3]) {
    const decade: Span = { from: isoDate(year, 1, 1), to: isoDate(year + 9, 12, 31), precision: 'decade' };
    return meetSpans(decade, reign);
  }
  const day = match[5] ? dayOf(year, Number(match[4]), Number(match[5])) : null;
  if (match[5] && !day) return null;
  const month = Number(match[4] ?? 0);
  if (month > 12) return null;
  return meetSpans(day ?? (month > 0 ? monthSpan(year, month) : yearSpan(year)), reign);
}

/** "昭和60年3月", "1994年3月5日", "昭和60年代", and an era by itself ("昭和期"); years past an era's end are no date. */
export function japaneseDates(text: string): RawDate[] {
  const found: RawDate[] = [];
  const add = (match: RegExpMatchArray, span: Span | null, form: RawDate['form']) => {
    if (span) found.push({ span, start: match.index!, end: match.index! + match[0].length, form });
  };
  for (const match of text.matchAll(western)) {
    const [year, month] = [Number(match[1]), Number(match[2])];
    if (month < 1 || month > 12) continue;
    const day = match[3] ? dayOf(year, month, Number(match[3])) : null;
    if (match[3] && !day) continue;
    add(match, day ? daySpan(day.from as string) : monthSpan(year, month), day ? 'day' : 'month');
  }
  for (const match of text.matchAll(era))
    add(match, eraSpan(match), match[5] ? 'day' : match[4] ? 'month' : match[3] ? 'decade' : 'year');
  for (const match of text.matchAll(eraAlone)) {
    const reign = japaneseEras.find((item) => item.name === match[1]);
    if (reign && match[0].length > 2)
      add(match, { from: reign.from, to: reign.to, precision: 'range', about: true }, 'era');
  }
  return found;
}
