import { type Folded, foldWords } from '../../text';
import { tellingFinder, wholeWords } from '../words';

const counts = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const;
const finder = tellingFinder(...counts.map((count) => `number-${count}` as const), 'digits', 'letters');

const longWord = /^\p{L}{3,}$/u;
const countOf = new Map(
  counts.flatMap((count) =>
    [...wholeWords(`number-${count}`)].flatMap((word) => (longWord.test(word) ? [[word, count] as const] : [])),
  ),
);
/** "Siebenstellig", "viercijferig": the number and what it counts in one word. */
const compounds = new RegExp(
  `(?<!\\p{L})(${[...countOf.keys()].join('|')})(?:stellig|ziffrig|cijferig)\\p{L}{0,3}`,
  'gu',
);

/** So many letters or digits of a code, as a text says them. */
export interface SaidCount {
  of: 'digits' | 'letters';
  count: number;
  start: number;
  end: number;
}

/** One letter without an article, right before what it is: "Letter (factory)". */
const bareLetter = /^(?:letter|lettre|buchstabe|lettera|letra) \($/u;

/** "One of three letters". */
const oneOf =
  /(?<!\p{L})(?:one of|un[ae]? des|une? de|eine[rm]? von|un[ao] (?:dei|delle|degli|de)|een van)\s(?:the |les |de )?$/u;

/** Letters between a number and what it counts: "two workshop letters". */
const farthest = 12;

/** "two letters", "quatre chiffres", "数字4桁": the counts of a text, in order. */
export function readCounts(text: string | Folded): SaidCount[] {
  const folded = typeof text === 'string' ? foldWords(text) : text;
  const hits = finder(folded);
  // "A letter" is one; "a code of letters" is not.
  const isArticle = (hit: { foldedStart: number; foldedEnd: number }) =>
    folded.text.slice(hit.foldedStart, hit.foldedEnd) === 'a';
  const inOneWord = [...folded.text.matchAll(compounds)].map(
    ({ 0: word, 1: number, index }): SaidCount => ({
      of: 'digits',
      count: countOf.get(number!)!,
      start: index,
      end: index + word.length,
    }),
  );
  /** A number that a word before it counts: "英字2文字". */
  let taken: (typeof hits)[number] | undefined;
  const apart = hits.flatMap((hit, at): SaidCount[] => {
    if (hit.value !== 'digits' && hit.value !== 'letters') return [];
    // "1桁目" is the first digit and counts none.
    if (folded.text[hit.foldedEnd] === '目' || folded.text[hit.foldedEnd - 1] === '目') return [];
    const before = hits[at - 1];
    const after = hits[at + 1];
    const numberOf = (other: typeof hit | undefined, gap: number): number | null =>
      other?.value.startsWith('number-') && gap >= 0 && gap <= (isArticle(other) ? 1 : farthest)
        ? Number(other.value.slice(7))
        : null;
    const gapBefore = before ? hit.foldedStart - before.foldedEnd : 99;
    // Japanese counts behind what it counts: "アルファベット2文字".
    const japanese =
      hit.value === 'letters' &&
      /[\u30a0-\u30ff\u4e00-\u9fff]$/u.test(folded.text.slice(hit.foldedStart, hit.foldedEnd));
    const ahead = () => numberOf(after, after ? after.foldedStart - hit.foldedEnd : 99);
    if (before !== undefined && before === taken && gapBefore === 0) return [];
    const behind = japanese && gapBefore > 0 ? ahead() : null;
    const told = behind ?? numberOf(before, gapBefore);
    const count =
      told !== null && before && oneOf.test(folded.text.slice(Math.max(0, before.foldedStart - 16), before.foldedStart))
        ? 1
        : told;
    if (behind !== null) taken = after;
    // "Letter (factory), 2 digits (week)".
    if (count === null && bareLetter.test(folded.text.slice(hit.foldedStart, hit.foldedEnd + 2)))
      return [{ of: hit.value, count: 1, start: hit.foldedStart, end: hit.foldedEnd }];
    return count === null ? [] : [{ of: hit.value, count, start: hit.foldedStart, end: hit.foldedEnd }];
  });
  return inOneWord.length === 0 ? apart : [...apart, ...inOneWord].sort((a, b) => a.start - b.start);
}
