import { isoDate, type Span } from '../span';
import type { RawDate } from './date-parts';
import { decadeNames, eras, partOfDecade } from './date-words';

const edge = '(?<![\\p{L}\\d])';
const written = [
  // "1990s", "1990's", "90s", "'90s", "1990er", "90er Jahre"
  `((?:1[89]|20)\\d0|'?\\d0)(?:'?s|ern?)(?:[- ]jahren?)?(?![\\p{L}\\d])`,
  // "années 80", "anni '90", "años 1990", "jaren 90", "Jahre 90"
  `(?:annees|anni|anos|jaren|los|gli anni|decennie|decada de|decada de los)\\s{1,2}((?:1[89]|20)\\d0|'?\\d0)(?!\\d|\\s?(?:cm|mm|€|eur|%))(?:s(?![\\p{L}]))?`,
].join('|');
const numeric = new RegExp(`${edge}(?:${written})`, 'gu');
const japanese = /(?<!\d)((?:1[89]|20)\d0|\d0)年代(前半|初頭|初め|初期|中頃|半ば|中期|後半|末|後期|終わり)?/gu;
const named = new RegExp(
  `${edge}(?:${Object.entries(decadeNames)
    .reverse()
    .map(([tens, words]) => `(?<t${tens}>${words})`)
    .join('|')})(?:[- ]jahren?)?(?![\\p{L}])`,
  'gu',
);
const parts = Object.entries(partOfDecade).map(([part, words]) => ({
  part: part as keyof typeof partOfDecade,
  pattern: new RegExp(
    `${edge}(?:${words})(?:[- ](?:to|of|the|der|den|des|de|degli|gli|los|las|dei|delle|del|van|die|jaren|les|d')){0,2}[- ']{0,2}$`,
    'u',
  ),
}));
const japaneseParts: Record<string, keyof typeof partOfDecade> = {
  前半: 'early',
  初頭: 'early',
  初め: 'early',
  初期: 'early',
  中頃: 'mid',
  半ば: 'mid',
  中期: 'mid',
  後半: 'late',
  末: 'late',
  後期: 'late',
  終わり: 'late',
};

/** Years of a decade's part, both included; the parts overlap because sellers do not agree. Common practice, no source. */
const partYears: Record<keyof typeof partOfDecade, [number, number]> = { early: [0, 4], mid: [3, 7], late: [6, 9] };

function decadeSpan(first: number, part: keyof typeof partOfDecade | null): Span {
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
  const add = (start: number, end: number, first: number[], after: keyof typeof partOfDecade | null) => {
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
  for (const match of text.matchAll(named)) {
    const tens = Object.entries(match.groups ?? {})
      .find(([, words]) => words !== undefined)?.[0]
      .slice(1);
    add(match.index, match.index + match[0].length, firstYears(`${tens}0`, now), null);
  }
  for (const match of text.matchAll(japanese))
    add(
      match.index,
      match.index + match[0].length,
      firstYears(match[1] as string, now),
      japaneseParts[match[2] ?? ''] ?? null,
    );
  for (const { words, from, to, about } of eras)
    for (const match of text.matchAll(new RegExp(`${edge}(?:${words})(?![\\p{L}])`, 'gu')))
      found.push({
        span: { from, to, precision: 'range', about },
        start: match.index,
        end: match.index + match[0].length,
        form: 'era',
      });
  return found;
}
