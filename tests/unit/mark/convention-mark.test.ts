import { expect, test } from 'vitest';
import { said } from './read';

test('the common control mark is not older than 27 June 1975', () => {
  expect(said('convention-mark', 'lock with a Common Control Mark')).toEqual([
    'Common Control Mark | 1975-06-27.. | hard',
  ]);
  expect(said('convention-mark', 'a hallmark with balance scales')).toEqual([
    'hallmark with balance scales | 1975-06-27.. | hard',
  ]);
});

test.each(['scales of a fish', 'python scales', 'a mark on the scales pattern'])('nothing is read from "%s"', (text) =>
  expect(said('convention-mark', text)).toEqual([]),
);
