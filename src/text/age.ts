import { isoDate, type Span } from '../span';
import type { RawDate } from './date-parts';
import { tens } from './date-words';
import { anyLanguage, type EachLanguage } from './each-language';

/** How an age stands around its number, `#`: "30 years old", "a 30 ans". */
export const ages: EachLanguage = [
  '#[\\s-]{1,2}(?:years?|yrs)[\\s-]old',
  '(?:(?:il|elle) a|a|age de)\\s(?:environ )?#\\sans(?!\\sde garantie)',
  '#[\\s-]{1,2}jahre[\\s-]alt',
  'ha\\s(?:circa |almeno )?#\\sanni(?!\\sdi garanzia)',
  'tiene\\s(?:unos |mas o menos )?#\\sanos(?!\\sde garantia)',
  '#[\\s-]{1,2}jaar[\\s-]oud',
  '#年(以上)?(?:ほど|くらい|ぐらい)?前の(?:もの|品|バッグ)',
];
/** Japanese says so behind the number. */
export const moreThan: EachLanguage = [
  'over |more than |at least ',
  'plus de ',
  'uber |mehr als |mindestens ',
  'oltre |piu di ',
  'mas de ',
  'meer dan |ruim ',
  '',
];
const patterns = ages.map((around, language) => {
  const number = `(\\d{1,3}|${tens[language]!.replaceAll(', ', '|')})`;
  const isSpaced = moreThan[language] !== '';
  const said = around.replace('#', isSpaced ? `(${anyLanguage(moreThan)})?${number}` : `()${number}`);
  return { language, pattern: new RegExp(isSpaced ? `(?<![\\p{L}\\d])${said}(?![\\p{L}])` : `(?<!\\d)${said}`, 'gu') };
});

/** The number that the words of a language say. */
const saidNumber = (words: string, language: number): number =>
  Number(words) || 10 * (1 + tens[language]!.split(', ').findIndex((ten) => new RegExp(`^${ten}$`).test(words)));

/** Half of the room that a spoken age leaves: "30 years" is rounder than "27 years". Common practice, no source. */
const slack = (years: number) => (years % 10 === 0 ? 5 : years % 5 === 0 ? 3 : 1);

function spanOf(years: number, atLeast: boolean, now: string): Span | null {
  const year = Number(now.slice(0, 4)) - years;
  if (years < 1 || years > 250) return null;
  if (atLeast) return { from: null, to: isoDate(year + 1, 12, 31), precision: 'range', about: true };
  const room = slack(years);
  return { from: isoDate(year - room, 1, 1), to: isoDate(year + room, 12, 31), precision: 'range', about: true };
}

/** Ages said of a piece, counted back from the reading day: "about 30 years old", "über 40 Jahre alt", "ha 30 anni". */
export function agesIn(text: string, now: string): RawDate[] {
  const found: RawDate[] = [];
  for (const { language, pattern } of patterns)
    for (const { 0: words, 1: more, 2: number, 3: behind, index } of text.matchAll(pattern)) {
      const span = spanOf(saidNumber(number!, language), Boolean(more || behind), now);
      if (span) found.push({ span, start: index, end: index + words.length, form: 'age' });
    }
  return found;
}
