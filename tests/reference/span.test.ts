import { getISOWeek, getISOWeekYear } from 'date-fns';
import { describe, expect, test } from 'vitest';
import { addDays, dayOfYearSpan, isoWeekSpan, isoWeeksInYear } from '../../src/span';
import { readFixture } from './fixture';

interface Weeks {
  long_years: number[];
  count_2000_2399: number;
  boundary_dates: { date: string; iso: string }[];
}
const weeks = readFixture<Weeks>('reference/iso_week_years.json');

describe.skipIf(!weeks)('ISO 8601 weeks (reference/iso_week_years.json; skipped: not present)', () => {
  test('week 53 exists in exactly the published long years', () => {
    const years = Array.from({ length: 200 }, (_, at) => 1900 + at);
    expect(years.filter((year) => isoWeeksInYear(year) === 53)).toEqual(weeks!.long_years);
    const cycle = Array.from({ length: 400 }, (_, at) => 2000 + at);
    expect(cycle.filter((year) => isoWeeksInYear(year) === 53)).toHaveLength(weeks!.count_2000_2399);
  });

  test.each(weeks?.boundary_dates ?? [])('$date is $iso', ({ date, iso }) => {
    const [year, week, weekday] = iso.split(/-W|-/).map(Number);
    const span = isoWeekSpan(year!, week!);
    expect(span && addDays(span.from!, weekday! - 1)).toBe(date);
  });
});

test('weeks 00, 54 and 53 of a short year do not exist', () => {
  expect([isoWeekSpan(2004, 0), isoWeekSpan(2004, 54), isoWeekSpan(2005, 53), isoWeekSpan(2005, 1.5)]).toEqual([
    null,
    null,
    null,
    null,
  ]);
});

test('every day of 1999 to 2030 lies in the week that date-fns gives it', () => {
  for (let day = '1999-01-01'; day < '2031-01-01'; day = addDays(day, 1)) {
    const date = new Date(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8)));
    const span = isoWeekSpan(getISOWeekYear(date), getISOWeek(date));
    if (!(span && span.from! <= day && day <= span.to!)) expect.fail(`${day} is not in its week`);
  }
});

test('day 366 exists in leap years only', () => {
  expect(dayOfYearSpan(1996, 366)?.from).toBe('1996-12-31');
  expect(dayOfYearSpan(1995, 366)).toBeNull();
  expect(dayOfYearSpan(1995, 0)).toBeNull();
  expect(dayOfYearSpan(1900, 366)).toBeNull();
});
