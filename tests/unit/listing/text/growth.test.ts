import { describe, expect, it } from 'vitest';
import {
  findAvailability,
  findConditions,
  findItemCodes,
  findMemberSince,
  findPayment,
  findRatings,
  findReturns,
  findSalesCounts,
  findShipping,
  findTraders,
  findWatchers,
  parseDates,
  parseMeasures,
  parsePrices,
} from '../../../../src/listing/text';

const now = '2026-11-25';
const readers: Record<string, (text: string) => unknown> = {
  prices: (text) => parsePrices(text, { language: null }),
  measures: (text) => parseMeasures(text, null),
  dates: (text) => parseDates(text, { language: null, now }),
  ratings: findRatings,
  conditions: (text) => findConditions(text),
  returns: findReturns,
  shipping: findShipping,
  payment: findPayment,
  'member since': (text) => findMemberSince(text, { language: null, now }),
  traders: findTraders,
  sales: findSalesCounts,
  watchers: findWatchers,
  availability: findAvailability,
  'item codes': findItemCodes,
};

/** Pieces that, repeated, drive a careless pattern into backtracking. */
const hostile: Record<string, string> = {
  digits: '1',
  'grouped digits': '1.234.',
  spaces: ' ',
  'spaces and digits': '1 ',
  letters: 'a',
  'accented letters': 'é',
  quotes: "'",
  'number and joint': '1 x ',
  'currency signs': '$',
  'decade starts': "'9",
  dashes: '1994-',
  brackets: '(((',
  'word starts': 'not new ',
  newlines: '\n',
  'bidi marks': '\u200f1',
  prose: 'A lovely bag in good condition, made in 1994, 30 cm wide, 450 €. ',
};

/** Processor time in milliseconds, which other programs on the machine do not lengthen. */
function costMs(read: (text: string) => unknown, text: string): number {
  const begun = process.cpuUsage();
  read(text);
  return process.cpuUsage(begun).user / 1000;
}

const small = 4_000;
const factor = 8;
/** Eight times the text may cost up to three times more than eightfold; quadratic work would cost 64 times. */
const allowed = factor * 3;
/** Below this a clock on a shared machine measures noise. */
const floorMs = 2;

describe('time grows with the text and not with its square', () => {
  for (const [reader, read] of Object.entries(readers))
    it(`${reader} on ${Object.keys(hostile).length} hostile texts`, () => {
      for (const [name, piece] of Object.entries(hostile)) {
        const short = piece.repeat(Math.ceil(small / piece.length));
        const long = piece.repeat(Math.ceil((small * factor) / piece.length));
        read(short);
        let ratio = Number.POSITIVE_INFINITY;
        // Noise only ever adds: the least of a few attempts is the honest one.
        for (let attempt = 0; attempt < 5 && ratio >= allowed; attempt += 1)
          ratio = Math.min(ratio, costMs(read, long) / Math.max(costMs(read, short), floorMs));
        expect(
          ratio,
          `${reader} on ${name}: ${factor} times the text costs ${ratio.toFixed(1)} times more`,
        ).toBeLessThan(allowed);
      }
    }, 60_000);
});
