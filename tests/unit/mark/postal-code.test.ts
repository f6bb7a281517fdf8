import { expect, test } from 'vitest';
import { inListing, inPhoto, said } from './read';

test.each([
  ['Chicago, IL 60614', 'IL 60614 | 1963-07-01.. | hard'],
  ['NEW YORK, N.Y. 10018', 'N.Y. 10018 | 1963-07-01.. | hard'],
  ['Boston, MA 02108-1234', 'MA 02108-1234 | 1983-01-01.. | hard'],
  ['Chicago 16, Ill.', 'Chicago 16, Ill. | 1943-05-01..1963-12-31 | soft'],
  ['LONDON W1S 3AB', 'W1S 3AB | 1959-10-01.. | hard'],
  ['D-10115 Berlin', 'D-10115 | 1993-07-01.. | hard'],
  ['F-75008 Paris', 'F-75008 | 1972-01-01.. | soft'],
  ['Toronto, ON M5V 2T6', 'ON M5V 2T6 | 1971-04-01.. | hard'],
  ['〒104-0061', '〒104-0061 | 1998-02-02.. | soft'],
])('%s on print', (text, expected) => expect(said('postal-code', text, inPhoto)).toEqual([expected]));

test("a shop's address in a listing says nothing, a label that it quotes does", () => {
  expect(said('postal-code', 'We ship from Chicago, IL 60614', inListing)).toEqual([]);
  expect(said('postal-code', 'The label inside reads Chicago, IL 60614', inListing)).toEqual([
    'IL 60614 | 1963-07-01.. | hard',
  ]);
});

test.each([
  'MADE IN 12345',
  'KV0915',
  'AB1 2CD',
  'code 60614',
  'SD0 1AB',
  'style OR 97477',
  'model D-10115',
  'Pat. D-10115',
])('no postal code is read from "%s"', (text) => expect(said('postal-code', text, inPhoto)).toEqual([]));
