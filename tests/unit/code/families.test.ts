import { expect, test } from 'vitest';
import { codeFamilies, decodeText, readsOf } from '../../../src/code';
import { strings } from '../../../src/words';

const read = (code: string) =>
  decodeText(code, { makers: [], maker: null, now: '2026-11-25' }).readings.map(
    (reading) => `${readsOf(reading)} ${reading.system.id}`,
  );

test('both orders of month and year are read, and no single house’s decades push a date', () => {
  expect(read('0512AB')).toEqual(['2005-12 year-month-plant', '2012-05 month-year-plant']);
  expect(read('0512')).toEqual([
    '2005-12 year-month',
    '2012-05 month-year',
    '2012-W05 week-year',
    '2005-W12 year-week',
  ]);
});

test('strokes and dots stand between month or week and year', () => {
  expect(read('5/87')[0]).toBe('1987-05 month-stroke-year');
  expect(read('05.1987')).toEqual(['1987-05 month-stroke-year']);
  expect(read('87-11')).toContain('1987-11 year-stroke-month');
  expect(read('41/88')).toContain('1988-W41 week-stroke-year');
});

test('letters, in a frame or not, and running numbers date nothing', () => {
  expect(read('(K)')).toEqual(['undated framed-letter']);
  expect(read('(K)1234')).toEqual(['undated letter-cycle', 'undated framed-letter']);
  expect(read('12345678')).toEqual(['undated serial']);
});

test('a typed code that fits as it stands is not told to be near to itself', () => {
  const { readings, nearest } = decodeText('123456', { makers: [], maker: null, now: '2026-11-25' });
  expect(readings.map(({ system }) => system.id)).toEqual(['serial']);
  expect(nearest).toEqual([]);
});

test('every family has its words, and none has years of its own', () => {
  expect(codeFamilies.filter(({ id }) => !strings.stamp.families[id])).toEqual([]);
  expect(new Set(codeFamilies.map(({ used }) => used.join()))).toEqual(new Set(['1940,']));
});
