import { phrasePattern, textPattern, wordsOf } from '../text';
import { namesBag } from './goods';

const joins = phrasePattern(wordsOf('and', 'with')).source;
/** "Leather and faux leather", "Echtleder mit Besatz aus Kunstleder", "本革×合皮": a list, or the one with some of the other. */
const together = textPattern(
  `^\\s?(?:[,/&+×x・、]\\s?(?:(?:${joins})\\s)?|(?:${joins})(?:\\s\\p{L}{1,14}){0,3}\\s?|(?:と|や|及び|\\+))$`,
);
const longest = 64;

interface Found {
  value: string;
  foldedStart: number;
  foldedEnd: number;
}

/**
 * Whether an imitation is named in one breath with leather: the piece is of both, each on parts of its own. What is said
 * of the whole bag in between is another statement.
 */
export function isBesideLeather(text: string, hit: Found, all: readonly Found[]): boolean {
  return all.some((other) => {
    if (other.value === hit.value) return false;
    const [first, last] = other.foldedStart < hit.foldedStart ? [other, hit] : [hit, other];
    const between = text.slice(first.foldedEnd, last.foldedStart);
    return between.length <= longest && together.test(between) && !namesBag(between);
  });
}
