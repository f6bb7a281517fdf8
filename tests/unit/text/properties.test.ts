import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  findAvailability,
  findBids,
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
  foldText,
  foldWords,
  parseDates,
  parseMeasures,
  parsePrices,
  parsePriceText,
} from '../../../src/text';

const now = '2026-11-25';
const languages = fc.constantFrom(null, 'en', 'en-GB', 'en-US', 'de', 'fr', 'it', 'es', 'nl', 'ja');

interface Placed {
  start: number;
  end: number;
  words: string;
}
const readers: Record<string, (text: string, language: string | null) => Placed[]> = {
  prices: (text, language) => parsePrices(text, { language }),
  measures: (text, language) => parseMeasures(text, language),
  dates: (text, language) => parseDates(text, { language, now }),
  ratings: (text) => findRatings(text),
  conditions: (text) => findConditions(text, true),
  returns: (text) => findReturns(text),
  shipping: (text) => findShipping(text),
  payment: (text) => findPayment(text),
  'member since': (text, language) => findMemberSince(text, { language, now }),
  traders: (text) => findTraders(text),
  sales: (text) => findSalesCounts(text),
  watchers: (text) => findWatchers(text),
  bids: (text) => findBids(text),
  availability: (text) => findAvailability(text),
  'item codes': (text) => findItemCodes(text),
};

/** Pieces that the readers look for, so that random texts meet their inner branches. */
const pieces = fc.constantFrom(
  '€',
  '$',
  '£',
  '1.299',
  '1 299,00',
  '12',
  '½',
  'cm',
  ' x ',
  '"',
  'in',
  'H',
  'W',
  'Breite',
  '1994',
  "'94",
  '90s',
  'années ',
  '昭和60年',
  '12/03/1994',
  'März',
  ' 3, ',
  'circa ',
  'before ',
  'new',
  'nie getragen',
  'not ',
  '未使用',
  '4.5/5',
  '★',
  '(178)',
  'no returns',
  '14 days',
  'Member since ',
  '12 watchers',
  'sold',
  'code: KV0915',
  '\u200f',
  '\u00a0',
  '\u202f',
  'é',
  'e\u0301',
  'ß',
  'İ',
  '😀',
  '٣',
  '\n',
  '. ',
  ', ',
  '-',
  '–',
  '/',
  '%',
  '×',
);
const texts = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.array(fc.oneof(pieces, fc.string({ maxLength: 4 })), { maxLength: 40 }).map((parts) => parts.join('')),
  fc.array(pieces, { maxLength: 40 }).map((parts) => parts.join(' ')),
);

describe('whatever the text', () => {
  for (const [name, read] of Object.entries(readers))
    it(`${name}: never throws, and every position slices back to its words, in order of place where it has one`, () => {
      fc.assert(
        fc.property(texts, languages, (text, language) => {
          for (const found of read(text, language)) {
            expect(text.slice(found.start, found.end)).toBe(found.words);
            expect(found.start).toBeLessThan(found.end);
          }
        }),
        { numRuns: 300 },
      );
    });

  it('prices are non-negative integers in minor units, and a settled currency is among the candidates', () => {
    fc.assert(
      fc.property(texts, (text) => {
        for (const { price } of parsePrices(text)) {
          expect(Number.isSafeInteger(price.minor) && price.minor >= 0).toBe(true);
          if (price.currency !== null) expect(price.currencies[0]).toBe(price.currency);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('spans are in order and of days that exist', () => {
    fc.assert(
      fc.property(texts, languages, (text, language) => {
        for (const { span } of parseDates(text, { language, now })) {
          for (const day of [span.from, span.to])
            if (day !== null) expect(new Date(`${day}T00:00:00Z`).toISOString().slice(0, 10)).toBe(day);
          if (span.from !== null && span.to !== null) expect(span.from <= span.to).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('an amount written in any of the usual ways is read back', () => {
    const styles: ((whole: string[], cents: string) => string)[] = [
      (whole, cents) => `€${whole.join(',')}.${cents}`,
      (whole, cents) => `${whole.join('.')},${cents} €`,
      (whole, cents) => `${whole.join(' ')},${cents} €`,
      (whole, cents) => `${whole.join('\u202f')},${cents}\u00a0€`,
      (whole, cents) => `EUR ${whole.join("'")}.${cents}`,
      (whole, cents) => `${whole.join('')}.${cents} EUR`,
    ];
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99_999_999 }), fc.constantFrom(...styles), (minor, style) => {
        const whole = String(Math.floor(minor / 100));
        const groups = whole.split(/(?=(?:\d{3})+$)/);
        const text = style(groups, String(minor % 100).padStart(2, '0'));
        expect(parsePrices(text).map(({ price }) => price.minor)).toEqual([minor]);
        expect(Number(parsePriceText(text).amount)).toBe(minor / 100);
      }),
      { numRuns: 500 },
    );
  });

  it('folding keeps a way back to the source', () => {
    fc.assert(
      fc.property(texts, (text) => {
        for (const folded of [foldText(text), foldWords(text)]) {
          expect(folded.at?.length ?? text.length).toBe(folded.text.length);
          if (folded.at === null) expect(folded.text.length).toBe(text.length);
        }
      }),
      { numRuns: 300 },
    );
  });
});
