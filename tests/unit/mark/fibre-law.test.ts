import { expect, test } from 'vitest';
import { inListing, inPhoto, said } from './read';

test.each([
  ['65% POLYESTER 35% COTTON', ['65% POLYESTER | 1960-03-03.. | soft', '35% COTTON | 1960-03-03.. | soft']],
  ['100% WOOL', ['100% WOOL | 1941-07-14.. | soft']],
  ['reprocessed wool', ['reprocessed wool | 1941-07-14..1980-12-31 | soft']],
])('%s on a label', (text, expected) => expect(said('fibre-law', text, inPhoto)).toEqual(expected));

test("a listing's own description says nothing, a label that it quotes does", () => {
  expect(said('fibre-law', 'lined in 100% cotton', inListing)).toEqual([]);
  expect(said('fibre-law', 'the label says 100% cotton', inListing)).toEqual(['100% cotton | 1960-03-03.. | soft']);
});
