import { describe, expect, it, test } from 'vitest';
import { decodeLine } from '../../../src/code';
import { otherNumber } from '../../../src/code/other-number';
import { builtInMakers, type MakerFile } from '../../../src/maker';
import type { Lattice } from '../../../src/stamp';

const now = '2026-11-25';
const sharp = (text: string): Lattice => ({ steps: [...text].flatMap((one) => [{ [one]: 0.999 }, { '': 1 }]) });
const label = ['VERITABLE CUIR', 'ATELIERS DU PONT'];
const dated = (day: string): string[] => ['BEST BEFORE', day];

describe('among other words', () => {
  it.each([
    ['1874', label, 'year'],
    ['2026', label, 'year'],
    ['1600', label, null],
    ['2027', label, null],
    ['9103', label, null],
    ['KV1906', label, null],
    ['45 MM', label, 'measure'],
    ['2.5 CM', label, 'measure'],
    ['120ML', label, 'measure'],
    ['75 G', label, 'measure'],
    ['75G', label, null],
    ['310KJ', [], 'measure'],
    ['88 KCAL', label, 'measure'],
    ['000', label, 'row'],
    ['0O0D', [], 'row'],
    ['11I1', [], 'row'],
    ['8888', ['5526'], 'row'],
    ['777', label, null],
    ['0010', label, null],
    ['0512 CM', label, null],
    ['09.41', label, null],
    ['09.41', dated('14 MAR'), 'time'],
    ['0941', dated('14.03.2024'), 'time'],
    ['22 05', dated('MAR 2024'), 'time'],
    ['09.41', dated('03/24'), null],
    ['09.61', dated('14 MAR'), null],
    ['31.05', dated('14 MAR'), null],
    ['9/41', dated('14 MAR'), null],
  ] as const)('%s beside %s is %s', (text, beside, as) => {
    expect(otherNumber(text, beside, now)).toBe(as);
  });
});

test.each(['1874', '45 M', '0941'])('%s alone, or beside another number, is no other number', (text) => {
  expect(otherNumber(text, [], now)).toBeNull();
  expect(otherNumber(text, ['5526', 'A-12'], now)).toBeNull();
});

test('what may be another number is left open with its readings, which stay near', () => {
  const { accepted, readings, nearest, open } = decodeLine(
    { lattice: sharp('1809') },
    { makers: [], maker: null, now },
    label,
  );
  expect([accepted, readings, open]).toEqual([false, [], [{ kind: 'other-number', as: 'year' }]]);
  expect(nearest.some(({ text, system }) => text === '1809' && system.id === 'year-month')).toBe(true);
  expect(decodeLine({ lattice: sharp('1809') }, { makers: [], maker: null, now }).accepted).toBe(true);
});

test('what is not surely read is left as unsure as it was', () => {
  const doubtful: Lattice = {
    steps: [
      { '1': 0.999 },
      { '': 1 },
      { '8': 0.6, '6': 0.4 },
      { '': 1 },
      { '0': 0.999 },
      { '': 1 },
      { '9': 0.5, '4': 0.5 },
    ],
  };
  const { accepted, open } = decodeLine({ lattice: doubtful }, { makers: [], maker: null, now }, label);
  expect([accepted, open]).toEqual([false, undefined]);
});

test('a system of a maker explains it as a code', () => {
  const [file] = builtInMakers;
  const years = { id: 'years', used: ['1990', '2030'], layout: [{ year: 4 }], examples: [] };
  const maker = { ...file!, maker: 'Verrano & Sohn', codeSystems: [years] } as unknown as MakerFile;
  const known = { makers: [maker], maker: maker.maker, now };
  const read = decodeLine({ lattice: sharp('1998') }, known, label);
  expect([read.accepted, read.readings[0]?.system.maker, read.open]).toEqual([true, maker.maker, undefined]);
  expect(decodeLine({ lattice: sharp('1874') }, known, label).open).toEqual([{ kind: 'other-number', as: 'year' }]);
});
