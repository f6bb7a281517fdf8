import { describe, expect, test } from 'vitest';
import { decodeExactly, readsOf } from '../../../src/code';
import { fillLayout } from '../../../src/code/encode';
import { fillExactly, readExactly } from '../../../src/code/exact';
import { longestCode } from '../../../src/code/layout';
import { builtInMakers } from '../../../src/maker';
import type { Layout, Period } from '../../../src/maker/types';
import { laidOut, opened, plants, system } from './tried';

const monthFirst: Layout = [{ month: 2 }, { year: 2 }];
const weekFirst: Layout = [{ week: 2 }, { year: 2 }];

describe('a system of several layouts', () => {
  const read = (code: string, ...layouts: Layout[]) => {
    const { exact, impossible } = readExactly(opened([], { layout: undefined, layouts }), code);
    return { reads: exact.map(({ reading }) => readsOf(reading)), impossible: impossible?.slot ?? null };
  };
  test.each([
    ['1295', [monthFirst, weekFirst], ['1995-12', '1995-W12'], null],
    ['1295', [weekFirst, monthFirst], ['1995-W12', '1995-12'], null],
    // What one of them reads is not impossible, whichever comes first.
    ['5095', [monthFirst, weekFirst], ['1995-W50'], null],
    ['5095', [weekFirst, monthFirst], ['1995-W50'], null],
    ['9995', [monthFirst, weekFirst], [], 'month'],
    ['9995', [weekFirst, monthFirst], [], 'week'],
    ['995', [monthFirst, weekFirst], [], null],
    ['', [monthFirst], [], null],
    ['1295', [], [], null],
  ])('%s under %j reads %j, impossible in %s', (code, layouts, reads, impossible) => {
    expect(read(code, ...layouts)).toEqual({ reads, impossible });
  });
});

test('each meaning of one filling has the same share', () => {
  const { exact } = readExactly(opened([{ year: 1 }, { serial: 1 }], { used: ['1970', '1999'] }), '51');
  expect(exact.map(({ reading }) => [readsOf(reading), reading.probability])).toEqual([
    ['1975', 1 / 3],
    ['1985', 1 / 3],
    ['1995', 1 / 3],
  ]);
});

test('every system of a file is tried, in the order of the file', () => {
  const file = {
    ...builtInMakers[0]!,
    plants: [],
    codeSystems: [
      system(weekFirst, { id: 'b' }),
      system(monthFirst, { id: 'a' }),
      system([{ serial: 3 }], { id: 'c' }),
    ],
  };
  expect(decodeExactly('1295', file).map(({ system: { id } }) => id)).toEqual(['b', 'a']);
  expect(decodeExactly('129', file).map(({ system: { id } }) => id)).toEqual(['c']);
  expect(decodeExactly('12', file)).toEqual([]);
  expect(decodeExactly('', file)).toEqual([]);
});

test.each<[layout: Layout, fitting: number[], other: number[]]>([
  [[{ serial: { min: 3, max: 5 } }], [3, 4, 5], [0, 1, 2, 6]],
  [[{ serial: 4 }], [4], [3, 5]],
  [
    [{ literal: '11', optional: true }, { serial: 3 }],
    [3, 5],
    [2, 4, 6],
  ],
  [
    [{ serial: { min: 1, max: 20 } }, { serial: { min: 1, max: 20 } }, { serial: { min: 1, max: 24 } }],
    [3, 64],
    [2, 65],
  ],
])('%j is filled by as many characters as it has', (layout, fitting, other) => {
  const fills = (length: number) => fillExactly('1'.repeat(length), laidOut(layout), 'valid').length > 0;
  expect(fitting.filter((length) => !fills(length))).toEqual([]);
  expect(other.filter(fills)).toEqual([]);
});

test('no layout has more characters than the longest code', () => {
  expect(longestCode).toBe(64);
  expect(laidOut([{ any: 32 }, { any: 32 }]).longest).toBe(64);
  expect(() => laidOut([{ any: 32 }, { any: 32 }, { any: 1 }])).toThrow('code-too-long');
});

test('a filling keeps the shape, or is valid', () => {
  const laid = laidOut([{ month: 2 }, { check: 'luhn' }]);
  expect(fillExactly('125', laid, 'valid')).toEqual(['125']);
  expect(fillExactly('124', laid, 'valid')).toEqual([]);
  expect(fillExactly('124', laid, 'shape')).toEqual(['124']);
  expect(fillExactly('998', laid, 'valid')).toEqual([]);
  expect(fillExactly('998', laid, 'shape')).toEqual(['998']);
  expect(fillExactly('K24', laid, 'shape')).toEqual([]);
});

