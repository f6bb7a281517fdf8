import { addDays, daysInMonth, isoDate, monthSpan, type Span, yearSpan } from '../span';
import { months } from './date-words';
import type { EachLanguage } from './each-language';
import { foldWords } from './fold';
import season from './lexicon/table/season.json' with { type: 'json' };
import { wordsByValue } from './lexicon/words-in';
import { countOf, numberWordsUpTo } from './number-words';
import { Taken } from './taken';

/*
 * "Last year", "letzten Herbst", "hace tres años", "一昨年の春": times that sellers count back from the day on which they
 * write. Patterns over folded text. Common practice, no source.
 */

/** The year before this one. */
const lastYear: EachLanguage = [
  'last year|the past year',
  "l'an(?:nee)? (?:derniere?|passee?)|l'annee d'avant",
  'letzte[nms]? jahre?s?|vorige[nms]? jahre?s?|vergangene[nms]? jahre?s?|vorjahr',
  "l'anno (?:scorso|passato)|lo scorso anno|l'anno prima",
  'el (?:ano pasado|pasado ano)|el ultimo ano',
  'vorig jaar|verleden jaar|(?:het )?afgelopen jaar',
  '去年|昨年',
];
const yearBeforeLast: EachLanguage = [
  'the year before last',
  "l'avant-derniere annee",
  'vorletzte[nms]? jahre?s?',
  "l'altr'anno",
  'el ano antepasado',
  'voorvorig jaar',
  '一昨年|おととし',
];
const thisYear: EachLanguage = [
  '(?:earlier )?this year',
  "cette annee|debut de l'annee",
  'dieses jahr|diesen jahres|heuer',
  "quest'anno",
  'este (?:mismo )?ano',
  'dit jaar',
  '今年',
];
const lastMonth: EachLanguage = [
  'last month',
  'le mois (?:dernier|passe)',
  'letzte[nms]? monats?|vorige[nms]? monats?|vergangene[nms]? monats?',
  'il mese scorso|lo scorso mese',
  'el (?:mes pasado|pasado mes)',
  'vorige maand|afgelopen maand',
  '先月',
];
const lastWeek: EachLanguage = [
  'last week',
  'la semaine (?:derniere|passee)',
  'letzte[rn]? woche|vorige[rn]? woche|vergangene[rn]? woche',
  'la settimana scorsa|la scorsa settimana',
  'la semana pasada|la pasada semana',
  'vorige week|afgelopen week',
  '先週',
];
/** Around a month or a season, `#`: the last one that there was. */
const lastOne: EachLanguage = [
  '(?:last|this past) #',
  "(?:l'|le |en |au )?# (?:derniere?|passee?)",
  '(?:letzte[nrms]?|vorige[nrms]?|vergangene[nrms]?) #',
  "(?:(?:lo |la )?scors[oa] #|(?:l'|il |la |a )?# (?:scors|passat)[oa])",
  '(?:(?:el |la )?pasad[oa] #|(?:el |la |en )?# pasad[oa])',
  '(?:vorige?|afgelopen|verleden) #',
  '(?:去年|昨年)の?#',
];
/** Around a number of years, `#`. */
const yearsBack: EachLanguage = [
  '# (?:years?|yrs?) ago',
  'il y a (?:environ |a peu pres |deja |bien )?# ans?',
  'vor (?:etwa |ca\\.? |ungefahr |rund |gut )?# jahre?n?',
  '(?:circa )?# ann[oi] fa',
  'hace (?:unos |casi |ya )?# anos?',
  '(?:ongeveer )?# jaar geleden',
  '#年(?:ほど|くらい|ぐらい)?前(?!の(?:もの|品|バッグ))',
];

