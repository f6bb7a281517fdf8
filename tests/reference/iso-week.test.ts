import { getISOWeeksInYear, setISOWeek, startOfISOWeek } from 'date-fns';
import { DateTime } from 'luxon';
import { describe, expect, test } from 'vitest';
import { decodeExactly } from '../../src/code';
import { readFixture } from './fixture';
import { chanceFrom, readSystem } from './number-systems';

const file = readSystem('iso-week');
const monday = (year: number, week: number): string | null =>
  decodeExactly(`${year}-W${String(week).padStart(2, '0')}`, file)[0]?.span?.from ?? null;

interface Published {
  long_years: number[];
  boundary_dates: { date: string; iso: string }[];
}
const published = readFixture<Published>('reference/iso_week_years.json');

describe.skipIf(!published)('ISO week years (reference/iso_week_years.json; skipped: not present)', () => {
  test('exactly the published long years of 1900 to 2099 have a week 53', () => {
    const long = Array.from({ length: 200 }, (_, step) => 1900 + step).filter((year) => monday(year, 53) !== null);
    expect(long).toEqual(published?.long_years);
  });

  test.each(published?.boundary_dates ?? [])('$date lies in $iso', ({ date, iso }) => {
    const span = decodeExactly(iso.slice(0, 8), file)[0]?.span;
    expect(span && span.from! <= date && date <= span.to!).toBe(true);
  });
});

const seed = 8601;
test(`agrees with luxon on 10,000 weeks, possible and impossible (seed ${seed})`, () => {
  const chance = chanceFrom(seed);
  for (let round = 0; round < 10_000; round++) {
    const year = 1900 + Math.floor(chance() * 200);
    const week = Math.floor(chance() * 60);
    const theirs = DateTime.fromISO(`${year}-W${String(week).padStart(2, '0')}-1`, { zone: 'utc' });
    expect(monday(year, week), `${year} week ${week}`).toBe(theirs.isValid ? theirs.toISODate() : null);
  }
}, 60_000);

test('agrees with date-fns on every week of 1900 to 2099', () => {
  for (let year = 1900; year < 2100; year++) {
    const inYear = new Date(year, 6, 1);
    expect(monday(year, 53) === null ? 52 : 53).toBe(getISOWeeksInYear(inYear));
    for (let week = 1; week <= getISOWeeksInYear(inYear); week++) {
      const start = startOfISOWeek(setISOWeek(inYear, week));
      const day = [start.getFullYear(), start.getMonth() + 1, start.getDate()];
      expect(monday(year, week)?.split('-').map(Number), `${year} week ${week}`).toEqual(day);
    }
  }
}, 60_000);
