import { expect, test } from 'vitest';
import { readUnder } from './under';

const used: [string, string] = ['1990', '1999'];

test.each([
  ['03-95', true, ['1995-03']],
  ['03/95', true, ['1995-03']],
  ['0395', true, ['1995-03']],
  ['0395', false, []],
  ['03.95', true, []],
  ['03--95', true, []],
])('%s with a separator that may be missing (%s) reads %j', (code, optional, reads) => {
  expect(readUnder([{ month: 2 }, { separator: '-/', optional }, { year: 2 }], used, code)).toEqual(reads);
});

test('one kind of dash is as good as another', () => {
  expect(readUnder([{ month: 2 }, { separator: '–' }, { year: 2 }], used, '03-95')).toEqual(['1995-03']);
  expect(readUnder([{ month: 2 }, { separator: '-' }, { year: 2 }], used, '03—95')).toEqual(['1995-03']);
});
