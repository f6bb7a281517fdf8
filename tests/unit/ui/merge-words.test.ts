import { expect, test } from 'vitest';
import { mergeMakerFiles, parseMakerFile } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import { conflictWords } from '../../../src/ui/makers/merge-words';

const fileOf = (value: object): MakerFile => {
  const result = parseMakerFile({ format: 1, maker: 'Velmar Lane', ...value });
  if (!result.ok) throw new Error(result.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'));
  return result.file;
};
const conflictsOf = (mine: object, theirs: object) =>
  mergeMakerFiles(fileOf(mine), fileOf(theirs)).conflicts.map(conflictWords);

test('a plant that differs is told field by field, with the labels and the values of the editor', () => {
  const plant = { code: 'QA', place: 'PT' };
  expect(
    conflictsOf(
      { plants: [{ ...plant, used: ['1982', null] }] },
      {
        plants: [
          {
            ...plant,
            used: [
              ['1980', '1990'],
              ['1994', null],
            ],
            name: 'Canal workshop',
          },
        ],
      },
    ),
  ).toEqual([
    {
      title: 'Plant QA in Portugal',
      parts: [
        { label: 'Used', mine: '1982 – still', theirs: '1980 – 1990; 1994 – still' },
        { label: 'Name', mine: 'nothing', theirs: 'Canal workshop' },
      ],
    },
  ]);
});

test('of long lists only what differs is told', () => {
  const fact = { part: 'dust-bag', is: 'flannel', used: ['1990', null], source: 'catalogue' };
  expect(
    conflictsOf(
      { construction: [{ ...fact, strength: 'hard', also: ['brushed cotton', 'cream flannel', 'soft flannel'] }] },
      { construction: [{ ...fact, strength: 'soft', also: ['cream flannel', 'brushed cotton'] }] },
    ),
  ).toEqual([
    {
      title: 'Dust bag: flannel',
      parts: [
        { label: 'Also called', mine: 'soft flannel; and the 2 that both have', theirs: 'only the 2 that both have' },
        { label: 'Holds', mine: 'without exception', theirs: 'as a habit' },
      ],
    },
  ]);
});

const system = { id: 'a', used: ['1990', null] };
const example = { code: 'QA94', reads: '1994, PT' };
const plants = [{ code: 'QA', place: 'PT', used: ['1980', null] }];

test('layouts are told as their rows of slots, and examples as what they read', () => {
  expect(
    conflictsOf(
      { plants, codeSystems: [{ ...system, layout: [{ plant: 2 }, { year: 2 }], examples: [example] }] },
      {
        plants,
        codeSystems: [
          {
            ...system,
            layout: [{ plant: 2 }, { year: 'units' }, { year: 'tens' }],
            examples: [{ code: 'QA49', reads: '1994, PT' }],
          },
        ],
      },
    ),
  ).toEqual([
    {
      title: 'Code system “a”',
      parts: [
        {
          label: 'Slots of the code, in order',
          mine: 'workshop 2, year 2',
          theirs: 'workshop 2, year units, year tens',
        },
        { label: 'Examples', mine: 'QA94: 1994, PT', theirs: 'QA49: 1994, PT' },
      ],
    },
  ]);
});

test('where the slots are the same, the setting that differs is told', () => {
  const cycle = { year: 'cycle', letters: 'ABCDEF', first: 1990 };
  const serial = (last: number) => ({
    serial: { min: 3, max: 4 },
    table: [{ first: 100, last, made: ['1990', '1994'] }],
  });
  const of = (first: number, last: number) => [
    { ...system, layout: [{ ...cycle, first }, serial(last)], examples: [{ code: 'E100', reads: '1994' }] },
  ];
  expect(conflictsOf({ codeSystems: of(1990, 999) }, { codeSystems: of(1990, 899) })[0]?.parts).toEqual([
    {
      label: 'Slots of the code, in order',
      mine: 'year cycle (letters in order: ABCDEF, year of the first letter: 1990), running number (at least 3, at most 4, 100 – 999: 1990 – 1994)',
      theirs:
        'year cycle (letters in order: ABCDEF, year of the first letter: 1990), running number (at least 3, at most 4, 100 – 899: 1990 – 1994)',
    },
  ]);
});

test('sizes, prices, habits and the years of stamping are told as their fields show them', () => {
  const size = { width: 30, height: 21, unit: 'cm', tolerance: 1 };
  const floor = { amount: 620, currency: 'EUR', year: 2015 };
  expect(
    conflictsOf(
      {
        models: [{ name: 'Tote', size }],
        stamped: { from: '1980', to: null, source: 'ledger' },
        trade: { outlets: true, newPriceFloor: [floor] },
      },
      {
        models: [{ name: 'Tote', size: { ...size, width: 31 } }],
        stamped: { from: '1981-03', to: '1999', source: 'ledger' },
        trade: { outlets: false, newPriceFloor: [{ ...floor, amount: 640 }] },
      },
    ),
  ).toEqual([
    {
      title: 'Model Tote',
      parts: [
        {
          label: 'Years and sizes',
          mine: 'width 30, height 21 cm, tolerance ± 1',
          theirs: 'width 31, height 21 cm, tolerance ± 1',
        },
      ],
    },
    { title: 'Price of any piece, new, 2015, EUR', parts: [{ label: 'At least', mine: '620', theirs: '640' }] },
    {
      title: 'Codes were stamped',
      parts: [{ label: null, mine: '1980 – still (ledger)', theirs: '1981-03 – 1999 (ledger)' }],
    },
    { title: 'How it is sold: Has outlets', parts: [{ label: null, mine: 'yes', theirs: 'no' }] },
  ]);
});
