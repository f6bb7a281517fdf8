import { type Difference, type Expected, expectedWords, type OtherNumber } from '../../../code';
import { differencesSaid } from '../codes';
import { count } from './count';

/** What is read of a stamp: lines, what they may mean, and codes by hand. */
export const stampStrings = {
  title: 'What the stamp says',
  waiting: 'No photo has been read yet.',
  none: 'No stamp was found in the photos that were read.',
  unsure: 'Not certain enough to count as read',
  unclear: (number: number) => `${count(number, 'more line', 'more lines')}, not certain enough to count as read`,
  candidates: 'It may be',
  mayGoOn: 'It may go on outside the photo or past the part that was framed, or a word beside it was read along.',
  tooLong:
    'It is longer than a date code is, and no file explains it: a number of another kind, or words beside the code.',
  otherNumber: {
    year: 'It may be a year: other words stand beside it, and no file explains it as a code.',
    time: 'It may be a time of day: a date stands beside it, and no file explains it as a code.',
    measure: 'It may be a size or a weight: it ends in the sign of a unit, and no file explains it as a code.',
    row: 'It may be a row of holes or stitches: its characters have one shape, and no file explains it as a code.',
  } satisfies Record<OtherNumber, string>,
  upsideDown: (text: string) => `Upside down it reads ${text}.`,
  alike: (place: number, may: readonly string[]) => `Character ${place} may be ${may.join(' or ')}.`,
  share: (probability: number) => `${Math.round(probability * 100)} in 100`,
  noSystem: 'No file explains it yet.',
  misfit: (slot: string, value: string, expected: Expected) => `${slot} ${value}: expected ${expectedWords(expected)}`,
  nearest: (text: string, differences: readonly Difference[], system: string) =>
    `Near: ${text}${differencesSaid(differences)}, by ${system}`,
  barely: (system: string, says: string) => `Not certain enough: ${says} by ${system}.`,
  inPhoto: (number: number, copy = '') => (copy === '' ? `Photo ${number}` : `Photo ${number}, from a ${copy}`),
  inListing: 'Quoted in the listing',
  typed: 'Typed by you',
  pictureOf: (number: number) => `The stamped line in photo ${number}`,
  type: 'Type the code as you see it',
  typeHint: 'Letters and digits; spaces do not matter.',
  typeTooLong: (most: number) => `That is no stamp: a code has at most ${most} characters.`,
  typeAction: 'Decode',
  remove: (code: string) => `Remove ${code}`,
  reading: (system: string) => `by ${system}`,
  alone: (shape: string) => `By its shape alone it is ${shape}. Common practice, no source.`,
  family: (shape: string) => `its shape alone, ${shape}; common practice, no source`,
  /** Shapes of codes without a maker, by their names in the decoder. */
  families: {
    'year-month': 'year and month',
    'month-year': 'month and year',
    'year-week': 'year and week',
    'week-year': 'week and year',
    'year-month-three-digits': 'year and month of one digit',
    'month-year-three-digits': 'month of one digit and year',
    'month-stroke-year': 'month and year with a stroke or dot between',
    'year-stroke-month': 'year and month with a stroke or dot between',
    'week-stroke-year': 'week and year with a stroke or dot between',
    'year-stroke-week': 'year and week with a stroke or dot between',
    'year-month-plant': 'year, month and two letters of a workshop',
    'month-year-plant': 'month, year and two letters of a workshop',
    'plant-year-month': 'two letters of a workshop, year and month',
    'plant-month-year': 'two letters of a workshop, month and year',
    'plant-week-year': 'two letters of a workshop, week and year',
    'plant-year-week': 'two letters of a workshop, year and week',
    'plant-interleaved-month': 'two letters of a workshop, the digits of month and year by turns',
    'plant-interleaved-week': 'two letters of a workshop, the digits of week and year by turns',
    'letter-cycle': 'a letter that may stand for a year of a cycle, and a number: only the maker’s list dates it',
    'framed-letter': 'a letter in a frame that may stand for a year of a cycle: only the maker’s list dates it',
    serial: 'a running number, which dates nothing without the maker’s table: compare the sticker and the card',
    'long-serial':
      'a long running number, which dates nothing without the maker’s table: compare the sticker and the card',
  } satisfies Record<string, string> as Record<string, string>,
  otherReadings: (number: number) => count(number, 'other reading', 'other readings'),
} as const;
