import { describe, expect, it, test } from 'vitest';
import { type Dating, layOutAxis, reason } from '../../../src/evidence';
import { type Span, yearSpan, yearsSpan } from '../../../src/span';
import { claimed, coded, marked, piece } from './samples';

const layOut = (...evidence: Dating[]) => layOutAxis(evidence, reason(evidence))!;
const of = (first: number | null, last: number | null, over: Partial<Dating> = {}, id = `${first}-${last}`) =>
  piece(id, { spans: [yearsSpan(first, last)], ...over });
const soft = { strength: 'soft' } as const;
const days = (from: string, to: string) =>
  (Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000;

describe('the years of the axis', () => {
  const years = (...evidence: Dating[]) => layOut(...evidence).years.join('–');

  it('have a twentieth of their length as room at both ends, and a year at least', () => {
    expect(years(of(1990, 1990))).toBe('1989–1991');
    expect(years(of(1990, 2019))).toBe('1989–2020');
    expect(years(of(1990, 2020))).toBe('1988–2022');
    expect(years(of(1990, 2040))).toBe('1987–2043');
  });

  it('stay within those that a day can be of', () => {
    expect([2, 1].map((year) => years(of(year, year)))).toEqual(['1–3', '1–2']);
    expect([9997, 9998].map((year) => years(of(year, year)))).toEqual(['9996–9998', '9997–9998']);
  });

  it('are those around the closed dates of hard evidence, else of soft evidence, else of every end', () => {
    const far = of(1900, 1900, soft);
    expect(years(of(1990, 1990), far)).toBe('1989–1991');
    expect(years(of(1990, null), far)).toBe('1899–1901');
    expect(years(of(1990, null), of(null, 1950, soft))).toBe('1948–1992');
    expect(years(of(1990, 1990, soft), of(1900, null))).toBe('1989–1991');
    expect(years(of(1990, 1990, soft), of(1940, 1940, soft))).toBe('1937–1993');
  });

  it('reach to ends within ten years of the core', () => {
    expect([1980, 1979].map((year) => years(of(1990, 1990), of(year, null, soft)))).toEqual(['1979–1991', '1989–1991']);
    expect([2000, 2001].map((year) => years(of(1990, 1990), of(null, year, soft)))).toEqual(['1989–2001', '1989–1991']);
  });
});

describe('the ticks of the axis', () => {
  it.each([
    [1990, 1993, 1, 1989, 6],
    [1990, 1994, 2, 1990, 3],
    [1990, 2000, 5, 1990, 3],
    [1990, 2016, 5, 1990, 6],
    [1990, 2019, 10, 1990, 4],
    [1950, 2003, 10, 1950, 6],
    [1950, 2009, 20, 1960, 3],
    [1900, 2008, 20, 1900, 6],
    [1900, 2012, 50, 1900, 3],
    [1740, 2010, 50, 1750, 6],
    [1700, 2000, 100, 1700, 4],
    [1460, 2000, 100, 1500, 6],
    [1400, 2000, 200, 1400, 4],
    [920, 2000, 200, 1000, 6],
    [800, 2000, 500, 1000, 3],
    [300, 3000, 500, 500, 6],
    [1, 3000, 1000, 1000, 3],
    [500, 5900, 1000, 1000, 6],
    [500, 6500, 2000, 2000, 3],
    [1, 9998, 2000, 2000, 4],
  ])('of %i to %i are %i years apart from %i on, %i of them', (from, to, step, first, count) => {
    const { ticks, years } = layOut(of(from, to));
    expect(ticks.map(({ year }) => year)).toEqual(Array.from({ length: count }, (_, at) => first + at * step));
    expect(first - step).toBeLessThan(years[0]);
    expect(first + count * step).toBeGreaterThan(years[1]);
  });

  it('stand where their year begins', () => {
    const { ticks } = layOut(of(1990, 1994));
    const length = days('1989-01-01', '1996-01-01');
    expect(ticks.map(({ at }) => at)).toEqual(
      ['1990-01-01', '1992-01-01', '1994-01-01'].map((day) => expect.closeTo(days('1989-01-01', day) / length, 12)),
    );
    const early = layOut(of(5, 9)).ticks;
    expect(early.map(({ year, at }) => [year, Number(at.toFixed(2))])).toEqual([
      [4, 0],
      [6, 0.29],
      [8, 0.57],
      [10, 0.86],
    ]);
  });
});

describe('the bars of a row', () => {
  // 1580 to 2020: what lies more than ten years from the core does not stretch it.
  const core = of(1600, 2000);
  const row = (...spans: Span[]) => layOut(core, piece('x', { spans, ...soft })).rows[1]!;
  const day = (from: string, to: string): Span => ({ from, to, precision: 'range' });
  const length = days('1580-01-01', '2021-01-01');
  const at = (day: string) => expect.closeTo(days('1580-01-01', day) / length, 9);

  it('run from the first day to the end of the last', () => {
    expect(row(day('1580-01-01', '1580-01-01')).bars).toEqual([
      { start: 0, end: at('1580-01-02'), opensLeft: false, opensRight: false },
    ]);
    expect(row(day('2020-12-31', '2020-12-31')).bars).toEqual([
      { start: at('2020-12-31'), end: 1, opensLeft: false, opensRight: false },
    ]);
    expect(row(yearSpan(1700), yearSpan(1800)).bars).toHaveLength(2);
  });

  it('run off where they begin before the axis or end after it, by a day as well', () => {
    const opens = (span: Span) => row(span).bars[0];
    expect(opens(day('1579-12-31', '1700-01-01'))).toMatchObject({ start: 0, opensLeft: true, opensRight: false });
    expect(opens(day('1700-01-01', '2021-01-01'))).toMatchObject({ end: 1, opensLeft: false, opensRight: true });
    expect(opens(yearsSpan(null, null))).toEqual({ start: 0, end: 1, opensLeft: true, opensRight: true });
  });

  it('are none beyond the axis: which end they lie behind is said once', () => {
    expect(row(day('1570-01-01', '1579-12-31'))).toMatchObject({ bars: [], beyond: ['before'] });
    expect(row(day('2021-01-01', '2030-01-01'))).toMatchObject({ bars: [], beyond: ['after'] });
    expect(row(day('1570-01-01', '1580-01-01'))).toMatchObject({ beyond: [] });
    expect(row(day('2020-12-31', '2030-01-01'))).toMatchObject({ beyond: [] });
    expect(row(yearSpan(1500), yearSpan(1510), yearSpan(2050))).toMatchObject({
      bars: [],
      beyond: ['before', 'after'],
    });
  });
});

describe('a row of the axis', () => {
  it('is told whole', () => {
    const source = { kind: 'photo' } as const;
    const code = coded('KV', { spans: [yearSpan(1990)], places: ['BE'], source, about: 'date-and-place' });
    expect(layOut(code).rows).toEqual([
      {
        evidence: ['KV'],
        kind: 'reading',
        stated: { says: code.says, spans: [yearSpan(1990)], places: ['BE'] },
        about: null,
        strength: 'hard',
        source,
        bars: [{ start: expect.closeTo(1 / 3, 3), end: expect.closeTo(2 / 3, 3), opensLeft: false, opensRight: false }],
        beyond: [],
        stands: 'alone',
      },
    ]);
  });

  it('is named for where it is from: a code that only the listing tells, and the days of a country', () => {
    const kind = (over: Partial<Dating>) => layOut(piece('claim-c-country', over)).rows[0]?.kind;
    const listing = { kind: 'listing', field: 'code' } as const;
    expect(kind({ from: { kind: 'reading', id: 'd' }, source: listing })).toBe('quoted');
    expect(kind({ from: { kind: 'reading', id: 'd' }, source: { kind: 'photo' } })).toBe('reading');
    expect(kind({ from: { kind: 'system', id: 'd' }, source: listing })).toBe('system');
    expect(kind({ from: { kind: 'claim', id: 'c' } })).toBe('country');
    expect(kind({ from: { kind: 'claim', id: 'd' } })).toBe('claim');
    expect(kind({ from: { kind: 'construction', id: 'c' } })).toBe('construction');
  });

  it('is about a part, a model or neither', () => {
    const about = (says: Dating['says']) => layOut(piece('x', { says })).rows[0]?.about;
    const said = { field: 'title', words: 'x', maker: 'Ondrasse' } as const;
    expect(about({ kind: 'material', ...said, part: 'tab', is: ['x'] })).toBe('tab');
    expect(about({ kind: 'other-material', ...said, part: 'tab', is: ['x'], used: [] })).toBe('tab');
    expect(about({ kind: 'model', ...said, model: 'Satchel' })).toBe('model');
    expect(about({ kind: 'made', field: 'title', words: 'x' })).toBeNull();
  });

  it('joins the same fact of the same kind, strength and dates, with the places of all', () => {
    const again = (over: Partial<Dating>) =>
      layOut(
        piece('a', { basis: 'a', places: ['BE', 'FR'] }),
        piece('b', { basis: 'a', places: ['FR', 'IT'], ...over }),
      ).rows;
    expect(again({}).map(({ evidence, stated }) => [evidence, stated.places])).toEqual([
      [
        ['a', 'b'],
        ['BE', 'FR', 'IT'],
      ],
    ]);
    expect(again({ basis: 'b' })).toHaveLength(2);
    expect(again({ ...soft })).toHaveLength(2);
    expect(again({ spans: [yearSpan(1995)] })).toHaveLength(2);
    expect(again({ from: { kind: 'mark', id: 'a' } })).toHaveLength(2);
  });

  it('joins what follows from a code whether it is seen or quoted, the firmest first', () => {
    const rows = (kind: 'system' | 'plant' | 'reading') =>
      layOut(
        piece('quoted', { basis: 'a', from: { kind, id: 'q' }, ...soft }),
        piece('seen', { basis: 'a', from: { kind, id: 's' } }),
      ).rows.map(({ evidence, strength }) => [strength, ...evidence]);
    expect(rows('system')).toEqual([['hard', 'seen', 'quoted']]);
    expect(rows('plant')).toEqual([['hard', 'seen', 'quoted']]);
    expect(rows('reading')).toEqual([
      ['soft', 'quoted'],
      ['hard', 'seen'],
    ]);
  });
});

describe('where the evidence agrees', () => {
  test('by whom it is known stands in one order, and the ground only where two facts agree on it', () => {
    const year = claimed('1994', { spans: [yearSpan(1994)] });
    const label = marked('label', { spans: [yearsSpan(1990, 1999)], places: ['BE'], about: 'date-and-place' });
    const code = coded('KV', { spans: [yearSpan(1994)], places: ['BE'], about: 'date-and-place' });
    expect(layOut(year, label).agreeing.sides).toEqual([{ spans: [yearSpan(1994)], places: [], by: ['seen', 'said'] }]);
    expect(layOut(year, label, code).agreeing.sides).toEqual([
      { spans: [yearSpan(1994)], places: ['BE'], by: ['read', 'seen', 'said'] },
    ]);
  });

  test('three sides are named, and how many more there are', () => {
    const label = marked('label', { spans: [yearsSpan(1970, 2000)] });
    const sides = (count: number) => {
      const years = Array.from({ length: count }, (_, at) => claimed(`c${at}`, { spans: [yearSpan(1980 + 2 * at)] }));
      const { agreeing, rows } = layOut(...years, label);
      return [agreeing.sides.length, agreeing.bars.length, agreeing.more, ...new Set(rows.map(({ stands }) => stands))];
    };
    expect([1, 2, 3, 4, 5].map(sides)).toEqual([
      [1, 1, 0, 'agrees'],
      [2, 2, 0, 'one-side', 'agrees'],
      [3, 3, 0, 'one-side', 'agrees'],
      [3, 3, 1, 'one-side', 'agrees'],
      [3, 3, 2, 'one-side', 'agrees'],
    ]);
  });
});
