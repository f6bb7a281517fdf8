import { expect, test } from 'vitest';
import { readUnder } from './under';

const used: [string, string] = ['1990', '1999'];

test.each([
  [1, '195', ['1995-Q1']],
  [1, '495', ['1995-Q4']],
  [1, '595', []],
  ['WXYZ', 'Y95', ['1995-Q3']],
  ['WXYZ', '395', []],
] as const)('quarter %s, %s reads %j', (quarter, code, reads) => {
  expect(readUnder([{ quarter }, { year: 2 }], used, code)).toEqual(reads);
});
