import { describe, expect, test } from 'vitest';
import { findMarks } from '../../src/mark';
import { readDiamond } from '../../src/mark/diamond';
import { finenessOf, letterYears, type Office, offices } from '../../src/mark/hallmarks';
import { placeInSeries, type SeriesRow } from '../../src/mark/number-series';
import { grantOf } from '../../src/mark/patents';
import { registrationOf } from '../../src/mark/uk-registered-design';
import { seriesNumber } from '../../src/mark/us-textile-number';
import { readFixture } from './fixture';

interface YearRow {
  year: number;
  first: number;
  verified: string;
}
interface Patents {
  utility: YearRow[];
  design: YearRow[];
  milestones: { rows: [number, string][] };
  test_cases: [string, string | number, string][];
  tuesday_test: [string, string][];
}
const skipped = 'skipped: not present';
const patents = readFixture<Patents>('reference/us_patents.json');

const yearOf = (date: string | number) => Number(String(date).slice(0, 4));

describe.skipIf(!patents)(`US patents (reference/us_patents.json; ${skipped})`, () => {
  test.each(['utility', 'design'] as const)(
    '%s: strictly rising, and right at first-1, first and first+1 of every year',
    (series) => {
      const rows = patents![series];
      for (const [at, { year, first, verified }] of rows.entries()) {
        const before = rows[at - 1];
        if (before) expect(first).toBeGreaterThan(before.first);
        expect(grantOf(series, first)?.year).toBe(year);
        expect(grantOf(series, first - 1)?.year).toBe(before?.year);
        const next = rows[at + 1];
        if (next && next.first > first + 1) expect(grantOf(series, first + 1)?.year).toBe(year);
        if (verified !== 'stored') expect(grantOf(series, first)?.verified).toBe(false);
      }
      const last = rows.at(-1)!;
      expect(grantOf(series, last.first + 5_000_000)).toMatchObject({ year: last.year, beyond: true });
      expect(grantOf(series, 0)).toBeNull();
      expect(grantOf(series, -1)).toBeNull();
    },
  );

  test.each(patents?.test_cases ?? [])('patent %s was granted in %s', (number, date) => {
    const isDesign = number.startsWith('D');
    expect(grantOf(isDesign ? 'design' : 'utility', Number(number.replace('D', '')))?.year).toBe(yearOf(date));
  });

  test.each(patents?.milestones.rows ?? [])('number %d was granted on %s, and that day is firm', (number, day) => {
    const grant = grantOf('utility', number);
    expect(grant?.year).toBe(yearOf(day));
    expect(grant?.firmSince).toBe(day);
  });

  test.each(patents?.tuesday_test ?? [])('%s, a %s, asks for no second look', (day) => {
    const month = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'][
      Number(day.slice(5, 7)) - 1
    ];
    const [read] = findMarks(`Pat. ${month}. ${Number(day.slice(8))}, ${day.slice(0, 4)}`, {
      foundIn: 'photo',
      photoId: 'p',
    });
    expect(read?.spans).toEqual([{ from: day, to: null, precision: 'range' }]);
    expect(read?.cautions).not.toContainEqual({ kind: 'not-tuesday' });
  });
});

interface Designs {
  rd_numbers: { rows: YearRow[] };
  diamond: {
    year_letters_1842_1867: Record<string, number>;
    year_letters_1868_1883: Record<string, number>;
    month_letters: Record<string, number>;
  };
}
const designs = readFixture<Designs>('reference/uk_registered_designs.json');

