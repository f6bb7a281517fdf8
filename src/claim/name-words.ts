import type { Listing } from '../listing/types';
import {
  anyLanguage,
  anyOf,
  anyWithGaps,
  findPlaces,
  foldedSet,
  foldWords,
  isPlaceName,
  japanese,
  japaneseHouses,
  jointWords,
  partWords,
  phrasePattern,
  phraseTest,
  plainWords,
  rightAhead,
  rightBehind,
  sentenceAround,
  sourceRange,
  textPattern,
  wordsOf,
} from '../text';
import { type Passage, passagesOf, titleOf } from './passage';

/** What a bag is called, in one word: "Velmont satchel" names a maker before it. */
const nouns = foldedSet(wordsOf('bag'));

interface Word {
  /** As the listing writes it. */
  words: string;
  /** Where it stands in the source. */
  start: number;
  end: number;
  /** The folded word right behind it. */
  next: string;
  opensSentence: boolean;
}

/** "Handmade in Somerset": a place, known or not. */
const placeAhead = textPattern(`(?<![\\p{L}])(?:${anyLanguage(jointWords.inPlace)})\\s$`);

/** Words of a passage that no list knows: they may be names. Numbers and words of one or two letters are none. */
function unknownWords({ folded, text: source }: Passage, others: readonly string[]): Word[] {
  const blank = (found: string) => ' '.repeat(found.length);
  const text = folded.text.slice(0, longest).replace(plainWords(), blank).replace(phrasePattern(others), blank);
  const places = findPlaces(source.slice(0, longest));
  return [...text.matchAll(/(?<![\p{L}\p{N}])[\p{L}'’&.-]{3,}(?![\p{L}\p{N}])/gu)].flatMap((match): Word[] => {
    const behind = match.index + match[0].length;
    const said = sourceRange(folded, match.index, behind);
    if (!/\p{L}{3}/u.test(match[0]) || places.some(({ start, end }) => start < said.end && said.start < end)) return [];
    if (isTag(source, said)) return [];
    const ahead = rightAhead(folded.text, match.index);
    if (placeAhead.test(ahead)) return [];
    const next = /^[\s-]{0,3}(\p{L}{1,20})/u.exec(rightBehind(folded.text, behind))?.[1] ?? '';
    const opensSentence = match.index < 4 || /[.!?:;\n•·-][\s"'(]{0,4}$/u.test(ahead);
    return [{ ...said, next, opensSentence }];
  });
}
/** "[VDS] Busta", "(WTS)": a few capitals in brackets say what is done with the piece. Common practice, no source. */
const tag = /^[[(【]\p{Lu}{2,4}[\])】]$/u;
const isTag = (source: string, { start, end }: { start: number; end: number }): boolean =>
  start > 0 && tag.test(source.slice(start - 1, end + 1));
/** A name stands early; the rest of a novel is not searched for one. */
const longest = 3_000;

/** Words that open a house's name and are none by themselves: "Maison Aubrac", "Ter Linden". Common practice, no source. */
const opens = textPattern(`^(?:${anyOf(wordsOf('opens-house-name'))})$`);
/** "Brandt & Söhne", "Velmont and Rook": joined to one name where a capital stands behind, and no plain word. */
const joined = textPattern(
  `^\\s?(?:[&+・·]|(?<=\\s)(?:and|${anyLanguage(jointWords.alsoNamed)})(?=\\s))\\s?\\p{Lu}[\\p{L}'’.-]{1,24}`,
);
const joinedKatakana = /^(?:[・·=＝]?[\p{Script=Katakana}ー]{1,16})+/u;
const nextName = /^\s\p{Lu}[\p{L}'’-]{1,24}/u;
/** A part of a name in katakana has no end of its own. */
const longestPart = 32;
/** So long are a joint and the two words around it. */
const longestHeld = 64;
/** A house's name has at most so many words. */
const mostJoined = 3;

/** "Tas De Rijk": a particle with a capital, not the first word. */
const particleAhead =
  /(?<=[\p{L}\p{N}],?\s)(?:De|Den|Di|Da|Del|Della|Du|La|Le|Les|Los|El|Ter|Ten|(?:Van|Von)(?: (?:der|den|de|het|'t))?|St\.?)\s$|(?<=^|\s)St\.?\s$/u;

/** "Van der Velde", "Von dem Bruch". */
const ofPlace = "(?:Van|Von)(?: (?:der|den|de|dem|het|'t))?";
/** "Van Oldenhove tas": at a title's head an article would be a plain one ("De mooiste tas"), these are names' own. */
const particleFirst = new RegExp(`^\\s*(?:${ofPlace}|De (?:la|las|los)|Ter|Ten|Di|Del|Della|Dello|Dalla)\\s$`, 'u');

/** "Lederhuis Van Oeveren", "Merel De Wit": a particle with a capital joins as well. */
const particleBehind = new RegExp(
  `^\\s(?:${ofPlace}|De(?: (?:la|las|los))?|Ter|Ten|Di|Del|Della|Du)\\s\\p{Lu}[\\p{L}'’-]{1,24}`,
  'u',
);
/** "Marlowe Trench & Co": what stands before the joint may be a plain word. */
const longFirm = /^\s(\p{Lu}[\p{L}'’-]{1,24})\s?[&+]\s?\p{Lu}[\p{L}'’.-]{1,24}/u;

/** How far behind its first word a name goes that a particle or a firm's joint holds together; 0 where neither does. */
function heldTogether(behind: string): number {
  const firm = longFirm.exec(behind);
  const names = firm && !namesPiece.test(foldWords(firm[1] as string).text) ? firm : particleBehind.exec(behind);
  return names && isUnknown(lastWord(names[0])) ? names[0].length : 0;
}
const lastWord = (name: string): string => name.split(/[\s&+・·]/u).at(-1) ?? '';
/** Whether no word of a name is a plain one. */
const isUnknown = (name: string): boolean => foldWords(name).text.search(plainWords()) < 0;

/** A name of several words, as far as its form tells that they belong together. */
function wholeName({ words, start: from, end }: Word, source: string): string {
  const ahead = rightAhead(source, from);
  const start =
    from - (particleFirst.exec(ahead) ?? particleAhead.exec(ahead) ?? joinedAhead.exec(ahead) ?? [''])[0].length;
  let to = end;
  const behind = () => source.slice(to, to + longestPart);
  const held = heldTogether(source.slice(to, to + longestHeld));
  if (/^[\p{Script=Katakana}ー]+$/u.test(words)) to += joinedKatakana.exec(behind())?.[0].length ?? 0;
  else if (held > 0) to += held;
  else
    for (let count = 1; count < mostJoined; count += 1) {
      const last = foldWords(source.slice(start, to).split(/\s/).at(-1) as string).text;
      const more = (opens.test(last) ? nextName : joined).exec(behind());
      // The joint itself is a plain word.
      if (!more || !isUnknown(lastWord(more[0]))) break;
      to += more[0].length;
    }
  return source.slice(start, to).replace(endsSentence, '');
}
/** "Marrow & Pike. A satchel": the full stop is the sentence's, where no short form ends with it. */
const endsSentence = /(?<=\p{L}{4})\.$/u;

/** "Brick & Vane" where the first word is a plain one too. */
const joinedAhead = /(?<=^|\s)\p{Lu}[\p{L}'’-]{1,24}\s?&\s?$/u;
/** Words of a title that may be a maker's name that no file knows; null when every word is a plain one. */
export function unknownInTitle(title: Passage, others: readonly string[] = []): string | null {
  const unknown = unknownWords(title, others);
  const opening = unknown.find(
    ({ words, end }) => opens.test(foldWords(words).text) && nextName.test(rightBehind(title.text, end)),
  );
  const first = opening ?? unknown.find(({ words }) => /^\p{Lu}/u.test(words)) ?? unknown[0];
  return first ? wholeName(first, title.text) : null;
}

/** Up to three words with capitals behind one of these, which may open a sentence. */
const capitalsBehind = (ahead: string): RegExp => {
  const either = ahead.replace(/(?<=^|\|)\p{L}/gu, (letter) => `[${letter.toUpperCase()}${letter}]`);
  return textPattern(
    `(?<![\\p{L}])(?:${either}):?\\s(\\p{Lu}[\\p{L}'’&.-]{1,24}(?:\\s(?:[&+]\\s)?\\p{Lu}[\\p{L}'’&.-]{1,24}){0,2})`,
  );
};
/** "Handbag by Holloway Fenn", "der Marke Silvretto". Common practice, no source. */
const brandAhead = capitalsBehind(anyLanguage(jointWords.brandWord));
const makerAhead = [capitalsBehind(anyLanguage(jointWords.byWhom)), brandAhead];

/** "Fa. Wiesenhag", "ditta Ombrosi", "marca Ocotlan": words for a firm or its name, ahead of it. Common practice, no source. */
const firmAhead = capitalsBehind(anyLanguage(jointWords.firmWord));
const opensHouse = textPattern(`^(?:${anyOf(wordsOf('opens-house-name'))})\\s\\p{Lu}`);
/** "Halvard Finch", "Hollinger & Sohn": two words, or two joined, that no list knows. */
const twoWords = /^\p{Lu}[\p{L}'’.-]+(?:\s?[&+]\s?|\s)\p{Lu}[\p{L}'’.-]+/u;

const madeByAhead = capitalsBehind(anyWithGaps(jointWords.wasMadeBy));
const partNamed = phraseTest(Object.entries(partWords).flatMap(([part, words]) => (part === 'body' ? [] : words)));
/** "Made by Harcombe of Walsall": in a sentence that names no part, which somebody else may have made. */
function makerInSentence(from: Passage): NamedMaker | null {
  const found = madeByAhead.exec(from.text);
  const name = found && namedAsMaker(from, [madeByAhead]);
  if (!found || name === null || besides.test(foldWords(name).text)) return null;
  const sentence = sentenceAround(from.text, found.index, found.index);
  return partNamed.test(foldWords(from.text.slice(sentence.start, found.index)).text) ? null : rangeOf(from.text, name);
}
/** A cobbler, an aunt, a hand: no house. */
const besides = phraseTest(wordsOf('people', 'shop', 'family', 'others-kin'));

export interface NamedMaker {
  name: string;
  start: number;
  end: number;
}

const rangeOf = (text: string, name: string): NamedMaker | null => {
  const start = text.indexOf(name);
  return start < 0 ? null : { name, start, end: start + name.length };
};

/**
 * Whom the seller names as the maker beyond doubt, whether or not a file knows the name: behind a word for a firm or a
 * brand, behind "by" in a title, or as two words of a title that no list knows, right behind what the piece is.
 * `unknown` is what `unknownInTitle` gives.
 */
export function makerNamed(from: Passage, unknown: string | null): NamedMaker | null {
  const isTitle = from.field === 'title';
  const named = namedAsMaker(from, isTitle ? makerAhead : [brandAhead]);
  if (named !== null) return rangeOf(from.text, named);
  const house = isTitle ? houseInTitle(from) : null;
  if (house !== null) return rangeOf(from.text, house);
  const firm = namedAsMaker(from, [firmAhead]);
  const ofFirm = firm === null ? null : rangeOf(from.text, firm);
  if (ofFirm && namesPiece.test(foldWords(from.text.slice(0, ofFirm.start)).text)) return ofFirm;
  if (isTitle) return unknown === null ? null : houseOrTwoWords(from, unknown);
  return makerInSentence(from);
}

/** A title's unknown words where they have the form of a house's name, or are two, and stand behind what the piece is. */
function houseOrTwoWords(from: Passage, unknown: string): NamedMaker | null {
  const found = rangeOf(from.text, unknown);
  if (!found) return null;
  const whole = twoWords.exec(rightBehind(from.text, found.start))?.[0] ?? '';
  const name = whole.length > found.name.length && isAllUnknown(whole) ? whole : found.name;
  const isHouse = opensHouse.test(houseForm(name));
  if (!isHouse && besideBag(from.text, found)) return found;
  if (!isHouse && !(twoWords.test(name) && isAllUnknown(name))) return null;
  const ahead = foldWords(from.text.slice(0, found.start)).text;
  // "Velmont Roost bag": two words that open a title may be a maker and a model.
  const opensAsName = found.start === 0 && (isHouse || joinedName.test(name));
  return opensAsName || namesPiece.test(ahead) ? { ...found, name, end: found.start + name.length } : null;
}
/** "Borsa Montaldino", "Umhängetasche Bergmoser": one unknown name right behind what the piece is called. */
function besideBag(text: string, { name, start }: NamedMaker): boolean {
  if (!/^\p{Lu}[\p{Ll}'’-]{3,}$/u.test(name) || nextName.test(text.slice(start + name.length)) || isPlaceName(name))
    return false;
  return bagAhead.test(foldWords(text.slice(0, start)).text);
}
/** With what it is for or of: "sac de voyage", "borsa da viaggio", "borsa in cuoio". */
const bagAhead = textPattern(
  `(?:${phrasePattern(wordsOf('bag', 'kind-of-piece')).source})\\s(?:(?:de|a|da|in|en|aus|van)\\s\\p{L}{3,12}\\s)?$`,
);
const joinedName = /[&+]/;
const namesPiece = phraseTest(wordsOf('bag', 'kind-of-piece'));
/** The first word folded, the rest as it stands. */
const houseForm = (name: string): string => name.replace(/^\S+/u, (first) => foldWords(first).text);
const isAllUnknown = (name: string): boolean => isUnknown(name) && findPlaces(name).length === 0;

/** Whom a passage names as the one who made the piece, behind words that say so. */
function namedAsMaker({ text }: Passage, ahead: readonly RegExp[]): string | null {
  const named = ahead.flatMap((pattern) => pattern.exec(text)?.[1] ?? [])[0];
  const words = named?.replace(nextSentence, '').replace(/[.&]$/, '').split(' ') ?? [];
  const plain = words.findIndex((word) => !isUnknown(word));
  const name = (plain < 0 ? words : words.slice(0, plain)).join(' ');
  return name === '' || findPlaces(name).length > 0 ? null : name;
}

const bagMaker =
  /(?<![\p{Script=Katakana}\p{Script=Han}ー・])([\p{Script=Katakana}ー]{3,12})(?:鞄|カバン|かばん)(?=[\s　の])/u;
/** "オノダ鞄 ショルダーバッグ": a word that no list knows, called a maker of bags, and what the piece is behind it. */
function bagMakerIn(text: string): string | null {
  const found = bagMaker.exec(text);
  if (!found || !isUnknown(found[1] as string)) return null;
  return namesPiece.test(foldWords(text.slice(found.index + found[0].length)).text) ? found[0] : null;
}
/** "Marke Rottmeyer. Er hat sie": what stands behind the full stop of a word that is no short form. */
const nextSentence = /(?<=\p{Ll}{4})\.\s.*$/u;

const houseInTitle = ({ text }: Passage): string | null => text.match(japaneseHouses)?.[0] ?? bagMakerIn(text);

const inTitle = (title: Passage): string | null =>
  namedAsMaker(title, makerAhead) ?? houseInTitle(title) ?? unknownInTitle(title);

type Named = Pick<Listing, 'title' | 'description' | 'text' | 'language'>;

/** What the title has, or a text names as a brand. */
function likelyIn(passages: readonly Passage[]): string | null {
  const title = titleOf(passages);
  const inText = () => passages.flatMap((from) => namedAsMaker(from, [brandAhead]) ?? [])[0] ?? null;
  return (title ? inTitle(title) : null) ?? inText();
}

/** An unknown word with a capital, and at the start of a sentence only where a bag is named right behind it. */
function possibleIn(from: Passage): string | null {
  const name = unknownWords(from, []).find(
    ({ words, next, opensSentence }) =>
      (/^\p{Lu}/u.test(words) && (!opensSentence || nouns.has(foldWords(next).text))) || japanese.test(words),
  );
  return name ? wholeName(name, from.text) : null;
}

/** A maker's name as the title has it, or as the text names a brand; null where a word has only the form of a name. */
export const likelyMakerName = (listing: Named): string | null => likelyIn(passagesOf(listing));

/** Words of the listing that may be a maker's name: the likely one, else whatever in its text has the form of a name. */
export function possibleMakerName(listing: Named): string | null {
  const passages = passagesOf(listing);
  const likely = likelyIn(passages);
  if (likely !== null) return likely;
  for (const from of passages.filter(({ field }) => field !== 'title')) {
    const name = possibleIn(from);
    if (name !== null) return name;
  }
  return null;
}
