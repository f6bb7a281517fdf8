import { expect, test } from 'vitest';
import { readUnder } from './under';

const used: [string, string] = ['1990', '1999'];

test.each([
  ['TV95', ['1995']],
  ['tv95', ['1995']],
  ['TX95', []],
  ['95', []],
])('%s after fixed TV reads %j', (code, reads) => {
  expect(readUnder([{ literal: 'Tv' }, { year: 2 }], used, code)).toEqual(reads);
});

test('an optional one stands there whole or not at all', () => {
  const layout = [{ literal: 'NO', optional: true }, { year: 2 as const }];
  expect(['95', 'NO95', 'N95'].map((code) => readUnder(layout, used, code))).toEqual([['1995'], ['1995'], []]);
});
