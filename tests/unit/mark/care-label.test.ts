import { expect, test } from 'vitest';
import { inListing, inPhoto, said } from './read';

test('symbols without words on a label for the United States are not before July 1997', () => {
  expect(said('care-label', 'symbols-only care label for the US market', inListing)).toEqual([
    'symbols-only care label | 1997-07-01.. | hard',
  ]);
});

test('elsewhere symbols are old, and soft', () => {
  expect(said('care-label', 'care label with only symbols', inListing)).toEqual([
    'care label with only symbols | 1963-01-01.. | soft',
  ]);
  expect(said('care-label', 'washing symbols inside', inListing)).toEqual(['washing symbols | 1963-01-01.. | soft']);
});

test('care words count on print, softly, and not in the talk of a listing', () => {
  expect(said('care-label', 'DRY CLEAN ONLY', inPhoto)).toEqual(['DRY CLEAN ONLY | 1972-07-03.. | soft']);
  expect(said('care-label', 'please hand wash only', inListing)).toEqual([]);
});
