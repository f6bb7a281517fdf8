/**
 * Words of one meaning in English, French, German, Italian, Spanish, Dutch and Japanese: phrases parted by a comma and a
 * space, or parts of a pattern. What a page says of prices is read by a script in it, which has to be small: a row of
 * seven texts takes fewer bytes there than the lexicon's lists; what is written into a pattern can be no list of phrases.
 * Tables of rows are of one shape because each says seven languages in one order; what they say is apart.
 * A row lacks a language as little as the lexicon does. Where a language has no such word its text is empty, and a test
 * says why. Common practice, no source.
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

/** The same of those that are written with gaps between the words. */
export const anyWithGaps = (row: EachLanguage): string => row.slice(0, 6).filter(Boolean).join('|');
