import { expect, test } from 'vitest';
import { faultOf, readUnder } from './under';

test.each([
  [4, '1995', ['1990', '1999'], ['1995']],
  [2, '95', ['1990', '1999'], ['1995']],
  // A period that crosses a century, and one longer than a hundred years.
  [2, '03', ['1990', '2010'], ['2003']],
  [2, '95', ['1890', '1999'], ['1895', '1995']],
  // Outside the period the nearest year is read, and the reading says so.
  [2, '89', ['1990', '1999'], ['1989']],
  // A period that still lasts does not reach round to the year before it began.
  [2, '06', ['2007', null], ['2006']],
  [2, '95', ['1900', null], ['1995']],
  [2, '26', ['1970', null], ['2026']],
  [1, '5', ['1990', '1999'], ['1995']],
  [1, '5', ['1990', '2009'], ['1995', '2005']],
] as const)('a year of %i digits, %s in %j, reads %j', (year, code, used, reads) => {
  expect(readUnder([{ year }], [...used], code)).toEqual(reads);
});

test('tens and units stand anywhere, and units alone are a year of one digit', () => {
  expect(readUnder([{ year: 'units' }, { any: 1 }, { year: 'tens' }], ['1990', '1999'], '5X9')).toEqual(['1995']);
  expect(readUnder([{ any: 1 }, { year: 'units' }], ['1990', '1999'], 'X5')).toEqual(['1995']);
  expect(faultOf([{ year: 'tens' }])).toBe('the year has only its tens or only its units');
  expect(faultOf([{ year: 2 }, { year: 'units' }])).toBe('the year stands there twice');
  expect(faultOf([{ year: 2 }, { year: 4 }])).toBe('the year is written in two ways');
});

test('reversed digits are turned round', () => {
  expect(readUnder([{ year: 2, reversed: true }], ['1950', '1999'], '59')).toEqual(['1995']);
  expect(readUnder([{ year: 4, reversed: true }], ['1950', '1999'], '5991')).toEqual(['1995']);
});

test('a cycle starts again after its last letter, skips letters not listed, and begins no earlier than its first year', () => {
  const cycle = [{ year: 'cycle' as const, letters: 'ABCDEFGHKL', first: 1962 }];
  expect(readUnder(cycle, ['1962', '1971'], 'K')).toEqual(['1970']);
  expect(readUnder(cycle, ['1962', '1985'], 'A')).toEqual(['1962', '1972', '1982']);
  expect(readUnder(cycle, ['1950', '1971'], 'A')).toEqual(['1962']);
  expect(readUnder(cycle, ['1962', '1971'], 'I')).toEqual([]);
});

test('an enclosed letter is written in brackets, which may be missing; a plain one has none', () => {
  const letters = 'ABCDE';
  const enclosed = [{ year: 'cycle' as const, letters, first: 1990, enclosed: true }];
  expect(['(C)', '[C]', 'C'].map((code) => readUnder(enclosed, ['1990', '1994'], code))).toEqual([
    ['1992'],
    ['1992'],
    ['1992'],
  ]);
  expect(readUnder([{ year: 'cycle', letters, first: 1990, enclosed: false }], ['1990', '1994'], '(C)')).toEqual([]);
});
