import type { Listing } from '../listing/types';
import {
  accessoryWords,
  aheadInSentence,
  anyLanguage,
  anyWithGaps,
  clauseAround,
  foldedSet,
  foldWords,
  jointWords,
  phrasePattern,
  phraseTest,
  rightAhead,
  rightBehind,
  sourceRange,
  textPattern,
  topics,
  wordsOf,
} from '../text';
import { foldedRange, type Passage, passagesOf, titleOf } from './passage';
import type { Claim } from './types';

/*
 * Listings that sell two pieces at once. Only a title that plainly says so counts ("Carryall 25 and matching wallet"):
 * a pouch, a strap or a dust bag that comes along makes no second piece. Common practice, no source.
 */

/** Several pieces on offer, as the seller calls each; none of them named where only their number is said. */
export interface Lot {
  /** What of the title says so. */
  words: string;
  pieces: string[];
}

/** May be what the piece itself is called, in some of the languages a bag and in others a purse. */
const ambiguous = new Set(['purse', 'cartera']);
/** Bags of their own, and as often what comes with a bag. */
const halfway = ['pouch', 'pochette', 'clutch'];
const smallThings = new Set(wordsOf('small-thing'));
const nouns = wordsOf('bag').filter((word) => !ambiguous.has(word));
const smallNouns = nouns.filter((word) => smallThings.has(word));
const small = foldedSet(smallNouns);

const bag = phrasePattern(nouns.filter((word) => !smallThings.has(word) && !halfway.includes(word)));
const second = phrasePattern([...smallNouns, ...halfway]);
const accessory = phrasePattern(accessoryWords);
const counted = phraseTest(wordsOf('lot'));
const matching = phrasePattern(wordsOf('matching')).source;
const { alongWith, alsoNamed, asOne, behindName, named, oneMore, soldTogether } = jointWords;
const article = `(?:${anyLanguage(oneMore)})\\s`;
const japaneseAnd = alsoNamed[6];
const joint = (row: string) => `(?:\\s(?:&|\\+|${row})\\s(?:${article})?|${japaneseAnd})`;
/** Right before the second noun: "and ", "and a "; "と" in Japanese. */
const plainly = new RegExp(`${joint(anyWithGaps(alsoNamed))}$`);
const asMatch = textPattern(`${joint(`${anyWithGaps(alsoNamed)}|${anyWithGaps(alongWith)}`)}(?:${matching})の?\\s?$`);
const matchBehind = textPattern(`^\\s?(?:${matching})`);
/** What ends a name of a piece; "wallet pocket" and "belt bag" name something else. */
const ends = textPattern(
  `^(?:\\s?$|\\s?[,.;:()|/!·•–—、]|\\s-\\s|\\s(?:(?:${anyWithGaps(behindName)})(?!\\p{L})|\\d)|${behindName[6]})`,
);
const twoInOne = textPattern(`^\\s?(?:${anyLanguage(asOne)})(?!\\p{L})`);

/** The pieces that a listing's title offers, where it plainly offers two; null where it offers one. */
export function lotOf(listing: Pick<Listing, 'title' | 'description' | 'text' | 'language'>): Lot | null {
  const passages = passagesOf(listing);
  const title = titleOf(passages);
  return (title && lotInTitle(title)) ?? lotInWords(passages);
}

function lotInTitle(title: Passage): Lot | null {
  const bundled = bundleOf(title);
  const named = namedLot(title) ?? (bundled && bundled.pieces.length > 0 ? bundled : null);
  return named ?? countedLot(title) ?? bundled;
}

function namedLot({ folded }: Passage): Lot | null {
  const { text } = folded;
  for (const { index: start, 0: noun } of text.matchAll(second)) {
    const end = start + noun.length;
    const joined = joinOf(rightAhead(text, start), noun, text.slice(end));
    if (joined === null) continue;
    const before = text.slice(0, start - joined.words.length);
    // What matches may be named by its model only; two nouns joined by "and" say it by themselves.
    const first = Array.from(before.matchAll(bag)).at(-1);
    if (before.trim() === '' || (!joined.matches && !first)) continue;
    const name = first
      ? sourceRange(folded, first.index, first.index + first[0].length)
      : sourceRange(folded, 0, before.length);
    return {
      words: sourceRange(folded, before.length, end).words.trim(),
      pieces: [name.words.trim(), sourceRange(folded, start, end).words],
    };
  }
  return null;
}

const bundle = textPattern(
  `(?<![\\p{L}\\p{N}])(?:${anyLanguage(soldTogether)})(?![\\p{L}\\p{N}]|\\s?(?:n[or°º.]{0,2}|#)?\\s?\\d)`,
);
const anyThing = phrasePattern([...wordsOf('bag', 'small-thing'), ...halfway]);

/** "Bundle: Ledger 32 + purse 19": a word for several things sold as one, and what joins two of them. */
function bundleOf({ folded }: Passage): Lot | null {
  const { text } = folded;
  const opens = bundle.exec(text);
  if (!opens) return null;
  const said = { words: sourceRange(folded, opens.index, opens.index + opens[0].length).words };
  const things = Array.from(text.matchAll(anyThing), ({ index, 0: noun }) => ({
    start: index,
    end: index + noun.length,
  }));
  for (const { start, end } of things) {
    const joined = plainly.exec(rightAhead(text, start));
    if (!joined) continue;
    const before = start - joined[0].length;
    const first = things.findLast((one) => one.end <= before);
    const name = sourceRange(folded, first?.start ?? 0, first?.end ?? before).words.replace(said.words, '');
    const bare = name.replace(/^[\s:,–-]+/, '').trim();
    if (bare !== '')
      return {
        words: sourceRange(folded, opens.index, end).words,
        pieces: [bare, sourceRange(folded, start, end).words],
      };
  }
  return { ...said, pieces: [] };
}

