import { foldWords } from './fold';
import { listOf } from './phrases';

const locales = ['en', 'de', 'de-AT', 'fr', 'it', 'es', 'nl'];

/** Names as the platform's copy of Unicode CLDR has them, in each of the seven languages, long and short, folded. */
function namesByNumber(count: number, options: 'month' | 'weekday', dateOf: (index: number) => number) {
  const names = new Map<string, number>();
  for (const locale of locales)
    for (const width of ['long', 'short'] as const) {
      // In none of these languages does a name change beside a day's number.
      const format = new Intl.DateTimeFormat(locale, { timeZone: 'UTC', [options]: width });
      for (let index = 0; index < count; index += 1) {
        const name = foldWords(format.format(dateOf(index))).text.replace(/\.$/, '');
        if (/^\p{L}{2,}$/u.test(name) && !names.has(name)) names.set(name, index);
      }
    }
  return names;
}

/** Short forms that people write beside those of CLDR, from January on; common practice, no source. */
const moreMonths = listOf(
  'janner jaenner, feber fevr fev, marz maerz mrz mrt, abr, mag mai, jun giu, jul lug, aug ago, sept sep set sett setiembre, okt ott, nov, dez dec dic',
);
const moreWeekdays = listOf('lun, mar tues, mer wed, jeu thur thurs, ven vie vi, sab sonnabend, dom');

function withMore(names: Map<string, number>, more: readonly string[]): Map<string, number> {
  for (const [index, row] of more.entries())
    for (const name of row.split(' ')) if (!names.has(name)) names.set(name, index);
  return names;
}
const alternation = (names: Map<string, number>): string =>
  [...names.keys()].sort((a, b) => b.length - a.length).join('|');

const monthNames = withMore(
  namesByNumber(12, 'month', (index) => Date.UTC(2024, index, 15)),
  moreMonths,
);
/** Month names and short forms, folded, with the month's number. */
export const months = new Map([...monthNames].map(([name, index]) => [name, index + 1] as const));
export const monthPattern = alternation(months);

/** Weekdays, Monday first; short ones count only right before a time ("Jeu 15:12"). */
export const weekdays = withMore(
  // The first of January 2024 was a Monday.
  namesByNumber(7, 'weekday', (index) => Date.UTC(2024, 0, 1 + index)),
  moreWeekdays,
);
export const weekdayPattern = alternation(weekdays);

/** Decades by name: tens digit to words (folded). */
export const decadeNames: Record<number, string> = {
  2: 'twenties|zwanzigern?|zwanziger jahren?|annees vingt|anni venti|anos veinte|jaren twintig',
  3: 'thirties|dreissigern?|dreißigern?|annees trente|anni trenta|anos treinta|jaren dertig',
  4: 'forties|vierzigern?|annees quarante|anni quaranta|anos cuarenta|jaren veertig',
  5: 'fifties|funfzigern?|fuenfzigern?|annees cinquante|anni cinquanta|anos cincuenta|jaren vijftig',
  6: 'sixties|sechzigern?|annees soixante|anni sessanta|anos sesenta|jaren zestig',
  7: 'seventies|siebzigern?|annees soixante[- ]dix|anni settanta|anos setenta|jaren zeventig',
  8: 'eighties|achtzigern?|annees quatre[- ]vingts?|anni ottanta|anos ochenta|jaren tachtig',
  9: 'nineties|neunzigern?|annees quatre[- ]vingt[- ]dix|anni novanta|anos noventa|jaren negentig',
};

/** Words before a decade or year that narrow it. */
export const partOfDecade: Record<'early' | 'mid' | 'late', string> = {
  early:
    'early|earlier|beginning of|start of|fruhen?|fruehen?|anfang|beginn|debut|debuts|primi|inizio|inizi|principios de|principio de|comienzos de|inicios de|begin|vroege|first half of',
  mid: 'mid|middle|middle of|mitte|mittleren?|milieu|meta|meta degli|mediados de|midden|halverwege',
  late: 'late|later|end of|spaten?|spaeten?|ende|fin|fin des|fine|tardi|finales de|fines de|final de|eind|einde|laat|late|second half of',
};

