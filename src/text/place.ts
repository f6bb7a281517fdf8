import { capitalPlaces, countryOfTown, foldWord, type LexiconEntry, lexicon, splitWords } from '../place';
import { anyLanguage, anyWithGaps } from './each-language';
import { inCountry, madeBeforeAdjective, madeBehind, madeBehindName, madeIn, madeThen } from './place-words';

/** A country named in text. `start` and `end` are character positions (half-open) of `words`. */
export interface PlaceFound {
  place: string;
  /**
   * 'made-in' says that the piece was made there ("made in France", "Italian-made", "フランス製"); 'name' only names
   * the country; 'adjective' ("Italian calf") says nothing of where the piece was made.
   */
  form: 'made-in' | 'name' | 'adjective';
  words: string;
  start: number;
  end: number;
}

const madeInBefore = new RegExp(`(?:${anyLanguage(madeIn)})\\s{0,4}(?::\\s{0,4})?["“'’]?$`, 'iu');
const madeAfterAdjective = new RegExp(`^[\\s-]{1,2}(?:${anyWithGaps(madeBehind)})\\b`, 'iu');
const madeBefore = new RegExp(`(?:${anyLanguage(madeBeforeAdjective)})\\s+$`, 'iu');
const madeAfterName = new RegExp(`^(?:${madeBehind[6]})`, 'u');
const longestLead = 48;
/** "Hergestellt 2013 in", "gemaakt in 2014 in". */
const yearBetween = /(?:\s\p{L}{2,3})?\s(?:1[89]|20)\d\d(?=\s\p{L}{1,4}(?:\s\p{L}{1,3})?\s?$)/iu;

/**
 * Country names in text, in the order of the text, longest name first where several begin alike. Names that are also
 * ordinary words or materials (jersey, morocco, china) count only after "made in".
 */
export function findPlaces(text: string): PlaceFound[] {
  const found = [...findSpaced(text), ...findUnspaced(text)];
  return found.sort((a, b) => a.start - b.start || a.end - b.end);
}

const foldedName = (words: string): string =>
  splitWords(words)
    .map(({ word }) => foldWord(word))
    .join(' ');
/** Whether words by themselves are what a country, a region or a town is called. */
export const isPlaceName = (words: string): boolean =>
  lexicon().entries.has(foldedName(words)) || countryOfTown(foldedName(words)) !== null;

/** "Made in Tuscany", "fabriqué en Vendée": regions and towns of up to two words where a piece is said to be made, with their country. */
export function findTownsOfMaking(text: string): PlaceFound[] {
  const tokens = splitWords(text);
  const found: PlaceFound[] = [];
  for (const [first, { start, end }] of tokens.entries()) {
    const next = tokens[first + 1];
    const two =
      next && joinsUp(text, [tokens[first]!, next]) ? countryOfTown(foldedName(text.slice(start, next.end))) : null;
    const place = two ?? countryOfTown(foldedName(text.slice(start, end)));
    const closes = two ? next!.end : end;
    if (place && isMadeIn(text, start, closes)) found.push({ place, form: 'made-in', ...cut(text, start, closes) });
  }
  return found;
}

function findSpaced(text: string): PlaceFound[] {
  const { entries, longest } = lexicon();
  const tokens = splitWords(text);
  const folded = tokens.map(({ word }) => foldWord(word));
  const found: PlaceFound[] = [];
  for (let first = 0; first < tokens.length; first += 1) {
    const capital = capitalPlaces.get(tokens[first]!.word.replaceAll('.', ''));
    let taken = 0;
    for (let length = Math.min(longest, tokens.length - first); length > 0 && taken === 0; length -= 1) {
      const entry = entries.get(folded.slice(first, first + length).join(' '));
      if (!entry || !joinsUp(text, tokens.slice(first, first + length))) continue;
      taken = length;
      const place = placeOf(text, tokens[first]!.start, tokens[first + length - 1]!.end, entry);
      if (place) found.push(place);
    }
    if (taken === 0 && capital) {
      const { start, end } = tokens[first]!;
      found.push({ place: capital, form: isMadeIn(text, start, end) ? 'made-in' : 'name', ...cut(text, start, end) });
    }
    first += Math.max(0, taken - 1);
  }
  return found;
}

