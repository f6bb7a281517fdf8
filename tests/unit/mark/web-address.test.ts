import { expect, test } from 'vitest';
import { inListing, inPhoto, said } from './read';

test.each([
  ['www.calderwick.example', 'www.calderwick.example | 1991-08-01.. | soft'],
  ['ondrasse.com', 'ondrasse.com | 1991-08-01.. | soft'],
  ['https://ondrasse.example', 'https://ondrasse.example | 2006-01-01.. | soft'],
  ['care@ondrasse.example', 'care@ondrasse.example | 1985-01-01.. | soft'],
])('%s on print', (text, expected) => expect(said('web-address', text, inPhoto)).toEqual([expected]));

test("a listing's own addresses say nothing, a label that it quotes does", () => {
  expect(said('web-address', 'see more at www.attic-arcade.example', inListing)).toEqual([]);
  expect(said('web-address', 'printed inside: www.ondrasse.example', inListing)).toHaveLength(1);
});