export const aboutWords =
  'c\\.?|ca\\.?|circa|approx\\.?|approximately|around|about|roughly|ungefahr|ungefaehr|etwa|um|gegen|environ|env\\.?|vers|autour de|aux alentours de|verso il|verso|intorno al|attorno al|hacia|alrededor de|aprox\\.?|sobre|rond|omstreeks|ongeveer|circa|probably|possibly|wohl|vermutlich|wahrscheinlich|約|およそ|おそらく';
export const beforeWords = 'before|pre|prior to|vor|avant|prima del|prima degli|ante|antes de|antes del|voor';
/** As above with the date itself included. */
export const untilWords =
  "up to|until|no later than|not later than|bis|spatestens|jusque|jusqu'en|au plus tard(?: en)?|fino al|non oltre|al piu tardi|hasta|a mas tardar(?: en)?|tot|uiterlijk|op zijn laatst";
/** "From 1994" and "des années 80" name the date itself and are absent. */
export const afterWords =
  'after|post|since|as of|not before|not earlier than|no earlier than|nach|ab|seit|fruhestens|nicht vor|apres|depuis|au plus tot(?: en)?|pas avant|non prima del|no antes de|niet voor|op zijn vroegst|a partir de|dopo il|dopo gli|despues de|desde|na|sinds|vanaf';

/** Joints that make two dates one range ("1988 to 1994") or a choice of both ("1988 or 1989"). */
export const rangeJoints =
  '-|–|—|/|~|〜|to|and|through|till|until|bis|und|oder|a|à|et|ou|al|e|o|hasta|y|tot|en|of|or|から';

/**
 * Japanese era names with the day each began and the offset that turns its year into ours. Source: the eras'
 * imperial edicts and the Era Name Act (Act No. 43 of 1979); dates from memory, Meiji from the calendar change.
 */
export const japaneseEras: { name: string; from: string; to: string | null; offset: number }[] = [
  { name: '明治', from: '1868-01-25', to: '1912-07-30', offset: 1867 },
  { name: '大正', from: '1912-07-30', to: '1926-12-25', offset: 1911 },
  { name: '昭和', from: '1926-12-25', to: '1989-01-07', offset: 1925 },
  { name: '平成', from: '1989-01-08', to: '2019-04-30', offset: 1988 },
  { name: '令和', from: '2019-05-01', to: null, offset: 2018 },
];

/**
 * Era words that name a period by themselves. Reigns are exact (accession to death); styles are habits of the trade:
 * common practice, no source, and therefore `about`. "Vintage", "antique" and "retro" claim no date and are absent.
 */
export const eras: { words: string; from: string; to: string; about: boolean }[] = [
  {
    words: 'victorian|viktorianisch\\p{L}{0,2}|victorien(?:ne)?s?|vittorian[oaie]|victorian[oa]s?|victoriaanse?',
    from: '1837-06-20',
    to: '1901-01-22',
    about: true,
  },
  {
    words: 'edwardian|edwardianisch\\p{L}{0,2}|edouardien(?:ne)?s?|edoardian[oaie]',
    from: '1901-01-22',
    to: '1910-05-06',
    about: true,
  },
  { words: 'belle epoque', from: '1871-01-01', to: '1914-12-31', about: true },
  { words: 'art deco|アール・?デコ', from: '1920-01-01', to: '1939-12-31', about: true },
  { words: 'art nouveau|jugendstil', from: '1890-01-01', to: '1910-12-31', about: true },
  {
    words: 'interwar|inter[- ]war|zwischenkriegszeit|entre[- ]deux[- ]guerres',
    from: '1918-11-11',
    to: '1939-09-01',
    about: true,
  },
  { words: 'mid[- ]century', from: '1945-01-01', to: '1969-12-31', about: true },
];
