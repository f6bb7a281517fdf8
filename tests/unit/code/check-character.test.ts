import { expect, test } from 'vitest';
import { type CheckRule, checkCharacters, checkShape } from '../../../src/code/check-character';

const checked = (rule: CheckRule, body: string, at = body.length, weights?: readonly number[]) =>
  checkCharacters(rule, [...body], at, weights);

/** A single character first, so that its value alone decides (ISO 6346: A is 10, no multiple of 11). */
test.each([
  ['0', 0],
  ['1', 1],
  ['9', 9],
  ['A', 10],
  ['B', 12],
  ['K', 21],
  ['L', 23],
  ['U', 32],
  ['V', 34],
  ['Z', 38],
])('a container number values %s as %i', (character, value) => {
  // The second of two counts double, so that values which are alike modulo 11 are not alike.
  expect(checked('iso6346', character)).toBe(String((value % 11) % 10));
  expect(checked('iso6346', `0${character}`)).toBe(String(((value * 2) % 11) % 10));
});

/** Source: 49 CFR 565.15(c), Table III, from memory. */
test.each([
  ['ABCDEFGH', '12345678'],
  ['JKLMN', '12345'],
  ['PR', '79'],
  ['STUVWXYZ', '23456789'],
  ['0123456789', '0123456789'],
])('a vehicle number values %s as %s', (letters, values) => {
  // The first place weighs eight.
  expect([...letters].map((letter) => checked('vin', letter))).toEqual(
    [...values].map((value) => '0123456789X'[(Number(value) * 8) % 11]),
  );
});

test('a vehicle number weighs each place, but for that of the check', () => {
  const weights = [8, 7, 6, 5, 4, 3, 2, 10, 9, 8, 7, 6, 5, 4, 3, 2];
  const only = (place: number, at: number) => checked('vin', `${'0'.repeat(place)}1${'0'.repeat(15 - place)}`, at);
  expect(weights.map((_, place) => only(place, 8))).toEqual(weights.map((weight) => '0123456789X'[weight]));
  // A check behind sixteen characters: the ninth of these stands where the check is wont to stand, and weighs nothing.
  expect([7, 8, 9, 15].map((place) => only(place, 16))).toEqual(['X', '0', '9', '3']);
  // Beyond the seventeenth place nothing is weighed.
  expect(checked('vin', `${'0'.repeat(17)}1`, 18)).toBe('0');
});

test.each<[rule: CheckRule, body: string]>([
  ['luhn', ''],
  ['luhn', '1-2'],
  ['mod10', '1 2'],
  ['mod11', 'É'],
  ['mod97', ''],
  ['mod97', '1.'],
  ['iso6346', '☺'],
  ['iso6346', ''],
  ['vin', 'I'],
  ['vin', 'O'],
  ['vin', 'Q'],
  ['vin', '1.'],
  ['vin', '-'],
  ['vin', ''],
])('%s has no check for "%s"', (rule, body) => {
  expect(checked(rule, body)).toBeNull();
});

test.each<[rule: CheckRule, body: string, fits: string]>([
  // ISO 7812: doubled from the right; 5 is 10 and so 1, 4 is 8.
  ['luhn', '0', '0'],
  ['luhn', '4', '2'],
  ['luhn', '5', '9'],
  ['luhn', '9', '1'],
  ['luhn', '50', '5'],
  // A letter counts as two digits: K is 20.
  ['luhn', 'K', '8'],
  ['luhn', '1K', '6'],
  // GS1: 3 from the right.
  ['mod10', '1', '7'],
  ['mod10', '11', '6'],
  ['mod10', '0', '0'],
  ['mod10', 'A', '0'],
  ['mod10', 'B', '7'],
  // ISO 2108: 2 from the right.
  ['mod11', '1', '9'],
  ['mod11', '6', 'X'],
  ['mod11', '0', '0'],
  ['mod11', '11', '6'],
  // ISO 7064: 98 less the remainder of the body with two noughts.
  ['mod97', '0', '98'],
  ['mod97', '1', '95'],
  ['mod97', '9', '71'],
  ['mod97', 'A', '68'],
  ['mod97', '32', '02'],
  ['mod97', '96', '04'],
  ['mod97', '97', '98'],
  ['iso6346', 'A', '0'],
])('%s of %s is %s', (rule, body, fits) => {
  expect(checked(rule, body)).toBe(fits);
  expect(fits).toHaveLength(checkShape[rule].width);
  expect([...fits].every((character) => checkShape[rule].of.includes(character))).toBe(true);
});

test('weights stand in order when there are as many as characters, and are repeated from the last otherwise', () => {
  expect(checked('mod10', '100', 3, [7, 3, 1])).toBe('3');
  expect(checked('mod10', '0100', 4, [7, 3, 1])).toBe('9');
  expect(checked('mod10', '1000', 4, [7, 3, 1])).toBe('3');
  expect(checked('mod10', '0001', 4, [7, 3, 1])).toBe('3');
  expect(checked('mod10', '01', 2, [7, 3, 1])).toBe('3');
  expect(checked('mod11', '100', 3, [5, 1, 1])).toBe('6');
  expect(checked('mod11', '0010', 4, [5, 2, 1])).toBe('9');
});

test('what a check may be is ten figures, or eleven signs with X for ten', () => {
  expect(Object.entries(checkShape).map(([rule, { width, of }]) => `${rule} ${width} ${of}`)).toEqual([
    'luhn 1 0123456789',
    'mod10 1 0123456789',
    'mod11 1 0123456789X',
    'mod97 2 0123456789',
    'iso6346 1 0123456789',
    'vin 1 0123456789X',
  ]);
});
