import { expect, test } from 'vitest';
import { readUnder } from './under';

const used: [string, string] = ['1990', '2009'];

test.each([
  ['311295', ['1995-12-31']],
  ['290296', ['1996-02-29']],
  ['290295', []],
  ['320195', []],
  ['000195', []],
])('day, month, year %s reads %j', (code, reads) => {
  expect(readUnder([{ day: 2 }, { month: 2 }, { year: 2 }], used, code)).toEqual(reads);
});

test('tens and units apart', () => {
  expect(readUnder([{ day: 'units' }, { month: 2 }, { day: 'tens' }, { year: 2 }], used, '112395')).toEqual([
    '1995-12-31',
  ]);
});
