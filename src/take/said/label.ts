import { foldWords } from '../../text';
import { tellingFinder, wholeWords } from '../words';
import { partNamed } from './part';
import { isPeriod } from './used-text';

/** What a column tells. */
export const roles = [
  'code',
  'place',
  'plant',
  'period',
  'from',
  'until',
  'format',
  'example',
  'reads',
  'model',
  'size',
  'width',
  'height',
  'depth',
  'price',
  'maker',
  'part',
  'is',
  'where',
  'year',
  'letter',
  'first',
  'last',
  'note',
] as const;
export type Role = (typeof roles)[number];

const topicOf = (role: Role) => `column-${role}` as const;
const whole = roles.map((role) => ({ role, words: wholeWords(topicOf(role)) }));
const finder = tellingFinder(...roles.map(topicOf));

/** "L x H x D", "B×H×T": the sides of a size. */
const sides = /^[lwhdbtpa]{1,2}\s?[x×*/]\s?[lwhdbtpa]{1,2}(?:\s?[x×*/]\s?[lwhdbtpa]{1,2})?$/;

/** A small word ("a", "to") heads a column by itself only; a Japanese sign is a word. */
const isOfSigns = /\p{Script=Han}/u;

/** "Abendtasche" is a model and no column of them. */
const things = wholeWords('heading-thing');
const shortestPart = 4;
const heads = new Set(
  whole.flatMap(({ role, words }) =>
    role === 'code'
      ? []
      : [...words].filter((word) => word.length >= shortestPart && !word.includes(' ') && !things.has(word)),
  ),
);
/** "Codeaufbau", "productieperiode": German and Dutch write in one word what a column tells and of what; its last part counts. */
function lastOfCompound(word: string): string | null {
  if (/[^\p{L}]/u.test(word)) return null;
  for (let at = 3; at <= word.length - shortestPart; at += 1) if (heads.has(word.slice(at))) return word.slice(at);
  return null;
}

/** The roles that a header or label names, likeliest first; a word may name several, and the cells decide. */
export function rolesNamed(header: string): Role[] {
  const plain = foldWords(header)
    .text.replace(/[([][^)\]]{0,40}[)\]]/g, '')
    .replace(/[\s:：.]{1,4}$/, '')
    .replace(/(?<=\S)\s(?:cm|mm)$/, '')
    .trim();
  if (sides.test(plain)) return ['size'];
  const exact = whole.filter(({ words }) => words.has(plain)).map(({ role }) => role);
  if (exact.length > 0 || plain.length > 40) return exact;
  if (partNamed(header) !== null) return [];
  const last = lastOfCompound(plain);
  if (last !== null) return whole.filter(({ words }) => words.has(last)).map(({ role }) => role);
  const hits = finder(header)
    .filter(
      ({ start, end, value }) =>
        end - start > 2 || value === 'column-where' || isOfSigns.test(header.slice(start, end)),
    )
    .sort((a, b) => b.end - b.start - (a.end - a.start));
  return [...new Set(hits.map(({ value }) => value.slice('column-'.length) as Role))];
}

/** Whether a text says what stands beside or below it: a column's role, or a part of the piece. */
export const isLabel = (text: string): boolean =>
  !isPeriod(text) && (rolesNamed(text).length > 0 || partNamed(text) !== null);
