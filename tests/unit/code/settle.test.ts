import { expect, test } from 'vitest';
import { nearestCodes } from '../../../src/code/nearest';
import { settle, type Weighed, type WeighedMisfit } from '../../../src/code/settle';
import { opened, span } from './tried';

const weighed = (text: string, weight: number): Weighed => ({
  reading: {
    text,
    probability: 0,
    system: { maker: 'Ondrasse', id: 'a' },
    parts: [],
    span: span('1995-01-01', '1995-12-31'),
    places: [],
    plant: null,
    systemUsed: span(null, null),
    reasons: [],
  },
  inPeriod: true,
  weight,
  legibility: 1,
});
const misfit = (text: string, weight: number): WeighedMisfit => ({
  misfit: {
    text,
    probability: 0,
    system: { maker: 'Ondrasse', id: 'a' },
    slot: 'month',
    value: '13',
    expected: { kind: 'any-year' },
  },
  weight,
});

test.each([
  [
    ['A 4', 'B 3', 'C 2'],
    ['A', 'B', 'C'],
  ],
  [
    ['C 2', 'B 3', 'A 4'],
    ['A', 'B', 'C'],
  ],
  // Two ways to one text weigh together, more than the likeliest single one.
  [
    ['A 4', 'B 3', 'B 2'],
    ['B', 'A'],
  ],
  [
    ['B 1', 'A 4', 'B 2', 'C 3.5', 'B 1.5'],
    ['B', 'A', 'C'],
  ],
])('%j are told as %j, the likeliest first', (weights, texts) => {
  const rows = weights.map((row) => row.split(' ') as [string, string]);
  const options = { nothing: 1, written: '', legible: 0 };
  const near = settle(
    rows.map(([text, weight]) => weighed(text, Number(weight))),
    [],
    options,
  );
  expect(near.nearest.map(({ text }) => text)).toEqual(texts);
  const wrong = settle(
    [],
    rows.map(([text, weight]) => misfit(text, Number(weight))),
    options,
  );
  expect(wrong.misfits.map(({ text }) => text)).toEqual(texts);
  expect(wrong.misfits.every(({ probability }, at, all) => probability <= (all[at - 1]?.probability ?? 1))).toBe(true);
});

test('near codes are looked for as far as 24 characters, separators counted', () => {
  const near = (length: number) =>
    nearestCodes(`${'7'.repeat(length - 4)}1395`, [
      opened([{ serial: { min: 1, max: 30 } }, { month: 2 }, { year: 2 }]),
    ]);
  expect([23, 24, 25].map((length) => near(length).length > 0)).toEqual([true, true, false]);
});
