import { expect, test } from 'vitest';
import { inListing, said } from './read';

test('a fineness number is a claim and dates nothing', () => {
  expect(said('hallmark-fineness', 'clasp of silver 925', inListing)).toEqual(['silver 925 | no date | soft']);
  expect(said('hallmark-fineness', '.925 sterling clasp', inListing)).toEqual(['.925 sterling | no date | soft']);
});

test('in a UK hallmark 800, 999, 990, 850 and 900 are possible from 1999 only', () => {
  expect(said('hallmark-fineness', 'UK hallmark with silver 800', inListing)).toEqual([
    'silver 800 | 1999-01-01.. | hard',
  ]);
  expect(said('hallmark-fineness', 'UK hallmark, gold 990', inListing)).toEqual(['gold 990 | 1999-01-01.. | hard']);
  expect(said('hallmark-fineness', 'UK hallmark with silver 925', inListing)).toEqual(['silver 925 | no date | soft']);
});

test('palladium has a UK hallmark since July 2009, softly', () => {
  expect(said('hallmark-fineness', 'UK hallmark, palladium 950', inListing)).toEqual([
    'palladium 950 | 2009-07-01.. | soft',
  ]);
  expect(said('hallmark-fineness', 'palladium 950 plating', inListing)).toEqual(['palladium 950 | no date | soft']);
});

test('a bare 800 is ordinary on silver of the continent', () => {
  expect(said('hallmark-fineness', 'silver 800, German', inListing)).toEqual(['silver 800 | no date | soft']);
});

test.each(['code 925', 'stamped 925 inside', '925', 'silver tone, 25 cm'])('nothing is read from "%s"', (text) =>
  expect(said('hallmark-fineness', text, inListing)).toEqual([]),
);
