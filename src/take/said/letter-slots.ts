import type { Slot } from '../../maker/types';
import { foldWords } from '../../text';
import { andWords } from '../and-words';
import { tellingFinder } from '../words';
import { asFolded } from './as-folded';

const finder = tellingFinder('letters', 'month', 'digits', 'ordinal-1', 'ordinal-2');
/** What ends a part of a description: "a letter for the month", "the second letter is the month (A is January …)". */
const parts = new RegExp(`[,;:。、+]|[()（）]|\\s(?:${andWords})\\s`, 'gu');

/** "A letter (the month)". */
const bracketed = /\(([^()]{1,40})\)/gu;
const longestBracket = 20;

/** Which letter of a code writes the month, counted from 0 among its letters; null where the text says that of none. */
export function monthLetter(text: string): number | null {
  const folded = foldWords(text).text.replace(bracketed, (all, inner: string) =>
    finder(asFolded(inner)).some(({ value }) => value === 'month') && inner.length <= longestBracket
      ? ` ${inner} `
      : all,
  );
  for (const part of folded.split(parts)) {
    const hits = finder(asFolded(part));
    const says = (value: (typeof hits)[number]['value']) => hits.some((hit) => hit.value === value);
    if (says('letters') && says('month') && !says('digits')) return says('ordinal-2') ? 1 : 0;
  }
  return null;
}

/** The letters of a code one by one, where one of them writes the month: the others are a workshop's. */
export function lettersWithMonth(count: number, month: number): Slot[] | null {
  if (month >= count) return null;
  const before: Slot[] = month > 0 ? [{ plant: month }] : [];
  const behind: Slot[] = count - month - 1 > 0 ? [{ plant: count - month - 1 }] : [];
  return [...before, { month: 'letter' }, ...behind];
}
