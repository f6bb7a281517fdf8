import { decodeExactly } from '../code';
import type { MakerFile } from '../maker/types';
import { aheadInSentence, phraseTest, rightBehind, wordsOf } from '../text';
import { hasUnitBehind } from './unit-behind';

/*
 * Codes that nothing announces, found by the layouts of the makers that may have made the piece: written as they are,
 * letter by letter, or with dots, strokes and blanks between their parts. What has letters and fits a layout is offered
 * as one; digits alone are a code only where the sentence speaks of one. Common practice, no source.
 */

/** Up to four groups, letters and digits by turns, or single characters apart; brackets stand for a frame. */
const shape =
  /(?<![\p{Script=Latin}\p{N}.\-/])(?:\d{1,2} [A-Z]{1,2} ){2,3}\d{1,2}(?![\p{Script=Latin}\p{N}])|(?<![\p{Script=Latin}\p{N}.\-/])(?:[A-Z0-9] ){4,13}[A-Z0-9](?![\p{Script=Latin}\p{N}])|(?<![\p{Script=Latin}\p{N}.\-/])(?:\([A-Z]\)|\[[A-Z]\])?[A-Z0-9](?:[.\-/]?[A-Z0-9]){0,15}(?: [A-Z0-9](?:[.\-/]?[A-Z0-9]){0,7}){0,3}(?![\p{Script=Latin}\p{N}])/gu;
const speaksOfCode = phraseTest(wordsOf('code-cue', 'code-noun'));
const reads = phraseTest(wordsOf('reads-there'));
const insideThePiece = phraseTest(wordsOf('inside-the-piece'));
const otherCode = phraseTest(wordsOf('other-code'));
/** "Art. 20934", "Postcode LS1": how far ahead such words count. */
const reach = 40;
const fewest = 5;

const bare = (code: string) => code.replace(/[.\-/\s]/g, '');
/** A file without systems knows its plants: their letters and three or four digits. */
const isOfPlant = (code: string, { codeSystems, plants }: MakerFile) =>
  codeSystems.length === 0 &&
  plants.some((plant) => code.startsWith(plant.code) && /^\d{3,4}$/.test(code.slice(plant.code.length)));
const fitting = (code: string, makers: readonly MakerFile[]) =>
  makers.find((file) => isOfPlant(code, file) || decodeExactly(code, file).length > 0);
/** Whether a layout of the makers explains a code as it stands. */
export const fitsLayout = (code: string, makers: readonly MakerFile[]): boolean =>
  fitting(bare(code), makers) !== undefined;

/** A word in capitals, also of one letter ("WQ 1 0 1 2 I had to look"), or a row of sides: "DENTRO", "W 28 H 17". A group more or a digit too many stays with the code. */
const noPart = /^(?:[A-Z]{3,}(?!\d)|[A-Z] \d{1,2}(?: |$)|[AEIOY]$)/;

/**
 * What a layout of the makers explains of a code's beginning, where a word or sizes follow; else the whole: a code that
 * is longer than its layout is told as it stands.
 */
export function asFarAsItFits(code: string, makers: readonly MakerFile[]): string {
  const groups = code.split(' ');
  if (fitting(bare(code), makers)) return code;
  for (let last = groups.length - 1; last > 0; last -= 1) {
    const [part, rest] = [groups.slice(0, last).join(' '), groups.slice(last).join(' ')];
    if (noPart.test(rest) && bare(part).length >= fewest && fitting(bare(part), makers)) return part;
  }
  return code;
}

interface Found {
  start: number;
  code: string;
  confidence: number;
  /** Whose layout it fits. */
  maker: string;
}

/** What fits a layout of the makers as it stands. `own` is the text in its own case. */
export function codesByLayout(text: string, own: string, makers: readonly MakerFile[]): Found[] {
  if (makers.length === 0) return [];
  return [...own.matchAll(shape)].flatMap(({ index, 0: words }): Found[] => {
    const groups = words.split(' ');
    // The longest run of groups from its start, or from a later one: "W 38 KV0915".
    for (let first = 0; first < groups.length; first += 1)
      for (let last = groups.length; last > first; last -= 1) {
        const code = groups.slice(first, last).join(' ');
        const start = index + (first === 0 ? 0 : groups.slice(0, first).join(' ').length + 1);
        const fits = fitAt(code, start, text, makers);
        if (fits) return [{ start, code, ...fits }];
      }
    return [];
  });
}

function fitAt(
  code: string,
  start: number,
  text: string,
  makers: readonly MakerFile[],
): Pick<Found, 'confidence' | 'maker'> | null {
  const plain = bare(code).replace(/[()[\]]/g, '');
  if (plain.length < fewest || plain.length > 16 || (plain.match(/\d/g) ?? []).length < 2) return null;
  const end = start + code.length;
  // "A 1985 bag": an article and a year.
  if (/^A (?:1[89]|20)\d\d$/.test(code) && /^\s\p{L}/u.test(rightBehind(text, end))) return null;
  if (hasUnitBehind(text, end, code)) return null;
  const ahead = aheadInSentence(text, start).slice(-reach * 2);
  const file = otherCode.test(ahead.slice(-reach)) ? undefined : fitting(bare(code), makers);
  if (!file) return null;
  const spoken = speaksOfCode.test(ahead) || (reads.test(ahead) && insideThePiece.test(ahead));
  if (!/[A-Z]/.test(plain) && !spoken) return null;
  return { confidence: spoken ? 0.85 : 0.6, maker: file.maker };
}
