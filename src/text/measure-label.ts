import { anyWithGaps } from './each-language';
import { afterLast } from './ends';
import { japanese } from './japanese';
import { wordsOf } from './lexicon';
import { type Dimension, dimensionLetters, dimensionWords, lettersOf, otherThings } from './measure-words';
import { anyOf, phraseFinder, phrasePattern } from './phrases';
import { asCross } from './unit-words';

/** What names a measurement's dimension; `letter` is null when a whole word does. */
export interface Label {
  dimension: Dimension;
  letter: string | null;
}

const words = phraseFinder(dimensionWords);
const reach = 32;

/** Label letters that count in a text of this language; all of them when it is unknown. */
export function lettersFor(language: string | null): Set<string> {
  const own = lettersOf[(language ?? '').slice(0, 2).toLowerCase()];
  const all = own ?? Object.values(lettersOf).join(' ');
  return new Set(`${all} w h d`.split(' '));
}

const about = anyOf(wordsOf('about'));
const hedged = new RegExp(`(?<!\\p{L})(?:${about})\\.?\\s{0,2}$`, 'u');
/** What stands between two sides that are measured across each other: "x", "by". On text folded by `foldWords`. */
export const crossing = new RegExp(`^\\s?(?:[x×*]|${anyWithGaps(asCross)})\\s?$`, 'u');
const letterBefore = /(?:^|[^\p{L}])\(?([a-z]{1,2})\)?[\s.:=]{0,3}$/u;
/** "In alto 28", "en haut 28": the width at the top, and no height. */
const atTop = /(?<!\p{L})(?:in|en)\s$/u;
/** "Da 85 a 110": from one to the other, and no letter for a side. */
const range = /(?<!\p{L})d[ae]\s\d{1,3}(?:[.,]\d)?\s?(?:cm\s)?a\s$/u;
const letterAfter = /^\s{0,2}\(?([a-z]{1,2})\)?(?![\p{L}])/u;

/** The label before a number: the nearest dimension word of its clause, or a letter right before it. */
function labelBefore(text: string, start: number, letters: Set<string>): Label | null {
  const left = text.slice(Math.max(0, start - reach), start);
  const letter = range.test(left) ? undefined : letterBefore.exec(left)?.[1];
  if (letter && letters.has(letter) && dimensionLetters[letter]) return { dimension: dimensionLetters[letter], letter };
  const clause = afterLast(left, /[\d;\n!?。]/u);
  const found = words(clause).filter((word) => !atTop.test(clause.slice(0, word.start)));
  const strap = found.find((word) => word.value === 'strap' || word.value === 'handle');
  const near = strap ?? found[found.length - 1];
  if (!near || /[.,]\s|、/.test(clause.slice(near.end).replace(hedged, ''))) return null;
  // "12 inches across by 8": the label is of the number ahead of it.
  if (crossing.test(clause.slice(near.end))) return null;
  return { dimension: near.value, letter: null };
}

/** The label after a number: `12.5" wide`, "30 cm (W)", "21 cm de haut". */
function labelAfter(text: string, end: number, letters: Set<string>): Label | null {
  const right = text.slice(end, end + reach);
  const clause = /^\)?[^\d;,.\n!?:。、]*/u.exec(right)?.[0] ?? '';
  const found = words(clause)[0];
  const lead = clause.slice(0, found?.start);
  // "10cm ストラップの長さ110cm": a Japanese label behind its number stands in brackets.
  const isAhead = found && japanese.test(found.words) && !lead.includes('(');
  if (found && !isAhead && /^\)?\s{0,2}\(?(?:in|de|di|of|en|van)?\s{0,2}$/u.test(lead))
    return { dimension: found.value, letter: null };
  const letter = letterAfter.exec(right);
  if (!letter) return null;
  // "12 H 8 W": a letter followed by a number belongs to that number, unless a joint stands between.
  if (
    !/^\s{0,2}(?:$|[)x×,;/.*\n]|by\b|cm|mm|in(?:ch(?:es)?)?\b|")/u.test(right.slice(letter[0].length)) &&
    !/\(/.test(letter[0])
  )
    return null;
  const dimension = dimensionLetters[letter[1] as string];
  return dimension && letters.has(letter[1] as string) ? { dimension, letter: letter[1] as string } : null;
}

const directly = new RegExp(`^[\\s:=.()-]{0,4}(?:(?:${about})\\.?\\s{0,2})?$`, 'u');

/** Whether labels stand before their numbers in a run: one stands right before its first number, or it is Japanese. */
export function labelsLead(text: string, first: { start: number }, letters: Set<string>): boolean {
  const left = text.slice(Math.max(0, first.start - reach), first.start);
  if (!labelBefore(text, first.start, letters)) return false;
  if (japanese.test(left.slice(-4)) || letterBefore.test(left)) return true;
  const last = words(left).pop();
  return last !== undefined && directly.test(left.slice(last.foldedEnd));
}

const isNamedAhead = ({ dimension }: Label): boolean => dimension === 'strap' || dimension === 'handle';

/** The label of a number, which may close its sentence; straps and handles are named before theirs. */
export function labelNear(
  text: string,
  term: { start: number; end: number; closes: boolean },
  letters: Set<string>,
  lead: boolean,
): Label | null {
  const before = labelBefore(text, term.start, letters);
  if (before && (lead || isNamedAhead(before))) return before;
  const after = labelAfter(text, term.end, letters);
  return after && !(term.closes && isNamedAhead(after)) ? after : before;
}

/** A short text without its dimension words. */
export function withoutLabels(text: string): string {
  let rest = text;
  for (const word of words(text).reverse()) rest = rest.slice(0, word.start) + rest.slice(word.end);
  return rest;
}

const template =
  /([a-wyz]{1,12})\s{0,2}[x×*/]\s{0,2}([a-wyz]{1,12})(?:\s{0,2}[x×*/]\s{0,2}([a-wyz]{1,12}))?[\s():=]{0,5}(?:in|[cm]m|ca\.?|circa|approx\.?)?[\s):=]{0,4}$/u;

const templateBehind =
  /^[\s(]{0,3}(?:cm|mm|in)?[\s(,]{0,3}([a-wyz]{1,12})\s{0,2}[x×*/]\s{0,2}([a-wyz]{1,12})(?:\s{0,2}[x×*/]\s{0,2}([a-wyz]{1,12}))?(?!\p{L})/u;

/** Labels of a template beside the numbers: "H x W x D: 12 x 8 x 4 in", "30/21/17 cm (B/H/T)". */
export function templateNear(text: string, start: number, end: number, count: number): Label[] | null {
  const before = template.exec(text.slice(Math.max(0, start - 60), start));
  return labelsOf(before, count) ?? labelsOf(templateBehind.exec(text.slice(end, end + 60)), count);
}

function labelsOf(match: RegExpExecArray | null, count: number): Label[] | null {
  const names = match?.slice(1).filter((name) => name !== undefined) ?? [];
  if (names.length !== count) return null;
  const labels = names.map((name): Label | null => {
    const letter = dimensionLetters[name];
    if (letter) return { dimension: letter, letter: name };
    const word = words(name)[0];
    return word ? { dimension: word.value, letter: null } : null;
  });
  return labels.every((label) => label !== null) ? labels : null;
}

const others = phrasePattern(otherThings, 'u');

/** Whether a lone measurement belongs to a flaw, a laptop that fits, or another object. */
export const isOtherThing = (text: string, term: { start: number; end: number }): boolean =>
  others.test(text.slice(Math.max(0, term.start - 24), Math.min(text.length, term.end + 24)));
