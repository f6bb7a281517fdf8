import { expect, test } from 'vitest';
import { findMarks } from '../../../src/mark';
import { letterYears } from '../../../src/mark/hallmarks';
import { inListing, said } from './read';

test('all candidate years of the office are given, two calendar years each before 1975', () => {
  expect(said('hallmark-date-letter', 'silver lock hallmarked Birmingham, date letter D', inListing)).toEqual([
    'date letter D | 1852-01-01..1853-12-31, 1928-01-01..1929-12-31, 1953-01-01..1954-12-31, 1978-01-01..1978-12-31 | soft',
  ]);
});

test('without an office, or with two, there is no year', () => {
  expect(said('hallmark-date-letter', 'hallmarked, date letter D', inListing)).toEqual([
    'date letter D | no date | soft',
  ]);
  expect(said('hallmark-date-letter', 'London or Birmingham, date letter D', inListing)).toEqual([
    'date letter D | no date | soft',
  ]);
});

test("a shop's town in another sentence is no office", () => {
  expect(
    said('hallmark-date-letter', 'Sold from London. Hallmarked, date letter D. Sent from Sheffield.', inListing),
  ).toEqual(['date letter D | no date | soft']);
});

test('an office is known by its mark as well', () => {
  expect(said('hallmark-date-letter', 'anchor, lion, date letter "t"', inListing)).toEqual(
    said('hallmark-date-letter', 'Birmingham, lion, date letter "t"', inListing),
  );
});

test('a small and a capital letter are two letters', () => {
  expect(letterYears('London', 'a').map(({ year }) => year)).toEqual([1856, 1896, 1916, 1956, 2000]);
  expect(letterYears('London', 'A').map(({ year }) => year)).toEqual([1876, 1936, 1975]);
  expect(said('hallmark-date-letter', 'London, date letter small A', inListing)[0]).toContain('1856-01-01..1857-12-31');
});

test('letters that an office left out give no year, and earlier years are said to be possible', () => {
  expect(letterYears('London', 'J')).toEqual([]);
  expect(findMarks('Sheffield, date letter G', inListing)[0]?.cautions).toEqual([
    { kind: 'letter-style', first: 1850 },
  ]);
});

test('letters before 1975 are from memory, so the mark is soft and not verified', () => {
  expect(findMarks('London, date letter a', inListing)[0]).toMatchObject({ strength: 'soft', verified: false });
});
