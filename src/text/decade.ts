import { isoDate, type Span } from '../span';
import type { RawDate } from './date-parts';
import { beforeDecade, behindDecade, eras, namedDecade, partOfDecade, tens } from './date-words';
import { anyLanguage, anyWithGaps, type EachLanguage } from './each-language';

type Part = keyof typeof partOfDecade;

const edge = '(?<![\\p{L}\\d])';
const digits = "((?:1[89]|20)\\d0|'?\\d0)";
const numeric = new RegExp(
  `${edge}(?:${digits}(?:${anyWithGaps(behindDecade)})(?:[- ]jahren?)?(?![\\p{L}\\d])|(?:${anyLanguage(beforeDecade)})\\s{1,2}${digits}(?!\\d|\\s?(?:cm|mm|€|eur|%))(?:s(?![\\p{L}]))?)`,
  'gu',
);
/**
 * The twenties to the nineties in words, of forms in which `#` stands for the ten ("annees #"): parts of a pattern over folded
 * text, each a group that `tenNamed` knows. The longest name comes first: "soixante-dix" before "soixante".
 */
export const namedTens = (forms: EachLanguage): string =>
  [9, 8, 7, 6, 5, 4, 3, 2]
    .map((ten) => {
      const own = forms.flatMap((form, at) => {
        const word = tens[at]!.split(', ')[ten - 1]!;
        return form === '' ? [] : [form.replaceAll('#', at === 0 ? word.slice(0, -1) : word)];
      });
      return `(?<t${ten}>${own.join('|')})`;
    })
    .join('|');

/** Which ten a match of `namedTens` names: 2 to 9; null where it names none. */
export const tenNamed = ({ groups = {} }: RegExpMatchArray): number | null =>
  [2, 3, 4, 5, 6, 7, 8, 9].find((ten) => groups[`t${ten}`] !== undefined) ?? null;

const named = new RegExp(`${edge}(?:${namedTens(namedDecade)})(?:[- ]jahren?)?(?![\\p{L}])`, 'gu');
const parts = Object.entries(partOfDecade).map(([part, words]) => ({
  part: part as Part,
  pattern: new RegExp(
    `${edge}(?:${anyWithGaps(words)})(?:[- ](?:to|of|the|der|den|des|de|degli|gli|los|las|dei|delle|del|van|die|jaren|les|d')){0,2}[- ']{0,2}$`,
    'u',
  ),
}));
const partsBehind = Object.entries(partOfDecade).map(([part, [, , , , , , words]]) => `(?<${part}>${words})`);
const japanese = new RegExp(`(?<!\\d)((?:1[89]|20)\\d0|\\d0)${behindDecade[6]}(?:${partsBehind.join('|')})?`, 'gu');

/** Years of a decade's part, both included; the parts overlap because sellers do not agree. Common practice, no source. */
const partYears: Record<Part, [number, number]> = { early: [0, 4], mid: [3, 7], late: [6, 9] };

function decadeSpan(first: number, part: Part | null): Span {
  if (part === null) return { from: isoDate(first, 1, 1), to: isoDate(first + 9, 12, 31), precision: 'decade' };
  const [from, to] = partYears[part];
  return { from: isoDate(first + from, 1, 1), to: isoDate(first + to, 12, 31), precision: 'range' };
}

/**
 * First years that "1990", "90", "'90" may mean, likeliest first. "00s" is this century's, "10s" probably, "20s" more
 * likely the last one's, and both of these are open.
 */
function firstYears(digits: string, now: string): number[] {
  const value = Number(digits.replace("'", ''));
  if (value >= 1000) return [value];
  const current = Number(now.slice(0, 4));
  if (value === 0) return [2000];
  if (value === 10) return [2010, 1910];
  return 2000 + value <= current ? [1900 + value, 2000 + value] : [1900 + value];
}

/** Decades as numbers or words, with "early", "mid", "late" before them, and era words. */
export function decadesIn(text: string, now: string): RawDate[] {
  const found: RawDate[] = [];
  const add = (start: number, end: number, first: number[], after: Part | null) => {
    if ((first[0] as number) > Number(now.slice(0, 4))) return;
    const left = text.slice(Math.max(0, start - 32), start);
    const hit = parts
      .map(({ part, pattern }) => ({ part, match: pattern.exec(left) }))
      .find(({ match }) => match !== null);
    const from = hit?.match ? start - (left.length - hit.match.index) : start;
    const spans = first.map((year) => decadeSpan(year, hit?.part ?? after));
    const several = spans.length > 1 ? { ambiguous: spans } : {};
    found.push({ span: spans[0] as Span, start: from, end, form: 'decade', ...several });
  };
  for (const match of text.matchAll(numeric))
    add(match.index, match.index + match[0].length, firstYears((match[1] ?? match[2]) as string, now), null);
  for (const match of text.matchAll(named))
    add(match.index, match.index + match[0].length, firstYears(`${tenNamed(match)}0`, now), null);
  for (const match of text.matchAll(japanese))
    add(
      match.index,
      match.index + match[0].length,
      firstYears(match[1] as string, now),
      (Object.keys(partOfDecade) as Part[]).find((part) => match.groups?.[part] !== undefined) ?? null,
    );
  for (const { words, from, to } of eras)
    for (const match of text.matchAll(new RegExp(`${edge}(?:${anyLanguage(words)})(?![\\p{L}])`, 'gu')))
      found.push({
        span: { from, to, precision: 'range', about: true },
        start: match.index,
        end: match.index + match[0].length,
        form: 'era',
      });
  return found;
}
