import { expect, test } from 'vitest';
import { readUnder } from './under';

const used: [string, string] = ['1990', '2009'];

test.each([
  ['00195', ['1995-01-01']],
  ['36595', ['1995-12-31']],
  ['36696', ['1996-12-31']],
  ['36695', []],
  ['36796', []],
  ['00095', []],
])('day of the year %s reads %j (366 in leap years only)', (code, reads) => {
  expect(readUnder([{ dayOfYear: 3 }, { year: 2 }], used, code)).toEqual(reads);
});

test('turned digits', () => {
  expect(readUnder([{ dayOfYear: 3, reversed: true }, { year: 2 }], used, '10095')).toEqual(['1995-01-01']);
});
