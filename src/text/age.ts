import { isoDate, type Span } from '../span';
import type { RawDate } from './date-parts';

const count =
  '(\\d{1,3}|ten|twenty|thirty|forty|fifty|zehn|zwanzig|dreissig|dreißig|dix|vingt|trente|dieci|venti|trenta|diez|veinte|treinta|tien|twintig|dertig)';
const numbers: Record<string, number> = {
  ten: 10,
  zehn: 10,
  dix: 10,
  dieci: 10,
  diez: 10,
  tien: 10,
  twenty: 20,
  zwanzig: 20,
  vingt: 20,
  venti: 20,
  veinte: 20,
  twintig: 20,
  thirty: 30,
  dreissig: 30,
  dreißig: 30,
  trente: 30,
  trenta: 30,
  treinta: 30,
  dertig: 30,
  forty: 40,
  fifty: 50,
};
const more =
  '(over |more than |at least |uber |mehr als |mindestens |plus de |oltre |piu di |mas de |meer dan |ruim )?';
const patterns = [
  new RegExp(
    `(?<![\\p{L}\\d])${more}${count}[\\s-]{1,2}(?:years?|yrs|jahre|jaar)[\\s-](?:old|alt|oud)(?![\\p{L}])`,
    'gu',
  ),
  new RegExp(
    `(?<![\\p{L}\\d])(?:il a|elle a|a|age de|ha|tiene)\\s(?:circa |unos |environ |mas o menos |almeno )?${more}${count}\\s(?:ans|anni|anos)(?![\\p{L}])(?!\\s(?:de garantie|di garanzia|de garantia))`,
    'gu',
  ),
];
const japanese = /(?<!\d)(\d{1,3})年(以上)?(?:ほど|くらい|ぐらい)?前の(?:もの|品|バッグ)/gu;

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
  const add = (match: RegExpMatchArray, years: number, atLeast: boolean) => {
    const span = spanOf(years, atLeast, now);
    if (span) found.push({ span, start: match.index!, end: match.index! + match[0].length, form: 'age' });
  };
  for (const pattern of patterns)
    for (const match of text.matchAll(pattern))
      add(match, numbers[match[2] as string] ?? Number(match[2]), match[1] !== undefined);
  for (const match of text.matchAll(japanese)) add(match, Number(match[1]), match[2] !== undefined);
  return found;
}
