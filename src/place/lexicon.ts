import { currentPlaces, isoNames } from './iso';
import words from './words.json';

/** Languages in which country names are known: the runtime's own names (Intl.DisplayNames, Unicode CLDR). */
export const placeLanguages = ['en', 'fr', 'de', 'it', 'es', 'nl', 'ja'] as const;

export interface LexiconEntry {
  place: string | null;
  form: 'name' | 'adjective';
  /** The name is also a word of another meaning: it counts only after "made in". */
  onlyAfterMadeIn: boolean;
  /** The name is also a material: it has to stand with a capital and with its own accents. */
  exact: string | null;
}

/** Lower case, accents and dots dropped, so that "U.S.A.", "Österreich" and "osterreich" are found alike. */
export const foldWord = (word: string): string =>
  word
    .normalize('NFD')
    .replace(/[\p{M}.]/gu, '')
    .replace(/ß/g, 'ss')
    .toLowerCase();

export const splitWords = (text: string): { word: string; start: number; end: number }[] =>
  [...text.matchAll(/[\p{L}\p{M}\p{N}]+(?:\.(?=[\p{L}])[\p{L}])*/gu)].map((match) => ({
    word: match[0],
    start: match.index,
    end: match.index + match[0].length,
  }));

const foldName = (name: string): string =>
  splitWords(name)
    .map(({ word }) => foldWord(word))
    .join(' ');

interface Lexicon {
  /** Folded name of one to six words → entry. */
  entries: Map<string, LexiconEntry>;
  longest: number;
  /** Names in scripts without spaces, longest first. */
  unspaced: { name: string; place: string }[];
}

let towns: Map<string, string> | null = null;

/** The country of a region or a town by its folded name: it tells of it only where something is said to be made there. */
export function countryOfTown(folded: string): string | null {
  towns ??= new Map(
    Object.entries(words.regions).flatMap(([place, names]) => names.map((name) => [foldName(name), place] as const)),
  );
  return towns.get(folded) ?? null;
}

let built: Lexicon | null = null;

/** The lexicon is built at first use and depends on nothing but the tables. */
export function lexicon(): Lexicon {
  built ??= buildLexicon();
  return built;
}

const isUnspaced = (name: string) => /[\p{Script=Han}\p{Script=Katakana}\p{Script=Hiragana}]/u.test(name);

function buildLexicon(): Lexicon {
  const entries = new Map<string, LexiconEntry>();
  const unspaced = new Map<string, string>();
  const guarded = new Set(words.onlyAfterMadeIn.map(foldName));
  const materials = new Map(words.materialNames.map((name) => [foldName(name), name]));
  const add = (name: string, place: string | null, form: LexiconEntry['form']) => {
    if (isUnspaced(name)) {
      if (place && !unspaced.has(name)) unspaced.set(name, place);
      return;
    }
    const folded = foldName(name);
    if (folded.length < 3 || entries.has(folded)) return;
    const exact = form === 'name' ? (materials.get(folded) ?? null) : null;
    const onlyAfterMadeIn = guarded.has(folded) || exact !== null;
    entries.set(folded, { place, form, onlyAfterMadeIn, exact });
  };
  for (const name of words.otherThings) add(name, null, 'name');
  for (const [place, names] of Object.entries(words.names)) for (const name of names) add(name, place, 'name');
  // The runtime says some names its own way ("Hong Kong SAR China"): the standard's names are known as well.
  for (const [place, name] of isoNames) add(name, place, 'name');
  for (const language of placeLanguages) {
    const names = new Intl.DisplayNames([language], { type: 'region' });
    for (const place of currentPlaces) add(names.of(place) ?? '', place, 'name');
  }
  for (const [place, forms] of Object.entries(words.adjectives))
    for (const form of forms) add(form, place, 'adjective');
  return {
    entries,
    longest: Math.max(...[...entries.keys()].map((name) => name.split(' ').length)),
    unspaced: [...unspaced]
      .map(([name, place]) => ({ name, place }))
      .sort((a, b) => b.name.length - a.name.length || (a.name < b.name ? -1 : 1)),
  };
}

/** Abbreviations count only in capitals: "US" is a place, "us" is not. */
export const capitalPlaces: ReadonlyMap<string, string> = new Map(Object.entries(words.capitals));
