import { expect, test } from 'vitest';
import type { Plant } from '../../../../src/maker/types';
import { readUnder } from './under';

const plants: Plant[] = [
  { code: 'KV', place: 'BE', used: ['1980', '1994'] },
  {
    code: 'KV',
    place: 'FR',
    used: [
      ['1970', '1975'],
      ['1995', null],
    ],
  },
  { code: 'H', place: 'ES', used: ['1980', null] },
];
const used: [string, string] = ['1980', '1999'];

test.each([
  ['KV90', ['1990, BE']],
  ['KV97', ['1997, FR']],
  ['QQ90', []],
  ['H90', []],
])('%s: a letter code means the place that used it then: %j', (code, reads) => {
  expect(readUnder([{ plant: 2 }, { year: 2 }], used, code, plants)).toEqual(reads);
});

test('without plants on file any letters fit and name no place', () => {
  expect(readUnder([{ plant: 2 }, { year: 2 }], used, 'QQ90')).toEqual(['1990']);
  expect(readUnder([{ plant: 2 }, { year: 2 }], used, '1290')).toEqual([]);
});
