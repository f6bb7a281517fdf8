import { expect, test } from 'vitest';
import { inListing, inPhoto, said } from './read';

test.each([
  ['Tel 0171 xxx xxxx', ['0171 xxx xxxx | 1995-04-16.. | hard', '0171 xxx xxxx | 1995-04-16..2000-04-22 | soft']],
  ['081-xxx xxxx', ['081-xxx xxxx | 1990-05-01.. | hard', '081-xxx xxxx | 1990-05-01..1995-04-16 | soft']],
  ['01-555 0199', ['01-555 0199 | 1958-01-01.. | hard', '01-555 0199 | 1958-01-01..1990-05-31 | soft']],
  ['020 7555 0199', ['020 7555 0199 | 1999-06-01.. | hard']],
  ['01223 555 019', ['01223 555 019 | 1995-04-16.. | hard']],
  ['(212) 555-0199', ['(212) 555-0199 | 1947-10-01.. | soft']],
  ['01 55 50 19 90', ['01 55 50 19 90 | 1996-10-18.. | hard']],
])('%s on print', (text, expected) => expect(said('phone-number', text, inPhoto)).toEqual(expected));

test("a seller's own number says nothing", () => {
  expect(said('phone-number', 'Call me on 0171 555 0199', inListing)).toEqual([]);
});

test.each(['KV 0915', '2024-01-15', '25 x 30', '0171', '1-800'])('nothing is read from "%s"', (text) =>
  expect(said('phone-number', text, inPhoto)).toEqual([]),
);