/** How the words ahead of a noun join it to what they name, if they do. */
function joinOf(ahead: string, noun: string, behind: string): { words: string; matches: boolean } | null {
  const matched = asMatch.exec(ahead) ?? (matchBehind.test(behind) ? plainly.exec(ahead) : null);
  if (matched) return { words: matched[0], matches: true };
  const joined = small.has(noun) && ends.test(behind) ? plainly.exec(ahead) : null;
  return joined && { words: joined[0], matches: false };
}

function countedLot({ folded }: Passage): Lot | null {
  const found = counted.exec(folded.text);
  if (!found) return null;
  const end = found.index + found[0].length;
  return twoInOne.test(rightBehind(folded.text, end))
    ? null
    : { words: sourceRange(folded, found.index, end).words, pieces: [] };
}

const offered = textPattern(
  `(?:${phrasePattern(wordsOf('offering')).source})\\s(?:(?:${phrasePattern(wordsOf('possessive', 'this-one')).source})\\s)?$`,
);
const offeredBehind = textPattern(`^(?:を|の)(?:${phrasePattern([...topics.offering.ja, '出品', '販売']).source})`);
/** "I am selling two bags, one Ondrasse and one unbranded": said in the seller's own words, if the title does not. */
function lotInWords(passages: readonly Passage[]): Lot | null {
  for (const from of passages.filter(({ field }) => field !== 'title')) {
    const { text } = from.folded;
    for (const { index, 0: words } of text.matchAll(everyCount)) {
      const end = index + words.length;
      if (twoInOne.test(rightBehind(text, end))) continue;
      if (offered.test(rightAhead(text, index)) || offeredBehind.test(rightBehind(text, end)))
        return { words: sourceRange(from.folded, index, end).words, pieces: [] };
    }
  }
  return null;
}
const everyCount = phrasePattern(wordsOf('lot'));

/** Of which of a lot's pieces a claim is said: of one, of all, or of none that could be told. */
export type SaidOf = { piece: string } | 'all' | 'not-placed';

/** Kinds that are said of the seller, the maker or the sale, whatever number of pieces is sold. */
const ofTheSale = new Set<Claim['kind']>([
  'maker',
  'payment-outside',
  'returns',
  'hurry',
  'hedged-authorship',
  'grade-of-copy',
  'not-this-piece',
  'in-stock',
  'not-vouched',
  'assurance',
  'sale-channel',
]);

/** Of which piece each claim is said, by its id. Whatever is in doubt is said of none: it judges nothing. */
export function placeClaims(
  listing: Pick<Listing, 'title' | 'description' | 'text' | 'language'>,
  { pieces }: Lot,
  claims: readonly Claim[],
): Map<string, SaidOf> {
  const passages = passagesOf(listing);
  const place = ({ kind, at }: Claim): SaidOf => {
    if (ofTheSale.has(kind)) return 'all';
    const from = passages.find(({ field }) => field === at.field);
    const [first, other] = pieces;
    if (!from || first === undefined || other === undefined) return 'not-placed';
    const range = foldedRange(from, at);
    if (from.field !== 'title') return inText(from.folded.text, range, first, other);
    // A title names the first piece's model before the second piece; a year in it may be of both.
    const isBefore = range[0] < from.folded.text.lastIndexOf(foldWords(other).text);
    return kind === 'model' ? { piece: isBefore ? first : other } : 'not-placed';
  };
  return new Map(claims.map((claim) => [claim.id, place(claim)]));
}

interface Named {
  piece: string;
  at: number;
  end: number;
}

/** By the last noun before the words in their sentence, or the only one behind them in their clause. */
function inText(text: string, [start, end]: [number, number], first: string, other: string): SaidOf {
  const named = (part: string): Named[] => {
    const plain = part.replace(accessory, (found) => ' '.repeat(found.length));
    const of = (piece: string, pattern: RegExp) =>
      Array.from(plain.matchAll(pattern), ({ index, 0: noun }) => ({ piece, at: index, end: index + noun.length }));
    const others = of(other, phrasePattern([other]));
    const firsts = [...of(first, bag), ...of(first, phrasePattern([first]))];
    // "Clutch bag": the noun right behind the other's is its own.
    const isOther = ({ at }: Named) => others.some((one) => one.at <= at && /^[\s-]?$/.test(plain.slice(one.end, at)));
    return [...firsts.filter((one) => !isOther(one)), ...others].sort((a, b) => a.at - b.at);
  };
  const ahead = aheadInSentence(text, start);
  const before = named(ahead);
  const last = before.at(-1);
  if (last) {
    const one = before.findLast(({ piece }) => piece !== last.piece);
    return one && isJoined(ahead.slice(one.end, last.at)) ? 'all' : { piece: last.piece };
  }
  const behind = new Set(named(text.slice(start, clauseAround(text, start, end).end)).map(({ piece }) => piece));
  const [only] = behind;
  return behind.size === 1 && only !== undefined ? { piece: only } : 'not-placed';
}

/** "Bag and wallet are": both are spoken of; "the bag is of 1994 and the wallet" goes on to the other. */
const bothNamed = textPattern(
  `^\\s?(?:,\\s)?(?:&|\\+|${anyLanguage(alsoNamed)})\\s?(?:(?:${anyLanguage(named)})\\s)?$`,
);
const isJoined = (between: string) => bothNamed.test(between);
