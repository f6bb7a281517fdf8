import { expect, test } from 'vitest';
import { mostRows, readKnownRows, rowRange, wholeProblem } from '../../../src/ui/makers/known-codes';

const read = (line: string) => {
  const [row] = readKnownRows(line);
  return row?.known ? [row.known.code, row.known.reads, row.says] : row?.problem;
};

test('a row is understood however its code, date and country are set apart', () => {
  const wanted = ['KV0915', '1995-01, BE', 'January 1995, Belgium'];
  for (const line of [
    'KV0915, 1995-01, BE',
    'KV0915\t1995-01\tBE',
    '"KV0915";"1995-01";"be"',
    'KV0915 = 1995-01, Belgium',
    'KV0915 1995-01 BE',
    'KV0915 – 1995-01 BE',
    'KV0915: 1995-01 BE',
    '  KV0915   1995-01   belgium ',
  ]) {
    expect([line, read(line)]).toEqual([line, wanted]);
  }
  expect(read('KV 0915 - 1995-01')).toEqual(['KV 0915', '1995-01', 'January 1995']);
  expect(read('KV 0915 1995-01')).toEqual(['KV 0915', '1995-01', 'January 1995']);
});

test('years, months, days, weeks, quarters and ranges are taken as people write them', () => {
  const dates = [
    ['1994', '1994', '1994'],
    ['1994-03', '1994-03', 'March 1994'],
    ['1994‑03‑21', '1994-03-21', '21 March 1994'],
    ['1994-w12', '1994-W12', 'the week of 21 March 1994'],
    ['1994-q2', '1994-Q2', 'April 1994 to June 1994'],
    ['1990 to 1993', '1990..1993', '1990 to 1993'],
    ['1990 - 1993', '1990..1993', '1990 to 1993'],
    ['1990–1993', '1990..1993', '1990 to 1993'],
    ['1990-03..1993', '1990-03..1993', 'March 1990 to 1993'],
    ['about 1990', '1985..1995', '1985 to 1995'],
    ['1990s', '1990..1999', '1990 to 1999'],
    ['bought 2001', '..2001', 'up to 2001'],
    ['not before 1997', '1997..', 'from 1997'],
    ['March 1994', '1994-03', 'March 1994'],
  ];
  for (const [typed, reads, says] of dates) {
    expect([typed, read(`AB12, ${typed}`)]).toEqual([typed, ['AB12', reads, says]]);
    expect([typed, read(`AB12 ${typed} FR`)]).toEqual([typed, ['AB12', `${reads}, FR`, `${says}, France`]]);
  }
});

test('a row that is not understood says why in plain words', () => {
  expect(read(', 1994')).toBe('There is no code. Write the code first, then its date.');
  expect(read('KV0915')).toBe('There is no date behind the code.');
  expect(read('KV0915, ')).toBe('There is no date behind the code.');
  for (const date of ['1994-13', 'spring', '1993..1990', 'undated', 'BE'])
    expect(read(`KV0915, ${date}`)).toBe(
      `“${date}” is not a date. Write 1994, 1994-03, about 1994, 1990s or bought 1994.`,
    );
  expect(read('KV0915, 1994, XX')).toBe('“XX” is not a country. Write its ISO code, such as PT, or its English name.');
  expect(read('KV0915, 1994, BE, FR')).toBe('There is more than a code, a date and a country.');
  expect(read(`${'A1'.repeat(13)}, 1994`)).toBe('The code has more than 24 letters and digits.');
});

test('rows keep the number of their line, notes and empty lines are passed over, and a repeat is no second witness', () => {
  const text = '# seen by hand\r\nKV0915, 1995-01\r\n\r\nkv0915 1995-01\r\nKV0915, 1996';
  expect(readKnownRows(text).map(({ row, problem }) => [row, problem])).toEqual([
    [2, null],
    [4, 'It says the same as row 2. Take one away: the same piece counts once.'],
    [5, null],
  ]);
});

test('a set that cannot be learned from says what to do first', () => {
  const set = (text: string) => wholeProblem(readKnownRows(text));
  expect(set('KV0915, 1995')).toBe('At least 2 rows are needed.');
  expect(set('KV0915, 1995\nKV0916\nKV0917')).toBe('First correct rows 2, 3.');
  expect(set('KV0915, 1995\nKV0916, 1996')).toBeNull();
  const many = Array.from({ length: mostRows + 1 }, (_, at) => `KV${at}, 1995`).join('\n');
  expect(set(many)).toMatch(/^At most 200 rows are taken\./);
});

test('the place of a row in the text is the row', () => {
  const text = 'one\ntwo two\nthree';
  expect([1, 2, 3].map((row) => text.slice(...rowRange(text, row)))).toEqual(['one', 'two two', 'three']);
});

test('no line is too long to be answered', () => {
  for (const line of [
    '1994 '.repeat(20_000),
    '-'.repeat(100_000),
    `A 1994${' '.repeat(100_000)}x`,
    'A, 1'.repeat(9_999),
  ])
    expect(readKnownRows(line)[0]?.known ?? null).toBeNull();
});
