import type { Listing } from '../listing/types';

/** Words by language; `ja` and other scripts without spaces are found inside words. */
export type WordTable = Readonly<Record<string, readonly string[]>>;

/** Title, description and visible text of a listing; the description is not repeated. */
export function listingText(listing: Pick<Listing, 'title' | 'description' | 'text'>): string {
  const description = listing.description[0]?.value ?? '';
  const held = listing.text.includes(description);
  const parts = [listing.title[0]?.value ?? '', held ? '' : description, listing.text];
  return parts.filter((part) => part !== '').join('\n');
}

const fold = (text: string) => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().replace(/[’ʼ]/g, "'");
const isLetter = (character: string | undefined) => character !== undefined && /[\p{L}\p{N}]/u.test(character);
const spaceless = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/u;

/**
 * Every place in `text` where words of the table stand, as the text writes them, in its own order. Upper and lower
 * case and accents are the same; a match starts and ends with a whole word. Linear in text times table.
 */
export const allWords = (text: string, table: WordTable): string[] =>
  foundWords(text, table).map(({ start, end }) => text.slice(start, end));

function foundWords(text: string, table: WordTable): { start: number; end: number }[] {
  const { folded, places } = foldWithPlaces(text);
  const hits: { start: number; end: number }[] = [];
  for (const words of new Set(Object.values(table).flat())) {
    const sought = fold(words);
    for (let at = folded.indexOf(sought); at >= 0; at = folded.indexOf(sought, at + 1)) {
      const whole = !isLetter(folded[at - 1]) && !isLetter(folded[at + sought.length]);
      if (!whole && !spaceless.test(words)) continue;
      hits.push({ start: places[at] ?? 0, end: (places[at + sought.length - 1] ?? 0) + 1 });
    }
  }
  hits.sort((a, b) => a.start - b.start || b.end - a.end);
  let reached = -1;
  return hits.filter(({ end }) => {
    const inside = end <= reached;
    reached = Math.max(reached, end);
    return !inside;
  });
}

const deniedBefore =
  /(?:^|[\s,.;:!?(])(?:no|not|non|never|kein|keine|keinen|keiner|nicht|geen|niet|pas|sin|ni|nessuna|nessun|aucune|aucun|without|ohne|sans|senza|zonder)(?:\s+\p{L}+){0,2}\s*$/iu;
const deniedAfter = /^\s*(?:では|じゃ)(?:ありません|ない|なく)/u;

/** `allWords` without those that the text denies in the same breath: "no replica", "レプリカではありません". */
export const statedWords = (text: string, table: WordTable): string[] =>
  statedPlaces(text, table).map(({ start, end }) => text.slice(start, end));

/** Where `statedWords` stand. */
export const statedPlaces = (text: string, table: WordTable): { start: number; end: number }[] =>
  foundWords(text, table).filter(
    ({ start, end }) =>
      !deniedBefore.test(text.slice(Math.max(0, start - 40), start)) && !deniedAfter.test(text.slice(end, end + 12)),
  );

export const firstWords = (text: string, table: WordTable): string | null => allWords(text, table)[0] ?? null;

/** Folded text, and for each of its characters the place in the text that it comes from. */
function foldWithPlaces(text: string): { folded: string; places: number[] } {
  let folded = '';
  const places: number[] = [];
  for (let index = 0; index < text.length; index++) {
    for (const character of foldCharacter(text[index] ?? '')) {
      folded += character;
      places.push(index);
    }
  }
  return { folded, places };
}

/** Plain letters, by far the most, need no tables. */
function foldCharacter(character: string): string {
  if (/\s/.test(character)) return ' ';
  return character < '\u0080' ? character.toLowerCase() : fold(character);
}
