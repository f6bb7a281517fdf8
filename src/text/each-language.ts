/**
 * Words of one meaning in English, French, German, Italian, Spanish, Dutch and Japanese: phrases parted by a comma and a
 * space, or parts of a pattern over folded text. What reads these runs in the page, whose script is small: a row of seven
 * texts takes fewer bytes there than the lexicon's lists, and lacks a language as little. A language whose grammar has no
 * such word holds an empty text, and a test says why. Common practice, no source.
 */
export type EachLanguage = readonly [
  en: string,
  fr: string,
  de: string,
  it: string,
  es: string,
  nl: string,
  ja: string,
];

/** The patterns of all languages as alternatives: a listing mixes languages, and often does not say its own. */
export const anyLanguage = (...rows: EachLanguage[]): string => rows.flat().filter(Boolean).join('|');
