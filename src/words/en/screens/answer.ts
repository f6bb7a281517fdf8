import type { Beside } from '../../../code/beside-types';
import { count } from './count';

/** The sentence over the stamp's picture, and the rows that show how its code is built. */
export const answerStrings = {
  title: 'What the stamp says',
  seenIn: {
    photo: (number: number | null, copy: boolean) =>
      `The stamp in ${number === null ? 'a photo' : `photo ${number}`}${copy ? ', read from a small copy,' : ''}`,
    listing: 'The code that the listing quotes',
    typed: 'The code that you typed',
  },
  reads: (what: string, says: string) => `${what} reads ${says}.`,
  readsOnly: (what: string, code: string) => `${what} reads ${code}.`,
  said: (words: string) => `The listing says ${words}.`,
  saidNothing: 'The listing names no year.',
  /** Bought, inherited or given: no year of its making. */
  saidAcquired: (days: string) => `The listing says only when it was acquired: ${days}.`,
  /** Several pieces are on offer, and none is chosen. */
  choose: 'Choose the piece, and what the listing says of it stands beside.',
  saidNothingOf: (piece: string) => `The listing gives no year for: ${piece}.`,
  lot: {
    title: (pieces: number) =>
      pieces === 0 ? 'Several pieces are offered here' : 'Two pieces are offered here. Which one is the stamp on?',
    unnamed: 'The words do not tell them apart, so what is said is held against none of them.',
    onePiece: 'It is one piece',
    because: (words: string) => `Told from “${words}” in the title.`,
    none: 'Until you choose, nothing that may be said of only one of them is held against either.',
    notPlaced: (words: string) => `Said, and not plain of which: ${words}. It is held against neither.`,
    price: 'The price is for all of them and is held against none.',
    stampIsOn: (piece: string) => `This stamp is on the other piece: ${piece}`,
  },
  several: (codes: string) => `The photos show different codes: ${codes}.`,
  unexplained: (maker: string, guess: string | null) => {
    if (maker !== '') return `No file on ${maker} explains it yet.`;
    return guess === null
      ? 'The listing names no maker, so no file explains it.'
      : `No file explains it yet; the maker may be “${guess}”.`;
  },
  unexplainedAlone: 'None of your files explains it.',
  noneFits: (maker: string) => `The file on ${maker} does not explain it.`,
  forms: 'What its form alone allows',
  formShares: 'How often each is meant',
  formShare: (share: number) => (share < 0.05 ? 'rarely' : `about ${Math.max(1, Math.round(share * 10))} in 10`),
  formFits: (said: string) => `Fits ${said}.`,
  formFitsNot: (said: string) => `Does not fit ${said}.`,
  formsNote: 'Common practice of many makers, no source: this maker may write its codes in another way.',
  noDate: 'a running number: no date without the maker’s table',
  unsure: (what: string, text: string) =>
    text === '' ? `${what} could not be read for certain.` : `${what} is not read for certain: perhaps ${text}.`,
  none: (read: number, unread: number) =>
    unread === 0
      ? `No stamp was seen in ${read === 1 ? 'the photo' : `the ${read} photos`}.`
      : `No stamp was seen in ${count(read, 'photo', 'photos')}; ${unread} could not be looked at.`,
  unopened: (photos: number) =>
    photos === 0
      ? 'The page shows no photo.'
      : photos === 1
        ? 'The photo could not be opened.'
        : 'The photos could not be opened.',
  looking: 'Looking for the stamp.',
  byFile: (maker: string, invented: boolean) =>
    invented ? `by the ${maker} file: invented, for the demonstration` : `by the ${maker} file`,
  beside: (text: string, kind: string, means: string) =>
    `“${text}” beside the code is no part of it, but ${kind}: ${means}`,
  besideKinds: {
    repair: 'a mark of repair',
    size: 'a mark of size',
    shop: 'a shop’s mark',
    seconds: 'a mark of second choice',
    other: 'a mark',
  } satisfies Record<Beside['kind'], string>,
  byHand: 'set by you',
  correct: 'Correct it by hand',
  closer: (number: number) => `Look closer at photo ${number}`,
  rows: 'How the code is built',
  parts: {
    year: (year: string) => `year ${year}`,
    quarter: (quarter: string) => `quarter ${quarter}`,
    month: (month: string) => month,
    week: (week: string) => `week ${week}`,
    day: (day: string) => `day ${day}`,
    dayOfYear: (day: string) => `day ${day} of the year`,
    workshop: (code: string, place: string) => `workshop ${code}${place === '' ? '' : `: ${place}`}`,
    number: (number: string) => `running number ${number}`,
    check: 'a check character, and it agrees',
    any: 'not explained',
    fixed: 'always there',
  },
} as const;
