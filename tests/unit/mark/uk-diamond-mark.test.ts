import { expect, test } from 'vitest';
import { readDiamond } from '../../../src/mark/diamond';
import { inListing, said } from './read';

const read = (top: string, left: string, right: string, bottom: string) => readDiamond({ top, left, right, bottom });

test('a number in the right corner is 1842 to 1867, a letter there 1868 to 1883', () => {
  expect(read('E', 'E', '31', '2')).toEqual({ ok: true, layout: '1842', days: ['1855-05-31'], verified: true });
  expect(read('1', '5', 'K', 'R')).toEqual({ ok: true, layout: '1868', days: ['1883-08-01'], verified: true });
});

test('letters that a series lacks are refused, and so are days that a month lacks', () => {
  expect(read('1', '5', 'T', 'R')).toEqual({ ok: false, why: { kind: 'year-letter', is: 'T', series: '1868-1883' } });
  expect(read('E', 'X', '3', '2')).toEqual({ ok: false, why: { kind: 'month-letter', is: 'X' } });
  expect(read('E', 'G', '30', '2')).toEqual({ ok: false, why: { kind: 'no-day', month: 'G', day: 30 } });
  expect(read('E', 'G', '?', '2')).toEqual({ ok: false, why: { kind: 'right-corner', is: '?' } });
});

test('the letters of 1857, 1860 and March 1878 that broke the rule', () => {
  expect(read('K', 'R', '12', '1')).toMatchObject({ days: ['1857-08-12', '1857-09-12'] });
  expect(read('K', 'R', '25', '1')).toMatchObject({ days: ['1857-08-25'] });
  expect(read('Z', 'K', '3', '1')).toMatchObject({ days: ['1860-11-03', '1860-12-03'] });
  expect(read('4', '7', 'W', 'G')).toMatchObject({ days: ['1878-03-04'], verified: false });
  expect(read('9', '7', 'W', 'G').ok).toBe(false);
});

test('a mark that a listing describes is read', () => {
  const text = 'with a diamond registration mark, class I, top E, left E, right 31, bottom 2 on the lock';
  expect(said('uk-diamond-mark', text, inListing)).toEqual([
    'diamond registration mark, class I, top E, left E, right 31, bottom 2 | 1855-05-31.. | hard',
  ]);
});

test('a mark with letters that do not go together dates nothing', () => {
  const text = 'diamond mark: top 1, left 5, right T, bottom R';
  expect(said('uk-diamond-mark', text, inListing)).toEqual([`${text} | no date | soft`]);
});

test.each(['diamond quilting, top handle', 'a diamond mark on the lining', 'diamond pattern, top 3, left'])(
  'nothing is read from "%s"',
  (text) => expect(said('uk-diamond-mark', text, inListing)).toEqual([]),
);
