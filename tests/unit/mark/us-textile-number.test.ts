import { expect, test } from 'vitest';
import { findMarks } from '../../../src/mark';
import { seriesNumber } from '../../../src/mark/us-textile-number';
import { inPhoto, said } from './read';

test.each([
  ['RN 13670', 'RN 13670 | 1959-01-01.. | hard'],
  ['RN# 54321', 'RN# 54321 | 1959-01-01.. | hard'],
  ['RN 500', 'RN 500 | 1952-01-01.. | hard'],
  ['WPL 500', 'WPL 500 | 1941-07-14.. | hard'],
  ['WPL 13670', 'WPL 13670 | no date | soft'],
  ['RN 9000', 'RN 9000 | no date | soft'],
])('%s', (text, expected) => expect(said('us-textile-number', text)).toEqual([expected]));

test('the ranges have their ends where the tables put them', () => {
  const state = (series: 'RN' | 'WPL', number: number) => seriesNumber(series, number).state;
  expect([100, 101, 4086, 4087, 13_669, 13_670].map((number) => state('RN', number))).toEqual([
    'not-issued',
    'issued',
    'issued',
    'not-issued',
    'not-issued',
    'issued',
  ]);
  expect([100, 101, 13_669, 13_670].map((number) => state('WPL', number))).toEqual([
    'not-issued',
    'issued',
    'issued',
    'not-issued',
  ]);
});

test('it dates the registration, not the piece, and says nothing of the country', () => {
  const [read] = findMarks('RN 13670', inPhoto);
  expect(read?.cautions).toEqual([{ kind: 'company-not-piece' }]);
  expect(read?.places).toEqual([]);
});

test.each(['rn 13670', 'Return 13670', 'RN-ish', 'RN 12', 'MODERN 13670'])('nothing is read from "%s"', (text) =>
  expect(said('us-textile-number', text)).toEqual([]),
);
