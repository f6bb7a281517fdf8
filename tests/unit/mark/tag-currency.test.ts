import { expect, test } from 'vitest';
import { findMarks } from '../../../src/mark';
import { inListing, inPhoto, said } from './read';

test.each([
  ['DM 398,-', 'DM 398,- | ..2002-12-31 | soft'],
  ['Lire 250.000', 'Lire 250.000 | ..2002-12-31 | soft'],
  ['12.500 Ptas', '12.500 Ptas | ..2002-12-31 | soft'],
  ['FRF 1 200', 'FRF 1 200 | ..2002-12-31 | soft'],
  ['Prix: 890 francs français', '890 francs français | ..2002-12-31 | soft'],
  ['£4.19s.11d', '£4.19s.11d | ..1971-02-15 | soft'],
])('%s on a tag', (text, expected) => expect(said('tag-currency', text, inPhoto)).toEqual([expected]));

test.each(['450 francs', 'Francs 1 200'])('%s on a tag may be of a country that pays in them today', (text) =>
  expect(said('tag-currency', text, inPhoto)).toEqual([]),
);

test('a price in euro dates nothing, since unsold stock was priced anew', () => {
  expect(said('tag-currency', '€ 620,00', inPhoto)).toEqual(['€ 620,00 | no date | soft']);
});

test("a listing's own price says nothing, and a tag dates the sale", () => {
  expect(said('tag-currency', 'was DM 398 new', inListing)).toEqual([]);
  expect(findMarks('DM 398', inPhoto)[0]?.cautions).toEqual([{ kind: 'dates-sale' }]);
});
