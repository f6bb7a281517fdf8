import { parseDates } from '../../text';
import { tellingFinder } from '../words';

const word = '(?<month>\\p{Script=Latin}{3,10}|1[0-2]月|[1-9]月)';
const sign = '[A-Z](?![\\p{Script=Latin}\\d])';
const between = '\\s{0,2}(?:[=:|→(–—-]|は|が|＝|：|(?:is|for|für|pour|per|para|voor|ist|est|è|es)(?=\\s))?\\s{0,2}';
/** "A = January", "A: janvier", "A | Januar". */
const letterFirst = new RegExp(`(?<![\\p{L}\\d])(?<letter>${sign})${between}${word}(?!\\p{Script=Latin})`, 'gu');
/** "January = A", "janvier (A)". */
const monthFirst = new RegExp(`(?<![\\p{L}\\d])${word}${between}(?<letter>${sign})`, 'gu');
const mostPairs = 80;

const monthOf = (name: string): number | null => {
  const inJapanese = /^(\d{1,2})月$/u.exec(name)?.[1];
  if (inJapanese !== undefined) return Number(inJapanese);
  const [date] = parseDates(`${name} 1990`, { language: null, now: '2000-01-01' });
  return date?.form === 'month' && date.start === 0 ? Number(date.span.from?.slice(5, 7)) : null;
};

/** Each month's letters, by the number of the month. */
function pairsIn(text: string, form: RegExp): Map<number, Set<string>> {
  const found = new Map<number, Set<string>>();
  for (const { groups } of [...text.matchAll(form)].slice(0, mostPairs)) {
    const month = monthOf(groups!.month!);
    if (month !== null) found.set(month, (found.get(month) ?? new Set()).add(groups!.letter!));
  }
  return found;
}

const capitals = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const leftOut = tellingFinder('left-out');
const written = /(?<![\p{Script=Latin}\d'’])[A-Z](?![\p{Script=Latin}\d'’])/gu;
const farthest = 40;
/** The letters that a text leaves out: "without I", "I and O are not used". */
function lettersLeftOut(text: string, first: string, last: string): Set<string> {
  const hits = leftOut(text);
  const near = [...text.matchAll(written)].filter(({ 0: letter, index }) => {
    const isInside = letter > first && letter < last;
    return isInside && hits.some(({ start, end }) => index >= start - farthest && index <= end + farthest / 2);
  });
  return new Set(near.map(([letter]) => letter));
}

const monthWords = tellingFinder('month');
const run =
  /(?<![\p{L}\d])([A-Z])\s?(?:to|through|bis|à|al?|alla|hasta|tot(?:\sen\smet)?|t\/m|[-–—…〜～~]|から)\s?(?:l[ao]?\s)?([A-Z])(?![\p{L}\d])/gu;

/** So many letters from the first on, without those that are left out; null where they are not twelve. */
function twelve(first: string, last: string, without: ReadonlySet<string>): string | null {
  const all = [...capitals.slice(capitals.indexOf(first), capitals.indexOf(last) + 1)].filter(
    (one) => !without.has(one),
  );
  return all.length === 12 ? all.join('') : null;
}

/**
 * The letters of the twelve months, January first, as a page tells them: each month's own, in a table or a sentence; the
 * first and the last with those that are left out between ("A = January … M = December, without I"); "A to M, without I".
 * Null where it does not tell them, or tells a month two letters.
 */
export function monthLettersTold(text: string): string | null {
  for (const form of [letterFirst, monthFirst]) {
    const pairs = pairsIn(text, form);
    const letterOf = (month: number) => (pairs.get(month)?.size === 1 ? [...pairs.get(month)!][0]! : null);
    const all = Array.from({ length: 12 }, (_, at) => letterOf(at + 1));
    if (all.every((one) => one !== null)) return new Set(all).size === 12 ? all.join('') : null;
    const [first, last] = [all[0], all[11]];
    const told = first && last ? twelve(first, last, lettersLeftOut(text, first, last)) : null;
    if (told) return told;
  }
  for (const sentence of text.split(/[.。;\n]/)) {
    if (monthWords(sentence).length === 0) continue;
    for (const [, first, last] of sentence.matchAll(run)) {
      const told = first! < last! ? twelve(first!, last!, lettersLeftOut(sentence, first!, last!)) : null;
      if (told) return told;
    }
  }
  return null;
}
