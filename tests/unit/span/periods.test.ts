import { expect, test } from 'vitest';
import { quarterSpan, sinceSpan, spanWords, widenSpan, yearSpan, yearsSpan } from '../../../src/span';
import { decadeSpan } from './decade';

const days = ({ from, to }: { from: string | null; to: string | null }) => `${from ?? ''}..${to ?? ''}`;

test.each([
  ['the 1990s', decadeSpan(1990), '1990-01-01..1999-12-31'],
  ['quarter 2 of 1996', quarterSpan(1996, 2), '1996-04-01..1996-06-30'],
  ['1988 and later', yearsSpan(1988, null), '1988-01-01..'],
  ['up to 1988', yearsSpan(null, 1988), '..1988-12-31'],
  ['since a day', sinceSpan('1963-07-01'), '1963-07-01..'],
])('%s', (_words, span, expected) => expect(days(span)).toBe(expected));

test('"about" is widened by days, at each end its own, and then said no more', () => {
  const widened = widenSpan({ ...yearSpan(1994), about: true }, { before: 365, after: 31 });
  expect(widened).toEqual({ from: '1993-01-01', to: '1995-01-31', precision: 'range' });
  expect(spanWords(widened)).toBe('1993 to January 1995');
});

test('open ends stay open, and the calendar has ends', () => {
  expect(days(widenSpan(yearsSpan(null, 1988), { before: 9, after: 731 }))).toBe('..1991-01-01');
  expect(
    days(widenSpan({ from: '0002-01-01', to: '9998-12-31', precision: 'range' }, { before: 1830, after: 1830 })),
  ).toBe('0001-01-01..9999-12-31');
});

test('says a part of one year by its months, and whole years by their numbers', () => {
  expect(spanWords({ from: '1992-01-01', to: '1992-02-29', precision: 'range' })).toBe('January 1992 to February 1992');
  expect(spanWords({ from: '1992-01-01', to: '1992-12-31', precision: 'range' })).toBe('1992');
  expect(spanWords({ from: '1988-01-01', to: '2003-12-31', precision: 'range' })).toBe('1988 to 2003');
});