const monthsOfSeason = { spring: 3, summer: 6, autumn: 9, winter: 12 } as const;
type Season = keyof typeof monthsOfSeason;
const seasons = new Map(
  (Object.entries(wordsByValue(season)) as [Season, string[]][]).flatMap(([name, words]) =>
    words.map((word) => [foldWords(word).text, monthsOfSeason[name]] as const),
  ),
);
const longMonths = [...months.keys()].filter((name) => name.length > 3);
const named = `(${[...longMonths, ...seasons.keys(), ...Array.from({ length: 12 }, (_, at) => `${12 - at}月`)].join('|')})`;
/** More years than a dozen are counted in digits. */
const counted = `(\\d{1,2}|${numberWordsUpTo(12)})`;

/** The three months from the first of a season on, the last that had begun before a day's month. */
function seasonBefore(first: number, year: number, month: number): Span {
  const opens = first < month ? year : year - 1;
  const [last, closes] = [((first + 1) % 12) + 1, first > 10 ? opens + 1 : opens];
  return {
    from: isoDate(opens, first, 1),
    to: isoDate(closes, last, daysInMonth(closes, last)),
    precision: 'season',
  };
}

/** What "last" of a season or a month is; that of last year where Japanese says so. */
function lastNamed(name: string, words: string, year: number, month: number): Span {
  const first = seasons.get(name);
  const number = months.get(name) ?? Number(/^\d+/.exec(name)?.[0] ?? 0);
  if (/年/.test(words)) return first ? seasonBefore(first, year - 1, 13) : monthSpan(year - 1, number);
  return first ? seasonBefore(first, year, month) : monthSpan(number < month ? year : year - 1, number);
}

/** Further back people count in rounder numbers than that they would tell a year. */
const mostYears = 60;
const countedBack = (count: number, year: number): Span | null => {
  if (count < 1 || count > mostYears) return null;
  return count === 1 ? yearSpan(year - 1) : { ...yearSpan(year - count), about: true };
};

type Reader = (match: RegExpMatchArray, today: { year: number; month: number; day: string }) => Span | null;
const monthBefore = (year: number, month: number): Span =>
  month > 1 ? monthSpan(year, month - 1) : monthSpan(year - 1, 12);
const said = (row: EachLanguage, inPlace: string): RegExp => {
  const [western, japanese] = [row.slice(0, 6).filter(Boolean).join('|'), row[6]];
  return new RegExp(
    `(?<![\\p{L}\\d])(?:${western.replaceAll('#', inPlace)})(?![\\p{L}\\d])|${japanese.replaceAll('#', inPlace)}`,
    'gu',
  );
};
const groupOf = (match: RegExpMatchArray): string => match.slice(1).find((group) => group !== undefined) ?? '';
/** The longer ones first: "letzten Sommer" is no year. */
const readers: readonly (readonly [RegExp, Reader])[] = [
  [said(lastOne, named), (match, { year, month }) => lastNamed(groupOf(match), match[0], year, month)],
  [said(yearsBack, counted), (match, { year }) => countedBack(countOf(groupOf(match)) ?? 0, year)],
  [said(yearBeforeLast, ''), (_, { year }) => yearSpan(year - 2)],
  [said(lastYear, ''), (_, { year }) => yearSpan(year - 1)],
  [said(thisYear, ''), (_, { year }) => yearSpan(year)],
  [said(lastMonth, ''), (_, { year, month }) => monthBefore(year, month)],
  [said(lastWeek, ''), (_, { day }) => ({ from: addDays(day, -14), to: day, precision: 'range' })],
];

export interface YearsAgo {
  span: Span;
  /** In the folded text. */
  start: number;
  end: number;
}

/** Times counted back from a day, in folded text (`foldWords`). `now`: the day on which the text was written, ISO 8601. */
export function yearsAgo(text: string, now: string): YearsAgo[] {
  const [year, month] = [Number(now.slice(0, 4)), Number(now.slice(5, 7))];
  const taken = new Taken(text.length);
  return readers.flatMap(([pattern, read]) =>
    Array.from(text.matchAll(pattern)).flatMap((match): YearsAgo[] => {
      const [start, end] = [match.index, match.index + match[0].length];
      const span = taken.overlaps(start, end) ? null : read(match, { year, month, day: now.slice(0, 10) });
      if (span === null) return [];
      taken.take(start, end);
      return [{ span, start, end }];
    }),
  );
}
