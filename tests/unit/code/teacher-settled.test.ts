import { describe, expect, it } from 'vitest';
import { type KnownCode, learnSystem } from '../../../src/code';

const known = (text: string): KnownCode[] =>
  text
    .trim()
    .split('\n')
    .map((line) => {
      const [code = '', reads = ''] = line.split(' = ');
      return { code: code.trim(), reads: reads.trim() };
    });

/** What the teacher says of a list: why it is open, its best layout, and the letters that it takes for granted. */
function told(text: string) {
  const { open, remaining } = learnSystem(known(text));
  return { open, layout: remaining[0]?.eras[0]?.layout, guessed: remaining[0]?.eras[0]?.guessed };
}

describe('a cycle of year letters', () => {
  const row = (letter: string, year: string, quarter = 1) =>
    `PU${quarter}${letter} = ${year}${/^\d+$/.test(year) ? `-Q${quarter}` : ''}`;
  it('is open where the codes do not tell which letters between two known ones are left out', () => {
    // From D to K are five years and six letters between: a usual set leaves out I and J, this maker did E and I.
    const rows = [
      row('R', '1984', 1),
      row('D', '1974', 2),
      row('C', '1973', 2),
      row('T', '1986', 3),
      row('K', '1979', 4),
      row('P', '1983', 2),
      row('D', '1974', 4),
      row('S', '1985', 3),
    ];
    expect(told(rows.join('\n'))).toMatchObject({ open: 'letters', guessed: expect.stringMatching(/I.*J/) });
  });

  it('is settled where each letter follows from the known ones, whatever is left out', () => {
    const letters = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'J', 'K'];
    const rows = letters.map((letter, at) => row(letter, String(1980 + at), (at % 4) + 1));
    expect(told(rows.join('\n'))).toMatchObject({ open: null, guessed: '' });
  });

  it('is settled too where no letter of a gap is left out, or all of them are', () => {
    const dates = { A: 1980, B: 1981, E: 1984, F: 1985, J: 1986, K: 1987, L: 1988, M: 1989 };
    const rows = Object.entries(dates).map(([letter, year], at) => row(letter, String(year), (at % 4) + 1));
    expect(told(rows.join('\n')).guessed).toBe('');
  });

  it('is open where the last letter is known by a vague date alone', () => {
    const letters = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'];
    const rows = letters.map((letter, at) => row(letter, String(1980 + at), (at % 4) + 1));
    expect(told([...rows, row('N', 'about 1990', 2)].join('\n'))).toMatchObject({ open: 'rivals', guessed: 'N' });
    // Between two known years there is one year left for it.
    expect(told([...rows, row('J', '1989', 2), row('I', 'about 1990', 3)].join('\n')).guessed).toBe('');
  });
});

describe('a day of the month', () => {
  const rows = `
    187707 = 1977-07
    117708 = 1977
    097908 = 1979
    208309 = 1983-09
    107807 = July 1978
    218311 = 1983-11
    168012 = 1980
    158312 = 1983
    077703 = 1977
    247712 = not before 1977`;
  it('that no known day bears out is not settled, though a wrong example is a day', () => {
    expect(told(`${rows}\n128109 = 1975-09-12`)).toMatchObject({
      open: 'day',
      layout: [{ day: 2 }, { year: 2 }, { month: 2 }],
    });
  });

  it('that a known day bears out is', () => {
    expect(told(`${rows}\n128109 = 1981-09-12`)).toMatchObject({
      open: null,
      layout: [{ day: 2 }, { year: 2 }, { month: 2 }],
    });
  });
});

it('two figures that may be the day of the month are not settled as running numbers, wherever they stand', () => {
  const rows = `
    219871EEA05677 = 1987-05
    119929GEA07114 = 1992, PT
    019875GEA1231 = December 1987, PT
    219921EEA08238 = August 1992, RO
    119969PEA1058 = 1996-10
    019939PEA0683937 = um 1995
    219915GEA1294344 = 1996-12, PT`;
  expect(told(rows).open).toBe('days');
  // Figures that can be no day in one code are none in any.
  expect(told(`${rows}\n919889PEA0699998 = 1988-06`).open).not.toBe('days');
});

it('a layout whose workshops stand before a separator is found with their countries known', () => {
  const rows = `
    RZ.MUL28 = 1982-11, IT
    RZ.MUB58 = 1979, IT
    LC.MUK28 = 1982-10
    UY.MUH58 = 1985-08, ES
    UY.MUL18 = 1981-11, ES
    UY.MUF97 = bought 1980, ES
    LC.MUL28 = 1982-11
    RZ.MUF08 = 1980-06, IT
    UY.MUK38 = bought 1984`;
  expect(told(rows).layout?.slice(0, 3)).toEqual([{ plant: 2 }, { separator: '.' }, { literal: 'MU' }]);
});

it('a month whose tens no known month shows stays open beside one of a single figure', () => {
  const rows = `
    YS05A = 1973-05-18
    GE03D = March 1976
    GE12M = 1985
    GE01O = 1987-01
    TX12M = not before 1985
    TX07F = 1978-07
    DQ03F = March 1978`;
  const { open, remaining } = learnSystem(known(rows));
  expect(open).toBe('rivals');
  expect(remaining.map(({ eras }) => eras[0]!.layout.slice(1, 3))).toContainEqual([{ serial: 1 }, { month: '1-9' }]);
});
