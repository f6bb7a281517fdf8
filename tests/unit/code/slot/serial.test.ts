import { expect, test } from 'vitest';
import { slotForms } from '../../../../src/code';
import { faultOf, readUnder } from './under';

const used: [string, string] = ['1980', '1999'];
const table = [
  { first: 100, last: 199, made: ['1980', '1982'] as [string, string] },
  { first: 300, last: 399, made: ['1983-05', '1983-09'] as [string, string] },
  // Two ranges that overlap, and one without an end.
  { first: 350, last: 499, made: ['1985', '1986'] as [string, string] },
  { first: 5000, last: null, made: ['1990', null] as [string, null] },
];
const layout = [{ serial: { min: 3, max: 5 }, table }];

test.each([
  ['100', ['1980-01-01..1982-12-31']],
  ['00199', ['1980-01-01..1982-12-31']],
  ['200', []],
  ['340', ['1983-05-01..1983-09-30']],
  ['360', ['1983-05-01..1983-09-30', '1985-01-01..1986-12-31']],
  ['4999', []],
  ['99999', ['1990-01-01..']],
  ['99', []],
  ['999999', []],
])('number %s of the table reads %j', (code, reads) => {
  expect(readUnder(layout, used, code)).toEqual(reads);
});

test('without a table a number dates nothing', () => {
  expect(readUnder([{ serial: 4 }], used, '0417')).toEqual(['undated']);
});

const isForm = (slot: unknown) => slotForms.some((form) => form.safeParse(slot).success);

test('a number of a maker may have twenty digits, and is of one after all that a table names', () => {
  const long = [{ serial: { min: 11, max: 20 }, table: table.slice(3) }];
  expect(isForm(long[0])).toBe(true);
  expect(isForm({ serial: { min: 11, max: 21 } })).toBe(false);
  expect(readUnder(long, used, '50123456789012345678')).toEqual(['1990-01-01..']);
});

test('a number made at another time than the code says does not fit', () => {
  const dated = [{ serial: 3, table: table.slice(0, 1) }, { year: 2 as const }];
  expect(readUnder(dated, used, '15081')).toEqual(['1981']);
  expect(readUnder(dated, used, '15090')).toEqual([]);
});

test('a serial of more least digits than most is refused', () => {
  expect(faultOf([{ serial: { min: 5, max: 3 } }])).toBe(
    'the fewest digits of the serial number are more than the most',
  );
});
