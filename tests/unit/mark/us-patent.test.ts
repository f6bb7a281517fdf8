import { expect, test } from 'vitest';
import { findMarks } from '../../../src/mark';
import { grantOf } from '../../../src/mark/patents';
import { inListing, said } from './read';

test('a US patent number dates the grant, firmly by a verified row', () => {
  expect(said('us-patent', 'U.S. Pat. No. 2,544,409')).toEqual(['U.S. Pat. No. 2,544,409 | 1951-01-01.. | hard']);
});

test('a year from memory is soft, beside the last firm bound', () => {
  expect(said('us-patent', 'US Patent 5,400,000')).toEqual([
    'US Patent 5,400,000 | 1991-03-19.. | hard',
    'US Patent 5,400,000 | 1995-01-01.. | soft',
  ]);
});

test('without the country named it is soft', () => {
  expect(said('us-patent', 'Pat. No. 2,544,409')).toEqual(['Pat. No. 2,544,409 | 1951-01-01.. | soft']);
  const [read] = findMarks('Pat. No. 2,544,409', inListing);
  expect(read?.cautions).toEqual([{ kind: 'other-country' }, { kind: 'dates-grant' }]);
});

test('several numbers in one phrase are each read', () => {
  expect(said('us-patent', 'Pats. 1,060,378 & 1,219,881').map((one) => one.split(' | ')[0])).toEqual([
    'Pats. 1,060,378',
    '1,219,881',
  ]);
});

test.each([
  'patent leather 1995',
  'Patent leather, 25 cm',
  'Pat. Pend.',
  'British Patent No. 563,421',
  'code 2544409',
  'Pat loves it, 1994',
])('nothing is read from "%s"', (text) => expect(said('us-patent', text)).toEqual([]));

test('below 1 there is no patent; beyond the table it is that year or later', () => {
  expect(grantOf('utility', 0)).toBeNull();
  expect(grantOf('utility', 1.5)).toBeNull();
  expect(grantOf('utility', 1)?.year).toBe(1836);
  expect(grantOf('utility', 13_500_000)).toMatchObject({ year: 2024, beyond: true, verified: false });
});

test('1927 begins at 1,612,790, not at the 1,612,700 of some copies', () => {
  expect(grantOf('utility', 1_612_789)?.year).toBe(1926);
  expect(grantOf('utility', 1_612_790)?.year).toBe(1927);
});
