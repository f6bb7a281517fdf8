import { expect, test } from 'vitest';
import { isTradeNumber } from '../../../src/mark/barcode';
import { inListing, inPhoto, said } from './read';

test('a 12-digit number on a tag is not before 26 June 1974', () => {
  expect(said('barcode', '0 36000 29145 3', inPhoto)).toEqual([]);
  expect(said('barcode', '0 36000 29145 2', inPhoto)).toEqual(['0 36000 29145 2 | 1974-06-26.. | hard']);
});

test('a 13-digit number is softly later', () => {
  expect(said('barcode', '4006381333931', inPhoto)).toEqual([
    '4006381333931 | 1974-06-26.. | hard',
    '4006381333931 | 1977-01-01.. | soft',
  ]);
});

test('any one wrong digit is no barcode', () => {
  const digits = '4006381333931';
  for (let at = 0; at < digits.length; at += 1) {
    for (let wrong = 1; wrong < 10; wrong += 1) {
      const digit = (Number(digits[at]) + wrong) % 10;
      expect(isTradeNumber(digits.slice(0, at) + digit + digits.slice(at + 1))).toBe(false);
    }
  }
});

test('a QR code on a label is soft; a number in a listing says nothing of the piece', () => {
  expect(said('barcode', 'the label has a QR code', inListing)).toEqual(['QR code | 1994-01-01.. | soft']);
  expect(said('barcode', 'EAN 4006381333931', inListing)).toEqual([]);
});
