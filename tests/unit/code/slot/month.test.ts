import { expect, test } from 'vitest';
import { faultOf, readUnder } from './under';

const used: [string, string] = ['1990', '1999'];

test.each([
  [2, '0195', ['1995-01']],
  [2, '1295', ['1995-12']],
  [2, '0095', []],
  [2, '1395', []],
  ['1-9', '995', ['1995-09']],
  ['1-9', '095', []],
  ['1-9', 'O95', []],
  ['1-9OND', 'O95', ['1995-10']],
  ['1-9OND', 'D95', ['1995-12']],
  ['letter', 'L95', ['1995-12']],
  ['letter', 'M95', []],
] as const)('month %s, %s reads %j', (month, code, reads) => {
  expect(readUnder([{ month }, { year: 2 }], used, code)).toEqual(reads);
});

test('own letters, turned digits, and tens apart from units', () => {
  expect(readUnder([{ month: 'letter', letters: 'ABCDEFGHKLMN' }, { year: 2 }], used, 'N95')).toEqual(['1995-12']);
  expect(readUnder([{ month: 2, reversed: true }, { year: 2 }], used, '2195')).toEqual(['1995-12']);
  expect(readUnder([{ month: 'units' }, { year: 2 }, { month: 'tens' }], used, '2951')).toEqual(['1995-12']);
  expect(faultOf([{ month: 'tens' }, { year: 2 }])).toBe('the month has only its tens or only its units');
});
