import type { Listing } from '../listing/types';
import {
  anyLanguage,
  type Folded,
  foldWords,
  jointWords,
  phrasePattern,
  sellersAnswers,
  sellersOwn,
  textPattern,
  withoutLegends,
  wordsOf,
  writtenOut,
} from '../text';
import { asLabelled } from './asked';
import type { Claim } from './types';

/** One text of a listing in which the seller speaks. Positions of claims refer to `text`. */
export interface Passage {
  field: 'title' | 'description' | 'text' | 'row' | 'reply';
  text: string;
  folded: Folded;
  language: string | null;
  /** The listing's title, folded: what it names is the piece, whatever else is called so. */
  title: string;
}

const most = 200_000;
const longestTitle = 300;

type Titled = Pick<Listing, 'title' | 'description' | 'text' | 'language'>;

/** The listing's title, folded, as far as it is looked at. */
export const namedIn = ({ title }: Titled): string => foldWords((title[0]?.value ?? '').slice(0, longestTitle)).text;

/** The title and the description; the visible text stands in for a description that was not found. */
export function passagesOf(listing: Titled & Partial<Pick<Listing, 'seller'>>): Passage[] {
  const texts: [Passage['field'], string | undefined][] = [
    ['title', listing.title[0]?.value],
    ['description', withoutLegends(listing.description[0]?.value.slice(0, most) ?? '')],
  ];
  if (!listing.description[0]?.value.trim()) texts.push(['text', sellersOwn(withoutNames(listing.text, listing))]);
  texts.push(['text', sellersAnswers(listing.text)]);
  const named = namedIn(listing);
  return texts.flatMap(([field, text]) => (text?.trim() ? [passage(field, text, listing.language, named)] : []));
}

/** The passage that is the title, where there is one: no listing has two. */
export const titleOf = (passages: readonly Passage[]): Passage | undefined =>
  passages.find(({ field }) => field === 'title');

const blankOf = (found: string) => '\n'.repeat(found.length);

/** A page's text without what the seller is called, at the same places: "vintage_lab" says nothing of the piece. */
const withoutNames = (text: string, { seller }: Partial<Pick<Listing, 'seller'>>): string =>
  (seller?.name ?? [])
    .filter(({ value }) => value.trim().length > 3)
    .reduce((rest, { value }) => rest.replaceAll(value, blankOf), text);

/** A line of a description that is so short may stand elsewhere for itself. */
const shortLine = 12;

/** A text without some words, at the same places; where the page parts their lines otherwise, line by line. */
function blanked(text: string, words: string | undefined): string {
  if (!words?.trim()) return text;
  if (text.includes(words)) return text.replace(words, blankOf);
  const lines = words.split('\n').filter((line) => line.trim().length >= shortLine);
  return lines.reduce((rest, line) => rest.replace(line, blankOf), text);
}

/** "Superb, mine is of 2003", below an offer: who compares has another piece. */
const owns = textPattern(
  `(?<!\\p{L})(?:${anyLanguage(jointWords.ownOne)})(?:\\s?[,.]|\\s(?:${phrasePattern(wordsOf('is', 'dates-from')).source}))`,
);
/** No comment of a buyer is longer. */
const longestComment = 400;
const withoutOwners = (text: string): string =>
  text
    .split('\n')
    .map((line) => (line.length <= longestComment && owns.test(foldWords(line).text) ? ' '.repeat(line.length) : line))
    .join('\n');

/**
 * What of the visible text stands neither in the title nor in the description, at its own places: what was read there
 * is blank here, and so are the seller's names. Null where the visible text is read in the description's place, or holds
 * nothing else.
 */
export function restOf(listing: Titled & Pick<Listing, 'seller'>): Passage | null {
  const { title, description, text, language } = listing;
  if (!description[0]?.value.trim()) return null;
  const others = blanked(blanked(text, description[0]?.value), title[0]?.value);
  const rest = withoutOwners(sellersOwn(withoutNames(others, listing)));
  return rest.trim() ? passage('text', rest, language, namedIn(listing)) : null;
}

export function passage(field: Passage['field'], text: string, language: string | null, title: string): Passage {
  const kept = text.slice(0, most);
  const folded = writtenOut({ ...foldWords(asLabelled(kept)), source: kept }, language);
  return { field, text: kept, folded, language, title };
}

/** A claim without its id, which is given when all are gathered. */
export type ClaimDraft = { [K in Claim['kind']]: Omit<Extract<Claim, { kind: K }>, 'id'> }[Claim['kind']];

/** Words, place and confidence of a claim in a passage. A row of the page's table is the page's own data. */
export const saidIn = (
  { field }: Passage,
  { start, end, words }: { start: number; end: number; words: string },
  confidence: number,
) => (field === 'row' ? saidInData(words, confidence) : { words, at: { field, start, end }, confidence });

/** A claim that stands in the page's own data and not in running text. */
export const saidInData = (words: string, confidence: number) => ({
  words,
  at: { field: 'data' as const, start: 0, end: words.length },
  confidence,
});

/**
 * Whether words are a term of the page's data ("https://schema.org/UsedCondition", "MerchantReturnNotPermitted") and so
 * nobody's own: they are never quoted as such.
 */
export const isDataTerm = (words: string): boolean =>
  /^(?:https?:\/\/(?:www\.)?schema\.org\/|schema:)\S+$|^\w*[a-z]Condition$|^MerchantReturn\w+$/.test(words.trim());

/** A source range as a range of the folded text. */
export function foldedRange(from: Passage, said: { start: number; end: number }): [number, number] {
  const { at } = from.folded;
  if (!at) return [said.start, said.end];
  let [low, high] = [0, at.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((at[middle] as number) < said.start) low = middle + 1;
    else high = middle;
  }
  let end = low;
  while (end < at.length && (at[end] as number) < said.end) end += 1;
  return [low, end];
}
