import { expect, test } from 'vitest';
import { findMarks } from '../../../src/mark';
import { inListing, inPhoto, said } from './read';

const wording = (text: string, where: typeof inPhoto | typeof inListing = inListing) =>
  said('origin-wording', text, where).filter((line) => !line.includes('1887'));

test('“Occupied Japan” is firm from 20 February 1947, not from 1945, and its end is soft', () => {
  expect(wording('Made in Occupied Japan')).toEqual([
    'Made in Occupied Japan | 1947-02-20.. | hard',
    'Made in Occupied Japan | 1947-02-20..1952-04-28 | soft',
  ]);
});

test('“Myanmar” is firm from 18 June 1989', () => {
  expect(wording('Made in Myanmar')).toEqual(['Made in Myanmar | 1989-06-18.. | hard']);
});

test('rows from memory are soft and say that they are not verified', () => {
  const [read] = findMarks('Made in Yugoslavia', inListing);
  expect(read).toMatchObject({
    strength: 'soft',
    verified: false,
    source: { kind: 'memory' },
    places: ['YUCS'],
    spans: [{ from: '1929-10-03', to: '2003-02-04' }],
  });
});

test.each([
  ['Made in West Germany', '1949-05-23', '1990-10-03'],
  ['Made in GDR', '1949-10-07', '1990-10-03'],
  ['Made in USSR', '1922-12-30', '1991-12-26'],
  ['Made in Czechoslovakia', '1918-10-28', '1992-12-31'],
])('%s: the beginning is firm, the end is where normal use ended', (text, from, to) =>
  expect(wording(text)).toEqual([`${text} | ${from}.. | hard`, `${text} | ${from}..${to} | soft`]),
);

test.each([
  ['Made in Czech Republic', '1993-01-01..'],
  ['Made in EU', '1993-11-01..'],
])('%s is firm', (text, days) => expect(wording(text)).toEqual([`${text} | ${days} | hard`]));

test.each([
  ['Made in Yugoslavia', '1929-10-03..2003-02-04'],
  ['Made in Slovenia', '1991-06-25..'],
  ['Made in Burma', '..1989-06-18'],
  ['Made in Rhodesia', '..1980-04-18'],
  ['Empire Made', '1950-01-01..1997-06-30'],
])('%s', (text, days) => expect(wording(text)).toEqual([`${text} | ${days} | soft`]));

test('on print a name alone is enough; in a listing it is the talk of the seller', () => {
  expect(wording('W. GERMANY', inPhoto)).toHaveLength(2);
  expect(wording('bought in West Germany in 1985', inListing)).toEqual([]);
});

test.each(['Made in Hong Kong', 'Made in Germany', 'Made in Macau', 'Made in Italy'])(
  '"%s" has no row of its own',
  (text) => expect(wording(text)).toEqual([]),
);

test('“made in” with a country is soft background, read from print only, and names the place', () => {
  const reads = findMarks('Made in England', inPhoto);
  expect(reads).toMatchObject([{ strength: 'soft', places: ['GB'], spans: [{ from: '1887-01-01', to: null }] }]);
  expect(findMarks('Made in England', inListing)).toEqual([]);
});