describe.skipIf(!designs)(`UK registered designs (reference/uk_registered_designs.json; ${skipped})`, () => {
  test('the year is among the answers at every boundary, and one year either way beside it', () => {
    const rows = designs!.rd_numbers.rows;
    for (const [at, { year, first, verified }] of rows.entries()) {
      if (at > 0) expect(first).toBeGreaterThan(rows[at - 1]!.first);
      const [from, to] = registrationOf(first)!.years;
      expect(from <= year && year <= to).toBe(true);
      if (at > 0) expect(registrationOf(first - 1)!.years).toEqual([expect.any(Number), year]);
      expect(registrationOf(first)!.verified).toBe(verified === 'stored');
    }
    expect(registrationOf(0)).toBeNull();
    expect(registrationOf(rows.at(-1)!.first + 1)?.beyond).toBe(true);
  });

  test('published examples of numbers', () => {
    expect(registrationOf(821_265)?.years).toEqual([1937, 1937]);
    expect(registrationOf(675)?.years).toEqual([1884, 1884]);
    expect(registrationOf(19_753)?.years[0]).toBe(1884);
  });

  test('published examples of diamond marks', () => {
    expect(readDiamond({ top: 'E', left: 'E', right: '31', bottom: '2' })).toMatchObject({ days: ['1855-05-31'] });
    expect(readDiamond({ top: 'N', left: 'A', right: '2', bottom: '5' })).toMatchObject({ days: ['1864-12-02'] });
    expect(readDiamond({ top: '1', left: '5', right: 'K', bottom: 'R' })).toMatchObject({ days: ['1883-08-01'] });
    expect(readDiamond({ top: '28', left: '5', right: 'Y', bottom: 'K' })).toMatchObject({ days: ['1879-11-28'] });
  });

  test('every letter of both series gives its year and month, and every other letter is refused', () => {
    const { year_letters_1842_1867: early, year_letters_1868_1883: late, month_letters: months } = designs!.diamond;
    for (const letter of 'ABCDEFGHIJKLMNOPQRSTUVWXYZ') {
      const first = readDiamond({ top: letter, left: 'C', right: '5', bottom: '1' });
      const second = readDiamond({ top: '5', left: '1', right: letter, bottom: 'C' });
      expect(first.ok ? first.days[0] : null).toBe(early[letter] ? `${early[letter]}-01-05` : null);
      expect(second.ok ? second.days[0] : null).toBe(late[letter] ? `${late[letter]}-01-05` : null);
      const month = readDiamond({ top: 'E', left: letter, right: '5', bottom: '1' });
      expect(month.ok ? Number(month.days[0]!.slice(5, 7)) : null).toBe(months[letter] ?? null);
    }
  });
});

interface Hallmarks {
  uniform: { rows: [number, string][] };
  offices: Record<Office, { rows: [number, string, string][] }>;
  fineness_now: Record<string, number[]>;
}
const hallmarks = readFixture<Hallmarks>('reference/uk_hallmarks.json');

describe.skipIf(!hallmarks)(`UK hallmarks (reference/uk_hallmarks.json; ${skipped})`, () => {
  test.each(offices)(
    '%s: every row is among the candidates of its letter, and no candidate is without a row',
    (office) => {
      const { rows } = hallmarks!.offices[office];
      const letters = [...new Set(rows.map(([, letter]) => letter))];
      for (const letter of letters) {
        const years = rows.filter(([, one]) => one === letter).map(([year]) => year);
        expect(
          letterYears(office, letter)
            .map(({ year }) => year)
            .sort(),
        ).toEqual(years.sort());
      }
    },
  );

  test('worked examples', () => {
    for (const office of offices) expect(letterYears(office, 't').map(({ year }) => year)).toContain(2018);
    expect(letterYears('London', 'a').map(({ year }) => year)).toEqual([1856, 1896, 1916, 1956, 2000]);
    expect(letterYears('Birmingham', 'D').map(({ year }) => year)).toEqual([1852, 1928, 1953, 1978]);
    expect(finenessOf('silver', 800).ukSince).toBe('1999-01-01');
  });

  test('exactly 800, 990, 999, 850 and 900 are new in 1999', () => {
    const added = (['gold', 'silver', 'platinum'] as const).map((metal) =>
      hallmarks!.fineness_now[metal]!.filter((parts) => finenessOf(metal, parts).ukSince !== null),
    );
    expect(added).toEqual([
      [990, 999],
      [800, 999],
      [850, 900, 999],
    ]);
  });
});

interface Numbers {
  number_ranges: { series: 'RN' | 'WPL'; first: number; last: number | null; issued?: boolean; issued_from?: number }[];
}
const numbers = readFixture<Numbers>('reference/us_textile_labels.json');

describe.skipIf(!numbers)(`RN and WPL numbers (reference/us_textile_labels.json; ${skipped})`, () => {
  test('every range at its ends', () => {
    for (const { series, first, last, issued, issued_from: from } of numbers!.number_ranges) {
      const expected = issued === false ? { state: 'not-issued' } : { state: 'issued', from };
      expect(seriesNumber(series, first)).toEqual(expected);
      if (last !== null) expect(seriesNumber(series, last)).toEqual(expected);
    }
    expect(seriesNumber('WPL', 13_670)).toEqual({ state: 'not-issued' });
    expect(seriesNumber('RN', 100)).toEqual({ state: 'not-issued' });
  });
});

test('numbers below the first row of a series have no place, and those of the last row have no end', () => {
  const rows: SeriesRow[] = [
    { since: '1990', first: 10, verified: true },
    { since: '1991', first: 20, verified: false },
  ];
  expect(placeInSeries(rows, 9)).toBeNull();
  expect(placeInSeries(rows, 10)).toMatchObject({ row: rows[0], above: 0, below: 10, beyond: false });
  expect(placeInSeries(rows, 19)).toMatchObject({ row: rows[0], below: 1 });
  expect(placeInSeries(rows, 21)).toMatchObject({ row: rows[1], firm: rows[0], below: null, beyond: true });
});
