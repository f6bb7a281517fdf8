import type { EachLanguage } from './each-language';
import { foldWords } from './fold';

/** A name that the languages with Latin letters share. */
function everywhere(name: string, ja: string): EachLanguage {
  return [name, name, name, name, name, name, ja];
}

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

/** Short forms that people write beside those of CLDR, each with the month's number; common practice, no source. */
export const moreMonths: EachLanguage = [
  'jun6 jul7 aug8 sept9 sep9 nov11 dec12',
  'fevr2 fev2 mai5',
  'janner1 jaenner1 feber2 marz3 maerz3 mrz3 okt10 dez12',
  'mag5 giu6 lug7 ago8 set9 sett9 ott10 dic12',
  'abr4 setiembre9',
  'mrt3',
  '',
];
/** The same of days, Monday first. */
export const moreWeekdays: EachLanguage = [
  'tues2 wed3 thur4 thurs4',
  'lun1 mar2 mer3 jeu4 ven5',
  'sonnabend6',
  'sab6 dom7',
  'vi5 vie5',
  '',
  '',
];

function withMore(names: Map<string, number>, more: EachLanguage): Map<string, number> {
  for (const said of more.filter(Boolean).flatMap((row) => row.split(' '))) {
    const name = said.replace(/\d/g, '');
    if (!names.has(name)) names.set(name, Number(said.slice(name.length)) - 1);
  }
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

/** Ten to ninety, folded; what is counted in tens is a piece's age, or a decade. */
export const tens: EachLanguage = [
  'ten, twenty, thirty, forty, fifty, sixty, seventy, eighty, ninety',
  'dix, vingt, trente, quarante, cinquante, soixante, soixante[- ]dix, quatre[- ]vingts?, quatre[- ]vingt[- ]dix',
  'zehn, zwanzig, drei(?:ss|ß)ig, vierzig, fue?nfzig, sechzig, siebzig, achtzig, neunzig',
  'dieci, venti, trenta, quaranta, cinquanta, sessanta, settanta, ottanta, novanta',
  'diez, veinte, treinta, cuarenta, cincuenta, sesenta, setenta, ochenta, noventa',
  'tien, twintig, dertig, veertig, vijftig, zestig, zeventig, tachtig, negentig',
  '十, 二十, 三十, 四十, 五十, 六十, 七十, 八十, 九十',
];

/** How a decade is made of the tens: "twenties", "années vingt". Japanese counts those of a reign so as well, and is read in digits. */
export const namedDecade: EachLanguage = [
  '#ies',
  'annees #',
  '#e(?:rn?|r jahren?)',
  'anni #',
  'anos #|(?<=(?:de|en) los )#(?!\\s\\p{L})',
  'jaren #',
  '',
];

/** Words before the digits of a decade ("années 80", "gli anni '90"), and behind them ("80s", "90er Jahre"). */
export const beforeDecade: EachLanguage = [
  '',
  'annees|decennie',
  '',
  'anni|gli anni',
  'anos|los|decada de(?: los)?',
  'jaren',
  '',
];
export const behindDecade: EachLanguage = ["'?s", '', 'ern?(?:[- ]jahren?)?', '', '', '', '年代'];

/** Words that narrow a decade or year: before it, and in Japanese behind it. */
export const partOfDecade: Record<'early' | 'mid' | 'late', EachLanguage> = {
  early: [
    'early|earlier|beginning of|start of|first half of',
    'debuts?',
    'fruhen?|fruehen?|anfang|beginn',
    'primi|inizio|inizi',
    'principios? de|comienzos de|inicios de',
    'begin|vroege',
    '前半|初頭|初め|初期',
  ],
  mid: [
    'mid|middle|middle of',
    'milieu',
    'mitte|mittleren?',
    'meta|meta degli',
    'mediados de',
    'midden|halverwege',
    '中頃|半ば|中期',
  ],
  late: [
    'late|later|end of|second half of',
    'fin|fin des',
    'spaten?|spaeten?|ende',
    'fine|tardi',
    'final(?:es)? de|fines de',
    'eind|einde|laat',
    '後半|末|後期|終わり',
  ],
};

export const aboutWords: EachLanguage = [
  'c\\.?|ca\\.?|circa|approx\\.?|approximately|around|about|roughly|probably|possibly',
  'environ|env\\.?|vers|autour de|aux alentours de',
  'ungefahr|ungefaehr|etwa|um|gegen|wohl|vermutlich|wahrscheinlich',
  'verso il|verso|intorno al|attorno al',
  'hacia|alrededor de|aprox\\.?|sobre',
  'rond|omstreeks|ongeveer',
  '約|およそ|おそらく',
];
/** Japanese says before, until and after behind the date. */
export const beforeWords: EachLanguage = [
  'before|pre|prior to',
  'avant',
  'vor',
  'prima del|prima degli|ante',
  'antes de|antes del',
  'voor',
  '',
];
/** As above with the date itself included. */
export const untilWords: EachLanguage = [
  'up to|until|no later than|not later than',
  "jusque|jusqu'en|au plus tard(?: en)?",
  'bis|spatestens',
  'fino al|non oltre|al piu tardi',
  'hasta|a mas tardar(?: en)?',
  'tot|uiterlijk|op zijn laatst',
  '',
];
/** "From 1994" and "des années 80" name the date itself and are absent. */
export const afterWords: EachLanguage = [
  'after|post|since|as of|not before|not earlier than|no earlier than',
  'apres|depuis|au plus tot(?: en)?|pas avant|a partir de',
  'nach|ab|seit|fruhestens|nicht vor',
  'non prima del|dopo il|dopo gli',
  'no antes de|despues de|desde',
  'niet voor|op zijn vroegst|na|sinds|vanaf',
  '',
];

/** Joints that make two dates one range ("1988 to 1994") or a choice of both ("1988 or 1989"), beside a dash. */
export const rangeWords: EachLanguage = [
  'to|and|through|till|until|or',
  'a|à|et|ou',
  'bis|und|oder',
  'al|ed?|o',
  'hasta|y',
  'tot|en|of',
  'から',
];

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
 * common practice, no source, and therefore `about`. "Vintage", "antique" and "retro" claim no date and are absent. The
 * name of a style is taken over as it is by most languages; a language with one of its own has it besides.
 */
export const eras: { words: EachLanguage; from: string; to: string }[] = [
  {
    words: [
      'victorian',
      'victorien(?:ne)?s?',
      'viktorianisch\\p{L}{0,2}',
      'vittorian[oaie]',
      'victorian[oa]s?',
      'victoriaanse?',
      'ヴィクトリア朝',
    ],
    from: '1837-06-20',
    to: '1901-01-22',
  },
  {
    words: [
      'edwardian',
      'edouardien(?:ne)?s?',
      'edwardianisch\\p{L}{0,2}',
      'edoardian[oaie]',
      'eduardian[oa]s?',
      'edwardiaanse?',
      'エドワード朝',
    ],
    from: '1901-01-22',
    to: '1910-05-06',
  },
  { words: everywhere('belle epoque', 'ベル・?エポック'), from: '1871-01-01', to: '1914-12-31' },
  { words: everywhere('art deco', 'アール・?デコ'), from: '1920-01-01', to: '1939-12-31' },
  { words: everywhere('art nouveau|jugendstil', 'アール・?ヌーヴォー'), from: '1890-01-01', to: '1910-12-31' },
  {
    words: [
      'interwar|inter[- ]war',
      'entre[- ]deux[- ]guerres',
      'zwischenkriegszeit',
      'interbellico',
      'entreguerras',
      'interbellum',
      '戦間期',
    ],
    from: '1918-11-11',
    to: '1939-09-01',
  },
  { words: everywhere('mid[- ]century', 'ミッドセンチュリー'), from: '1945-01-01', to: '1969-12-31' },
];