test('a check is worked out when a layout is filled, whatever is given for it', () => {
  const laid = laidOut([{ any: 2 }, { check: 'luhn' }]);
  expect([null, '5', '0', '999'].map((given) => fillLayout(laid, { values: {}, texts: ['12', given] }))).toEqual(
    Array(4).fill('125'),
  );
});

test.each([
  ['the check in the middle', [{ any: 3 }, { check: 'vin' }, { any: 2 }], ['001600', '000410'], ['001500', '000510']],
  [
    'a separator before it',
    [{ any: 2 }, { separator: '-' }, { any: 1 }, { check: 'vin' }, { any: 2 }],
    ['00-1600'],
    ['00-1500'],
  ],
  ['the check first', [{ check: 'vin' }, { any: 2 }], ['710', '601'], ['810', '701']],
  ['the check last', [{ any: 2 }, { check: 'vin' }], ['108', '017'], ['107', '018']],
] as [string, Layout, string[], string[]][])(
  'the weights of a check keep to its place: %s',
  (_, layout, right, wrong) => {
    const fits = (code: string) => readExactly(opened(layout), code).exact.length > 0;
    expect(right.filter((code) => !fits(code))).toEqual([]);
    expect(wrong.filter(fits)).toEqual([]);
  },
);

describe('what a filled layout means', () => {
  const meanings = (layout: Layout, code: string, used: Period = ['1980', '2010'], latest?: number) =>
    readExactly(opened(layout, { used }), code, latest).exact.map(({ reading, meaning }) => ({
      reads: readsOf(reading),
      code: meaning.plant?.code ?? null,
      inUse: meaning.plantInUse,
      inPeriod: meaning.inPeriod,
      inFuture: meaning.inFuture,
    }));

  // KV worked in Belgium from 1988 to 2003, HJ in France from 1990 and in Italy from 2000.
  const plantFirst: Layout = [{ plant: 2 }, { year: 4 }];
  expect(plants.map(({ code }) => code)).toEqual(['KV', 'HJ', 'HJ', 'ZZ']);
  test.each([
    ['KV1987', [['1987, BE', false]]],
    ['KV1988', [['1988, BE', true]]],
    ['KV2003', [['2003, BE', true]]],
    ['KV2004', [['2004, BE', false]]],
    [
      'HJ1989',
      [
        ['1989, FR', false],
        ['1989, IT', false],
      ],
    ],
    ['HJ1999', [['1999, FR', true]]],
    [
      'HJ2000',
      [
        ['2000, FR', true],
        ['2000, IT', true],
      ],
    ],
  ])('%s is of the plants that worked then, or of any: %j', (code, wanted) => {
    expect(meanings(plantFirst, code).map(({ reads, inUse }) => [reads, inUse])).toEqual(wanted);
  });

  test('a code without a date is of every plant, and without a plant of none', () => {
    expect(meanings([{ plant: 2 }, { serial: 1 }], 'HJ1').map(({ reads, inUse }) => [reads, inUse])).toEqual([
      ['undated, FR', true],
      ['undated, IT', true],
    ]);
    expect(meanings([{ year: 4 }], '1995')).toEqual([
      { reads: '1995', code: null, inUse: true, inPeriod: true, inFuture: false },
    ]);
    // Letters of no plant of their length: any fit, and name none.
    expect(meanings([{ plant: 3 }, { year: 4 }], 'KVX1995').map(({ code, inUse }) => [code, inUse])).toEqual([
      [null, true],
    ]);
  });

  test.each([
    ['1979', undefined, false, false],
    ['1980', undefined, true, false],
    ['2010', undefined, true, false],
    ['2011', undefined, false, false],
    ['1999', 2000, true, false],
    ['2000', 2000, true, false],
    ['2001', 2000, false, true],
  ])('%s, seen in %s: in its period %s, after it was seen %s', (code, latest, inPeriod, inFuture) => {
    expect(meanings([{ year: 4 }], code, ['1980', '2010'], latest)).toEqual([
      { reads: code, code: null, inUse: true, inPeriod, inFuture },
    ]);
  });
});
