import { describe, expect, it, test } from 'vitest';
import { readExactly } from '../../../../src/code/exact';
import { type Candidate, isMet } from '../../../../src/code/teacher/candidates';
import type { Explanation } from '../../../../src/code/teacher/explain';
import { isDayUntold, mayBeDays } from '../../../../src/code/teacher/untold-days';
import { untoldLetters } from '../../../../src/code/teacher/untold-letters';
import type { Layout } from '../../../../src/maker/types';
import { opened } from '../tried';
import { factsOf } from './framed';

const cycle = (letters: string, first = 1980) => ({ year: 'cycle' as const, letters, first });
const opening = (layout: Layout) => opened(layout, { used: ['1980', '1999'] });

/** What a layout reads in known codes, with the years that their dates allow. */
const readIn = (layout: Layout, rows: string) =>
  factsOf(rows).map(({ code, stated, years }) => {
    const readings = readExactly(opening(layout), code).exact.map(({ reading }) => reading);
    const reading = readings.find((one) => isMet(one, stated));
    if (!reading) throw new Error(`${code} does not fit its date`);
    return { reading, years };
  });

describe('letters of a cycle that known codes do not tell', () => {
  test.each([
    ['each letter has its year', 'ABCD', 'A1 = 1980; B1 = 1981; C1 = 1982; D1 = 1983', ''],
    ['no letter between two is left out', 'ABCD', 'A1 = 1980; D1 = 1983', ''],
    ['all letters between two are', 'AD', 'A1 = 1980; D1 = 1981', ''],
    ['one of two between is', 'ABD', 'A1 = 1980; D1 = 1982', 'C'],
    ['two of three between are', 'ACE', 'A1 = 1980; E1 = 1982', 'BD'],
    ['a last letter with one year left for it', 'ABCDE', 'D1 = 1983; E1 = 1980..1989', ''],
    ['a last letter with two', 'ABCDEF', 'D1 = 1983; F1 = 1980..1989', 'F'],
    ['a last letter with two whose date leaves one', 'ABCDEF', 'D1 = 1983; F1 = 1985..1989', ''],
    ['a first letter with one year left for it', 'ABC', 'A1 = 1975..1985; B1 = 1981', ''],
    ['a first letter with two', 'ABC', 'A1 = 1975..1985; C1 = 1982', 'A'],
    ['a first letter with two whose date leaves one', 'ABC', 'A1 = 1975..1980; C1 = 1982', ''],
    ['a letter between two that leave it one year', 'ABCD', 'A1 = 1980; B1 = 1975..1989; C1 = 1982', ''],
    [
      'a letter between two that leave it two, where one is left out',
      'ABCE',
      'A1 = 1980; C1 = 1975..1989; E1 = 1983',
      'C',
    ],
    ['a letter alone with a vague date', 'ABC', 'B1 = 1975..1985', 'B'],
    ['two vague dates that have one year together', 'ABC', 'B1 = 1979..1981; B2 = 1981..1983', ''],
    ['two vague dates that have two years together', 'ABC', 'B1 = 1979..1982; B2 = 1981..1983', 'B'],
    ['a cycle that goes on with A after Z', 'XYZAB', 'X1 = 1980; B1 = 1984', ''],
    ['one left out on either side of Z', 'XZAB', 'X1 = 1980; B1 = 1983', 'Y'],
    ['several gaps, in the order of letters', 'XZACD', 'X1 = 1980; A1 = 1982; D1 = 1984', 'BY'],
    ['codes in another order than their years', 'ABD', 'D1 = 1982; A1 = 1980', 'C'],
    ['no codes', 'ABD', '', ''],
  ])('%s: %s, %s leaves "%s"', (_, letters, rows, untold) => {
    const layout = [cycle(letters), { serial: 1 }];
    expect(untoldLetters(layout, readIn(layout, rows))).toBe(untold);
  });

  test.each<[name: string, layout: Layout, rows: string]>([
    ['in brackets', [{ ...cycle('ABD'), enclosed: true }, { serial: 1 }], '(A)1 = 1980; (D)2 = 1982'],
    ['in brackets that some leave out', [{ ...cycle('ABD'), enclosed: true }, { serial: 1 }], 'A1 = 1980; (D)2 = 1982'],
    [
      'behind a separator that some leave out',
      [{ plant: 2 }, { separator: '-', optional: true }, cycle('ABD')],
      'KV-A = 1980; KVD = 1982',
    ],
    ['before a plant', [cycle('ABD'), { separator: '-', optional: true }, { plant: 2 }], 'AKV = 1980; D-KV = 1982'],
  ])('a letter is told wherever it stands: %s', (_, layout, rows) => {
    expect(untoldLetters(layout, readIn(layout, rows))).toBe('C');
  });

  it('are none where the year is written in figures', () => {
    const layout: Layout = [{ year: 2 }, { serial: 1 }];
    expect(untoldLetters(layout, readIn(layout, '801 = 1980; 852 = 1985'))).toBe('');
  });

  it('are not told by a code without a letter, a date or a known year', () => {
    const layout = [cycle('ABD'), { serial: 1 }];
    const [a, d] = readIn(layout, 'A1 = 1980; D1 = 1982');
    const told = (reading: Partial<NonNullable<typeof d>['reading']>, years = d!.years) =>
      untoldLetters(layout, [a!, { reading: { ...d!.reading, ...reading }, years }]);
    expect(told({})).toBe('C');
    expect(told({ parts: [] })).toBe('');
    expect(told({ parts: d!.reading.parts.slice(1) })).toBe('');
    expect(told({ span: null })).toBe('');
    expect(told({ span: { from: null, to: '1982', precision: 'range' } })).toBe('');
    expect(told({}, [])).toBe('');
  });

  it('keep the years of the first of two codes that contradict each other', () => {
    const layout = [cycle('ABC'), { serial: 1 }];
    const [{ reading }] = readIn(layout, 'B1 = 1981') as [ReturnType<typeof readIn>[number]];
    const years = (...of: number[]) => ({ reading, years: of });
    expect(untoldLetters(layout, [years(1980, 1981), years(1983)])).toBe('B');
    expect(untoldLetters(layout, [years(1983), years(1980, 1981)])).toBe('');
  });
});

