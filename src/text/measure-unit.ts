import { anyLanguage } from './each-language';
import { foldWords } from './fold';
import { crossing, withoutLabels } from './measure-label';
import type { Term, Unit } from './measure-term';
import { aboutLength, sizeHeading } from './unit-words';

const unitFirst = /(?:^|[^\p{L}\d])(cm|mm|in|inch(?:es)?)\.?[ :)]{1,3}$/iu;
/** "17D cm", "21 hoog cm": the unit behind the label. */
const unitBehindLabel = /^\s?\(?(\p{L}{1,12})\)?\s{0,2}(cm|mm|in(?!\s\p{L})|inches|")(?!\p{L})/iu;

/** The unit that a run states once for all its numbers, at its end or its start ("cm 30x20"); null where it states none. */
export function statedUnit(text: string, terms: readonly Term[]): Unit | null {
  const stated = [...terms].reverse().find((term) => term.unit)?.unit ?? null;
  const first = unitFirst.exec(text.slice(Math.max(0, terms[0]!.start - 10), terms[0]!.start))?.[1]?.toLowerCase();
  const last = terms[terms.length - 1]!;
  const behind = stated ? null : unitBehindLabel.exec(text.slice(last.end, last.end + 28));
  if (behind && (behind[1]!.length <= 2 || withoutLabels(foldWords(behind[1]!).text) === '')) {
    const unit = behind[2]!.toLowerCase();
    return unit === 'cm' || unit === 'mm' ? unit : 'in';
  }
  // "In 96 she bought it": a lone number behind "in" is no inch.
  if (first === 'in' && terms.length < 2) return stated;
  return stated ?? (first === undefined ? null : first === 'cm' || first === 'mm' ? first : 'in');
}

/** A side of a bag in centimetres, where a number's unit is not said and only two stand together. */
const isSide = ({ value }: Term) => value >= 5 && value <= 80;

const heading = new RegExp(
  `(?:${anyLanguage(sizeHeading)})[\\s:(]{0,4}(?:${anyLanguage(aboutLength)})?[\\s):]{0,3}$`,
  'u',
);

/** Whether each number stands across from the one before: "30 x 21 x 17", "28 by 21, 9 deep", whose third says its side. */
const isCrossed = (plain: string, terms: readonly Term[]): boolean =>
  terms.every(
    ({ value, dimension, start }, at) =>
      value >= 2 &&
      (at === 0 || (at === 2 && dimension !== null) || crossing.test(plain.slice(terms[at - 1]!.end, start))),
  );

/**
 * Whether numbers without a unit are centimetres: only in labelled runs, and two or three numbers behind a heading, two with
 * a cross between them, three in English too; English ones must be too large for inches (common practice).
 */
export function assumesCm(plain: string, terms: readonly Term[], language: string | null): boolean {
  const headed = heading.test(plain.slice(Math.max(0, terms[0]!.start - 32), terms[0]!.start));
  const crossed = isCrossed(plain, terms);
  // "30x21x17": three sides of a bag, where nobody measures in inches.
  const bare =
    crossed && language !== null && !/^en/i.test(language) && Math.max(...terms.map(({ value }) => value)) >= 10;
  const tripled = terms.length === 3 && (headed || bare) && (crossed || !/^en/i.test(language ?? 'en'));
  const paired = terms.length === 2 && headed && crossed && terms.every(isSide);
  if (!tripled && !paired && terms.filter((term) => term.letter ?? term.dimension).length < 2) return false;
  const tag = (language ?? '').toLowerCase();
  if (tag === 'en-us' || tag === 'en-ca') return false;
  return !tag.startsWith('en') || tag.includes('-') || Math.max(...terms.map((term) => term.value)) >= 20;
}

/** The unit of the nearest later term: in `12 x 8" (30 x 20 cm)` each half has its own. */
export const nextUnit = (terms: readonly Term[], index: number): Unit | null =>
  terms.slice(index).find((term) => term.unit)?.unit ?? null;
