import { expect, test } from 'vitest';
import { findMarks } from '../../../src/mark';
import { inPhoto, said } from './read';

test.each([
  ['PAT. NOV. 25, 1851', 'PAT. NOV. 25, 1851 | 1851-11-25.. | soft'],
  ["Pat'd March 6 1951", "Pat'd March 6 1951 | 1951-03-06.. | soft"],
  ['Patented 8 May 1928', 'Patented 8 May 1928 | 1928-05-08.. | soft'],
])('%s', (text, expected) => expect(said('patent-date', text)).toEqual([expected]));

test('a day that is no Tuesday is worth a second look, not an accusation', () => {
  const cautions = (text: string) => findMarks(text, inPhoto)[0]?.cautions.map(({ kind }) => kind);
  expect(cautions('Pat. Nov. 25, 1851')).toEqual(['from-below']);
  expect(cautions('Pat. Nov. 26, 1851')).toEqual(['from-below', 'not-tuesday']);
});

test.each(['Pat. Feb. 30, 1925', 'Pat. Pend.', 'bought March 6 1951'])('nothing is read from "%s"', (text) =>
  expect(said('patent-date', text)).toEqual([]),
);
