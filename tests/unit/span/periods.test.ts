import { expect, test } from 'vitest';
import {
  beforeSpan,
  collectionSpan,
  decadeSpan,
  quarterSpan,
  seasonSpan,
  sinceSpan,
  spanWords,
  widenSpan,
  yearPartSpan,
  yearSpan,
  yearsSpan,
} from '../../../src/span';

const days = ({ from, to }: { from: string | null; to: string | null }) => `${from ?? ''}..${to ?? ''}`;

test.each([
  ['the 1990s', decadeSpan(1990), '1990-01-01..1999-12-31'],
  ['early 1990s', decadeSpan(1990, 'early'), '1990-01-01..1993-12-31'],
  ['mid 1990s', decadeSpan(1990, 'mid'), '1994-01-01..1996-12-31'],
  ['late 1990s', decadeSpan(1990, 'late'), '1997-01-01..1999-12-31'],
  ['early 1994', yearPartSpan(1994, 'early'), '1994-01-01..1994-04-30'],
  ['late 1994', yearPartSpan(1994, 'late'), '1994-09-01..1994-12-31'],
  ['spring 1996', seasonSpan(1996, 'spring'), '1996-03-01..1996-05-31'],
  ['winter 1995, which ends on a leap day', seasonSpan(1995, 'winter'), '1995-12-01..1996-02-29'],
  ['spring and summer collection 1996', collectionSpan(1996, 'spring-summer'), '1995-09-01..1996-08-31'],
  ['autumn and winter collection 1995', collectionSpan(1995, 'autumn-winter'), '1995-03-01..1996-02-29'],
  ['quarter 2 of 1996', quarterSpan(1996, 2), '1996-04-01..1996-06-30'],
  ['1988 and later', yearsSpan(1988, null), '1988-01-01..'],
  ['up to 1988', yearsSpan(null, 1988), '..1988-12-31'],
  ['before 1980', beforeSpan('1980-01-01'), '..1979-12-31'],
  ['since a day', sinceSpan('1963-07-01'), '1963-07-01..'],
])('%s', (_words, span, expected) => expect(days(span)).toBe(expected));

test('early, mid and late are the whole decade, without a gap or an overlap', () => {
  const parts = (['early', 'mid', 'late'] as const).map((part) => decadeSpan(1980, part));
  expect(parts.map(days)).toEqual(['1980-01-01..1983-12-31', '1984-01-01..1986-12-31', '1987-01-01..1989-12-31']);
});

test('"about" is widened by whole years and then said no more', () => {
  const widened = widenSpan({ ...yearSpan(1994), about: true }, 5);
  expect(widened).toEqual({ from: '1989-01-01', to: '1999-12-31', precision: 'range' });
  expect(spanWords(widened)).toBe('1989 to 1999');
});

test('open ends stay open, leap days fall back, and the calendar has ends', () => {
  expect(days(widenSpan(yearsSpan(null, 1988), 2))).toBe('..1990-12-31');
  expect(days(widenSpan({ from: '1996-02-29', to: '1996-02-29', precision: 'day' }, 1))).toBe('1995-02-28..1997-02-28');
  expect(days(widenSpan({ from: '0002-01-01', to: '9998-12-31', precision: 'range' }, 5))).toBe(
    '0001-01-01..9999-12-31',
  );
});

test('says a part of one year by its months, and whole years by their numbers', () => {
  expect(spanWords({ from: '1992-01-01', to: '1992-02-29', precision: 'range' })).toBe('January 1992 to February 1992');
  expect(spanWords({ from: '1992-01-01', to: '1992-12-31', precision: 'range' })).toBe('1992');
  expect(spanWords({ from: '1988-01-01', to: '2003-12-31', precision: 'range' })).toBe('1988 to 2003');
});
