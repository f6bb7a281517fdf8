import { findPlaces, foldWords } from '../../text';
import { wholeWords } from '../words';

/** A name by the shape of its words, and where it stands. */
export interface Shape {
  name: string;
  start: number;
  end: number;
}

/** What stands around a maker's name, in a head as in a text. */
export const before: ReadonlySet<string> = new Set([...wholeWords('maker-before'), ...wholeWords('owner-before')]);
export const perhaps = wholeWords('maker-of');
export const makerNoun = wholeWords('maker-noun');
/** What labels a maker's name: the head of a column, or what a maker is called. */
export const makerLabels: ReadonlySet<string> = new Set([...wholeWords('column-maker'), ...makerNoun]);
export const things = wholeWords('heading-thing');
export const gathering = wholeWords('gathering');
export const siteNouns = wholeWords('site-noun');
export const authored = wholeWords('authored');
export const authoredGuides = wholeWords('authored-guide');
/** Workshops stand beside the name of their town as well. */
export const workshops = wholeWords('plant');
export const placesBefore = wholeWords('place-before');
/** No name by themselves, though a name may hold one. */
export const adjectives = wholeWords('heading-adjective');
/** Words that headings are made of, besides the names in them; more of them than may stand in a model's name. */
const common = new Set([...wholeWords('heading'), ...wholeWords('heading-noun'), ...gathering, ...siteNouns]);
const documentEndings = [...wholeWords('document-ending')];
const codeBeginnings = [...wholeWords('code-beginning')];
const diminutives = [/jes?$/u, /tjes?$/u, /chen$/u, /lein$/u];
const leastRest = 3;
/** "Merkzettel", "Stempeltafel", "overzichtje": words for notes are made with that for the paper, that for the codes, or made small. */
const isCompound = (word: string): boolean =>
  // "Hexwold-Codes" may open with a name.
  documentEndings.some((ending) => word.endsWith(ending) && !word.endsWith(`-${ending}`)) ||
  codeBeginnings.some((beginning) => word.length >= beginning.length + leastRest && word.startsWith(beginning)) ||
  diminutives.some((ending) => ending.test(word) && common.has(word.replace(ending, '')));
export const isCommon = (word: string): boolean => {
  const folded = foldWords(word).text;
  return common.has(folded) || isCompound(folded);
};

/** Words ahead of what somebody made that say nothing of its kind. */
const noKind =
  'about|other|these|those|their|entre|sobre|estos|estas|queste|nostre|leurs|notre|votre|nuestr|unsere|diese|meine|seine';
const ofKind = new RegExp(
  `^[ \\u00a0](?!(?:${noKind}))\\p{Ll}[\\p{L}’'-]{4,20}[ \\u00a0](\\p{L}[\\p{L}’']{0,20})`,
  'u',
);
/** "Mossop Vane shoulder bag": whether what stands behind a name is what it made, with a word for its kind ahead. */
export const isKindOfThing = (behind: string): boolean => things.has(fold(ofKind.exec(behind)?.[1]));

/** A word as these lists have it; nothing where there is none. */
export const fold = (word: string | undefined): string => (word === undefined ? '' : foldWords(word).text);

/** A country or a town's country by itself. */
export const isCountry = (name: string): boolean =>
  findPlaces(name).some(({ start, end }) => end - start >= name.length - 1);
