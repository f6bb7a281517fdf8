import { expect, test } from 'vitest';
import { readKnownList } from '../../../../src/code';

const read = (line: string) => {
  const [row] = readKnownList(line);
  return row?.known ? `${row.known.code} = ${row.known.reads}` : row?.fault;
};

test('a row is understood as people write it down', () => {
  const rows: [line: string, wanted: string][] = [
    ['- KV0915: March 1995, Belgium', 'KV0915 = 1995-03, BE'],
    ['1. KV0915 (1995)', 'KV0915 = 1995'],
    ["2) KV0915 1995 (my aunt's)", 'KV0915 = 1995'],
    ['KV0915 → 1996', 'KV0915 = 1996'],
    ['KV0915 | 1997 | FR', 'KV0915 = 1997, FR'],
    ['KV0915 - 1995 - BE', 'KV0915 = 1995, BE'],
    ['KV0915 ... 1995', 'KV0915 = 1995'],
    ['KV0915, March 5, 1994', 'KV0915 = 1994-03-05'],
    ['KV 0915 from the 90s', 'KV 0915 = 1990..1999'],
    ['KV0915: Made in Belgium, 1995', 'KV0915 = 1995'],
    ['KV0915 made 1995 in Belgium', 'KV0915 = 1995, BE'],
    ['KV0915 purchased new in Lyon 1998', 'KV0915 = ..1998'],
    ['KV0915 zwischen 1990 und 1993', 'KV0915 = 1990..1993'],
    ['KV0915 vor 1990 gekauft', 'KV0915 = ..1989'],
    ['KV0915 1998年購入', 'KV0915 = ..1998'],
    ['KV 0915 1995-01, BE', 'KV 0915 = 1995-01, BE'],
    ['NO 12345/67 - 1988', 'NO 12345/67 = 1988'],
    ['1234-56 2001 ES', '1234-56 = 2001, ES'],
    ['A 12 B 1994', 'A 12 B = 1994'],
    ['kv 0915 1994', 'kv 0915 = 1994'],
    ['KV 1995', 'KV = 1995'],
    ['1995: KV0915', 'KV0915 = 1995'],
    ['KV0915 not sure, maybe 1999', 'KV0915 = 1994..2004'],
  ];
  for (const [line, wanted] of rows) expect([line, read(line)]).toEqual([line, wanted]);
});

test('what is no date, or says two, is not taken for one', () => {
  expect(read('KV0915 unknown')).toEqual({ kind: 'not-date', text: 'unknown' });
  expect(read('KV0915 1999, not 2000')).toEqual({ kind: 'not-date', text: 'not 2000' });
  expect(read('KV0915 around 1999, or was it 2003')).toEqual({ kind: 'not-date', text: 'around 1999' });
  for (const line of ['KV 0915', '8504 TH', '1995 KV0928', 'KV0915 2003/4'])
    expect([line, read(line)]).toEqual([line, { kind: 'no-date' }]);
});

test('a row of headings at the top is passed over, and figures make it a row', () => {
  expect(readKnownList('Code;Year;Country\nKV0915;1995;BE').map(({ row, known }) => [row, known?.reads])).toEqual([
    [2, '1995, BE'],
  ]);
  expect(readKnownList('KV0915;year;BE\nKV0916;1995;BE').map(({ fault }) => fault?.kind)).toEqual([
    'not-date',
    undefined,
  ]);
});

test('a row of many pieces is prose', () => {
  const row = (pieces: number) => `KV ${'0 '.repeat(pieces - 2)}1994`;
  expect(read(row(24))).toBe(`KV ${'0 '.repeat(22).trim()} = 1994`);
  expect(read(row(25))).toEqual({ kind: 'no-date' });
});

test('a row longer than a code and a date may be is prose', () => {
  const row = (length: number) => `${'K-'.repeat(12).padEnd(length - 8, '-')} 1995-01`;
  expect([row(143), row(144), row(145)].map(({ length }) => length)).toEqual([143, 144, 145]);
  for (const line of [row(143), row(144)]) expect(read(line)).toMatch(/^K-K-[K-]+ = 1995-01$/);
  expect(read(row(145))).toEqual({ kind: 'no-date' });
});

test.each([
  ['KV0915;soon;BE', { kind: 'not-date', text: 'soon' }],
  ['KV0915;soon;BE;', { kind: 'not-date', text: 'soon' }],
  ['KV0915;soon;BE; ;', { kind: 'not-date', text: 'soon' }],
  ['KV0915;soon;BE;x', { kind: 'too-many' }],
  ['KV0915;1995;12', { kind: 'not-place', text: '12' }],
  ['KV0915;1995;12;', { kind: 'not-place', text: '12' }],
  ['KV0915;1995;BE;', 'KV0915 = 1995, BE'],
  ['KV0915;1995;;', 'KV0915 = 1995'],
  ['KV0915;', { kind: 'no-date' }],
  [';1995', { kind: 'no-code' }],
])('fields that are empty say nothing: %s', (line, wanted) => {
  expect(read(line)).toEqual(wanted);
});