const era = (layout: Layout, explains: number[]): Candidate => ({
  layout,
  used: ['1980', '1999'],
  plants: [],
  explains,
  guessed: '',
  says: [],
});
const explained = (...eras: Candidate[]): Explanation => ({
  eras,
  explains: eras.flatMap(({ explains }) => explains),
  wrong: [],
  score: 0,
  byChance: 0,
});

describe('a day of the month that a layout reads', () => {
  const dayed: Layout = [{ year: 2 }, { month: 2 }, { day: 2 }];
  const facts = factsOf('940314 = 1994-03; 950228 = 1995-02-28; 960101 = 1996');
  test.each([
    ['none of its codes is known to the day', [0, 2], true],
    ['one of them is', [0, 1], false],
    ['it has no codes', [], true],
  ])('is untold where %s', (_, explains, untold) => {
    expect(isDayUntold(explained(era(dayed, explains)), facts)).toBe(untold);
  });

  it('is untold in the earlier era as in the later, and by the codes of its own era alone', () => {
    const plain = era([{ year: 2 }, { serial: 4 }], [1]);
    expect(isDayUntold(explained(plain), facts)).toBe(false);
    expect(isDayUntold(explained(plain, era(dayed, [0, 2])), facts)).toBe(true);
    expect(isDayUntold(explained(era(dayed, [0, 2]), plain), facts)).toBe(true);
    expect(isDayUntold(explained(era(dayed, [1]), era(dayed, [0])), facts)).toBe(true);
    expect(isDayUntold(explained(), facts)).toBe(false);
  });
});

