import { tellingFinder } from '../words';
import { asFolded } from './as-folded';
import { type YearToken, yearsIn } from './year-words';

const names = [
  'about',
  'between',
  'since',
  'until',
  'before',
  'after',
  'to',
  'now',
  'onwards',
  'unknown',
  'launched',
  'ended',
  'only-then',
] as const;
type Name = (typeof names)[number];
const finder = tellingFinder(...names);

/** A year, or a word or sign that says how the years beside it are ends of a period. */
export type Token =
  | YearToken
  | {
      kind: 'dash' | Name;
      behind?: boolean;
      opens?: boolean;
      joins?: boolean;
      isAnd?: boolean;
      start: number;
      end: number;
    };

/** "And" joins two years where "between" stands before them, and two decades. */
const ands = new Set('and et und e y en'.split(' '));
const dashes = /[-–—〜～~]/g;

/** "To 1986" alone at the head of an entry, or closing it: "the main works, to 1986". */
const opensAnEnd = (text: string, at: number): boolean =>
  at === 0
    ? /^(?:to|au|al|a)\s\d/.test(text.slice(0, 5))
    : text.length - at === 7 && /^,\sto\s\d{4}$/.test(text.slice(Math.max(0, at - 2)));

/** The years of a folded text and what stands around them, in order; none where it has no year. */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = yearsIn(text);
  if (tokens.length === 0) return [];
  for (const { value: said, foldedStart, foldedEnd } of finder(asFolded(text))) {
    // "From 1972 on a leather tab": the small word is of the place.
    if (/^on\san?\s/.test(text.slice(foldedStart, foldedEnd + 4))) continue;
    // "1990 on" at the end is from then on; elsewhere the small word may be any.
    const value =
      text.slice(foldedStart, foldedEnd) === 'on' && /^\s?(?:$|[),;])/.test(text.slice(foldedEnd, foldedEnd + 2))
        ? 'onwards'
        : said;
    tokens.push({
      kind: value,
      // "1989 to date" is one word for both.
      isAnd: value === 'to' && ands.has(text.slice(foldedStart, foldedEnd)),
      joins: value === 'now' && /^to\s/.test(text.slice(foldedStart, foldedEnd)),
      opens: value === 'to' && opensAnEnd(text, foldedStart),
      behind: /^(?:から|より前|以前)/.test(text.slice(foldedStart, foldedEnd)),
      start: foldedStart,
      end: foldedEnd,
    });
  }
  const bare = /^[-–—]\s?\d{4}$/.test(text);
  for (const { 0: dash, index } of text.matchAll(dashes)) {
    const opens =
      index === 0 ? bare || /[〜～~]/.test(dash) : /[〜～]/.test(dash) && /[\s、（(：:]/.test(text[index - 1]!);
    tokens.push({ kind: 'dash', opens, start: index, end: index + 1 });
  }
  return tokens.sort((a, b) => a.start - b.start || b.end - a.end);
}

export const opensPeriod = (token: Token): boolean => token.kind !== 'year' && token.opens === true;

export const isAnd = (token: Token): boolean => token.kind !== 'year' && token.isAnd === true;
