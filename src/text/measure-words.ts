import type { Measure } from '../listing/types';
import { tableWords, wordsOf } from './lexicon';
import type { PhraseTable } from './phrases';

export type Dimension = Measure['dimension'];

/** Whole words for dimensions. */
export const dimensionWords: PhraseTable<Dimension> = { ...tableWords('dimension'), unknown: [] };

/** Single letters before or after a number ("H 12", "L30", "12H"). What L, B, P, A and T mean depends on the language. */
export const dimensionLetters: Record<string, Dimension> = {
  w: 'width',
  h: 'height',
  d: 'depth',
  l: 'width',
  b: 'width',
  p: 'depth',
  t: 'depth',
  a: 'height',
  f: 'depth',
  an: 'width',
  al: 'height',
};

/** Letters that count in a language; others are read when the run has at least two of them. */
export const lettersOf: Record<string, string> = {
  en: 'w h d l',
  de: 'b h t l',
  fr: 'l h p',
  it: 'l h a p b',
  es: 'l a h p f an al',
  nl: 'b h d l',
  ja: 'w h d',
};

/** What a lone measurement belongs to when it is not the bag: flaws, things that fit inside, other objects. */
export const otherThings = wordsOf('measured-thing');
