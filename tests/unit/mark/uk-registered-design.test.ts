import { expect, test } from 'vitest';
import { registrationOf } from '../../../src/mark/uk-registered-design';
import { said } from './read';

test.each([
  ['Rd. No. 821265', 'Rd. No. 821265 | 1937-01-01.. | hard'],
  ['RD NO 821,265', 'RD NO 821,265 | 1937-01-01.. | hard'],
  ['Regd. Design No 821265', 'Regd. Design No 821265 | 1937-01-01.. | hard'],
  ['Registered Design 945500', 'Registered Design 945500 | 1970-01-01.. | soft'],
])('%s', (text, expected) => expect(said('uk-registered-design', text)).toEqual([expected]));

test.each(['12 Mill Rd 4567', 'Mill Rd No 112', 'rd 821265', 'code 821265', 'a third 821265'])(
  'nothing is read from "%s"',
  (text) => expect(said('uk-registered-design', text)).toEqual([]),
);

test('near a boundary either year may be right', () => {
  expect(registrationOf(19_753)?.years).toEqual([1884, 1885]);
  expect(registrationOf(19_754)?.years).toEqual([1884, 1885]);
  expect(registrationOf(675)?.years).toEqual([1884, 1884]);
  expect(registrationOf(821_265)?.years).toEqual([1937, 1937]);
});

test('below 1 there is none; beyond the table it is that year or later', () => {
  expect(registrationOf(0)).toBeNull();
  expect(registrationOf(2_000_000)).toMatchObject({ years: [1989, 1989], beyond: true, verified: false });
});