describe('two figures of a running number', () => {
  const layout: Layout = [{ year: 2 }, { month: 2 }, { serial: { min: 1, max: 4 } }];
  const mayBe = (numbers: string, of: Layout = layout) => {
    const facts = factsOf(
      numbers
        .split(' ')
        .map((number, at) => `${90 + at}01${number} = ${1990 + at}-01`)
        .join(';'),
    );
    return mayBeDays(
      explained(
        era(
          of,
          facts.map(({ index }) => index),
        ),
      ),
      facts,
    );
  };
  test.each([
    ['01 31', true],
    ['31 32', true], // As 13 and 23, turned round.
    ['00 11', false],
    ['32 04', false], // Nor 23 and 40.
    ['31 04', true],
    ['10 44', false],
    ['9 11', false],
    ['01', true],
    ['9', false],
    ['019 317 2', false],
    ['01 317 2944', true],
    ['901 931', true],
    ['9901 9931', true],
    ['9091 9391', true],
    ['9999 1231', false],
  ])('%s may be days: %s', (numbers, may) => {
    expect(mayBe(numbers)).toBe(may);
  });

  it('may be days whichever separators a code leaves out, and in any number of the code', () => {
    const parted: Layout = [
      { year: 2 },
      { separator: '-', optional: true },
      { month: 2 },
      { separator: '/', optional: true },
      { serial: 2 },
    ];
    for (const rows of ['90-01/31 = 1990-01; 910112 = 1991-01', '900131 = 1990-01; 91-01/12 = 1991-01'])
      expect(mayBeDays(explained(era(parted, [0, 1])), factsOf(rows)), rows).toBe(true);
    expect(mayBeDays(explained(era(parted, [0, 1])), factsOf('90-01/31 = 1990-01; 910199 = 1991-01'))).toBe(false);
    const twice: Layout = [{ serial: 2 }, { year: 2 }, { month: 2 }, { serial: 1 }];
    expect(mayBeDays(explained(era(twice, [0, 1])), factsOf('0190019 = 1990-01; 3191019 = 1991-01'))).toBe(true);
    // The tens in the last number, the units in the first.
    expect(mayBeDays(explained(era(twice, [0, 1])), factsOf('9190010 = 1990-01; 9991012 = 1991-01'))).toBe(true);
    expect(mayBeDays(explained(era(twice, [0, 1])), factsOf('9990019 = 1990-01; 9991019 = 1991-01'))).toBe(false);
  });

  it('are no days without a month, beside a day, where a day is known, or where nothing is read', () => {
    const rows = '900131 = 1990; 910112 = 1991';
    const read = (of: Layout, of1: string, explains = [0, 1]) => mayBeDays(explained(era(of, explains)), factsOf(of1));
    expect(read([{ year: 2 }, { month: 2 }, { serial: 2 }], rows)).toBe(true);
    expect(read([{ year: 2 }, { week: 2 }, { serial: 2 }], rows)).toBe(false);
    expect(read([{ year: 2 }, { serial: 4 }], rows)).toBe(false);
    expect(read([{ year: 2 }, { month: 2 }, { day: 2 }], rows)).toBe(false);
    expect(read([{ year: 2 }, { month: 2 }, { any: 2 }], rows)).toBe(false);
    expect(read([{ year: 2 }, { month: 2 }, { serial: 2 }], `${rows}; 920101 = 1992-01-01`)).toBe(false);
    expect(read([{ year: 2 }, { month: 2 }, { serial: 2 }], rows, [])).toBe(false);
    expect(read([{ year: 2 }, { month: 2 }, { serial: 3 }], rows)).toBe(false);
  });

  it('may be days in either era', () => {
    const facts = factsOf('900131 = 1990-01; 910199 = 1991-01');
    const own = (explains: number[]) => era([{ year: 2 }, { month: 2 }, { serial: 2 }], explains);
    expect(mayBeDays(explained(own([0]), own([1])), facts)).toBe(true);
    expect(mayBeDays(explained(own([1]), own([0])), facts)).toBe(true);
    expect(mayBeDays(explained(own([0, 1])), facts)).toBe(false);
    expect(mayBeDays(explained(own([1])), facts)).toBe(false);
    expect(mayBeDays(explained(), facts)).toBe(false);
  });
});
