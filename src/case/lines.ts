import type { Decoding } from '../code/types';
import { hasLengthOfCode } from '../stamp';
import type { StampLine } from '../stamp/types';
import { findPlaces } from '../text';

/** Under this score a line is taken for a stamp only when it reads under a code system. */
const likelyStamp = 0.3;
/** From this score on a line that cannot be read counts as a stamp that is shown, too unclear: the gap to ask about. */
const shownStamp = 0.4;
/** A line that is read and fits no system is kept as a code only from this score on. */
const surelyStamp = 0.7;
const shareOfDigits = 0.4;

const plain = (text: string) =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toUpperCase()
    .replace(/[^A-Z0-9]/g, '');

/**
 * Whether a stamped line may be a date code at all: not the maker's name, not wording such as "MADE IN BELGIUM",
 * not a line of words. `names` are the maker names and aliases on file.
 */
export function mayBeCode(line: StampLine, names: readonly string[]): boolean {
  const text = plain(line.free.text);
  if (findPlaces(line.free.text).length > 0) return false;
  if (/^(MADE|MODEL|SIZE|GENUINE|REAL|FINE)/.test(text)) return false;
  return text.length < 4 || !names.some((name) => sameName(text, plain(name)));
}

/** Whether a stamped text is a maker's name or a longer part of it, one character in five misread. */
function sameName(text: string, name: string): boolean {
  if (name.length < 4) return text === name;
  if (text.includes(name) || (text.length >= 5 && name.includes(text))) return true;
  return changesBetween(text, name) <= Math.floor(name.length / 5);
}

/** Whether a line is longer than codes are, and no system says that its own are so long. */
export const isTooLong = (line: StampLine, { readings }: Decoding): boolean =>
  readings.length === 0 && !hasLengthOfCode(plain(line.free.text));

/**
 * Whether a decoded line counts as a code that is shown: it reads under a system, or it has the look of a stamp.
 * A line with neither is left out, so that other words on the piece raise no doubt.
 */
export function countsAsCode(line: StampLine, decoding: Decoding): boolean {
  if (decoding.readings.length > 0) return true;
  if (line.stampScore < likelyStamp) return false;
  const text = plain(line.free.text);
  const digits = text.replace(/[^0-9]/g, '').length;
  if (!decoding.accepted) return line.stampScore >= shownStamp && (text === '' || digits > 0);
  if (decoding.misfits.length > 0) return true;
  return line.stampScore >= surelyStamp && digits >= 2 && digits / text.length >= shareOfDigits;
}

/** Fewest characters to change, add or leave out between two texts (Levenshtein). */
export function changesBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const swap = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