/** The words of one name are parted by spaces, hyphens, apostrophes or commas; a stop only follows an abbreviation. */
const joinsUp = (text: string, tokens: { start: number; end: number }[]) =>
  tokens.every((token, at) => {
    if (at === 0) return true;
    const before = tokens[at - 1]!;
    const gap = text.slice(before.end, token.start);
    return /^[ \u00a0'’,&-]{1,3}$/u.test(gap) || (before.end - before.start <= 2 && /^\. ?$/u.test(gap));
  });

const madeThenBefore = new RegExp(
  `(?:^|[^\\p{L}])(?:${anyLanguage(madeThen)})[\\s:]{1,3}(?:\\p{L}{2,5}\\.?\\s)?(?:1[89]|20)\\d\\d年?\\s?[(（]$`,
  'iu',
);
/** "Made 2009 (Italy)": a country in brackets behind the year of making. */
const isBehindYear = (text: string, start: number, end: number): boolean =>
  /[)）]/.test(text.charAt(end)) && madeThenBefore.test(text.slice(Math.max(0, start - longestLead), start));

const cut = (text: string, start: number, end: number) => ({ words: text.slice(start, end), start, end });

const inBefore = new RegExp(`(?:^|[^\\p{L}])(?:${anyWithGaps(inCountry)})\\s$`, 'iu');
const madeRightBehind = new RegExp(
  `^(?: (?:um |ca\\. )?(?:1[89]|20)\\d\\d)?(?: von Hand| met de hand| a mano)? (?:${anyWithGaps(madeBehindName)})(?!\\p{L})`,
  'iu',
);
/** "In Spanien hergestellt": the verb closes the clause. */
const isBetweenInAndMade = (text: string, start: number, end: number): boolean =>
  inBefore.test(text.slice(Math.max(0, start - 10), start)) && madeRightBehind.test(text.slice(end, end + 40));

const isMadeIn = (text: string, start: number, end: number): boolean =>
  isBehindYear(text, start, end) ||
  isBetweenInAndMade(text, start, end) ||
  madeInBefore.test(
    text
      .slice(Math.max(0, start - longestLead), start)
      .replace(/[ld]['’]$/iu, '')
      .replace(yearBetween, ''),
  );

function placeOf(text: string, start: number, end: number, entry: LexiconEntry): PlaceFound | null {
  if (entry.place === null) return null;
  const words = text.slice(start, end);
  if (entry.form === 'adjective') {
    const after = text.slice(end, end + 24);
    const before = text.slice(Math.max(0, start - 24), start);
    const made = madeAfterAdjective.test(after) || madeBefore.test(before);
    return { place: entry.place, form: made ? 'made-in' : 'adjective', words, start, end };
  }
  const madeIn = isMadeIn(text, start, end);
  if (entry.onlyAfterMadeIn && !madeIn) return null;
  if (entry.exact !== null && !namesCountry(text, words, end, entry.exact)) return null;
  return { place: entry.place, form: madeIn ? 'made-in' : 'name', words, start, end };
}

/**
 * "Made in morocco leather" is about the leather. A name that is also a material has to stand with its own accents,
 * or in capitals, or end its clause, and no material word may follow.
 */
function namesCountry(text: string, words: string, end: number, exact: string): boolean {
  if (/^\s+(?:leather|goatskin|fabric|cotton|porcelain|plate|calf|skin)/iu.test(text.slice(end, end + 14)))
    return false;
  const hasAccent = exact.normalize('NFD') !== exact;
  if (hasAccent || exact === 'Suede') return words.normalize('NFC').toLowerCase() === 'suède';
  return true;
}

function findUnspaced(text: string): PlaceFound[] {
  if (!/[\p{Script=Han}\p{Script=Katakana}]/u.test(text)) return [];
  const found: PlaceFound[] = [];
  const taken = new Array<boolean>(text.length).fill(false);
  for (const { name, place } of lexicon().unspaced) {
    for (let start = text.indexOf(name); start >= 0; start = text.indexOf(name, start + 1)) {
      const end = start + name.length;
      if (taken.slice(start, end).includes(true)) continue;
      const made = madeAfterName.test(text.slice(end, end + 3)) || isMadeIn(text, start, end);
      // One character is too little to be a country's name by itself ("英" is also the first half of other words).
      if (name.length < 2 && !made) continue;
      taken.fill(true, start, end);
      found.push({ place, form: made ? 'made-in' : 'name', words: name, start, end });
    }
  }
  return found;
}
