import { expect, test } from 'vitest';
import { mergeMakerFiles, parseMakerFile } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import { conflictWords } from '../../../src/ui/makers/merge-words';
import { chooseLanguage } from '../../../src/words';

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
      title: 'Workshop QA in Portugal',
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

test('in German the same differences are told in German words, with nouns as German writes them', () => {
  const size = { width: 30, unit: 'cm', tolerance: 1 };
  const fact = { part: 'lining', is: 'olive twill', used: ['1990', null], strength: 'soft', source: 'catalogue' };
  const serial = (last: number) => ({
    serial: { min: 3, max: 4 },
    table: [{ first: 100, last, made: ['1990', null] }],
  });
  const of = (last: number) => [
    { ...system, layout: [{ plant: 2 }, serial(last)], examples: [{ code: 'QA100', reads: 'PT' }] },
  ];
  chooseLanguage('de');
  try {
    expect(
      conflictsOf(
        {
          plants: [{ ...plants[0], name: 'A' }],
          codeSystems: of(999),
          construction: [fact],
          models: [{ name: 'Tote', size }],
        },
        {
          plants: [{ ...plants[0], name: 'B' }],
          codeSystems: of(899),
          construction: [{ ...fact, strength: 'hard' }],
          models: [{ name: 'Tote', size: { ...size, width: 31 } }],
        },
      ),
    ).toEqual([
      { title: 'Werkstatt QA, Portugal', parts: [{ label: 'Name', mine: 'A', theirs: 'B' }] },
      {
        title: 'Aufbau „a“',
        parts: [
          {
            label: 'Gruppen des Codes in ihrer Folge',
            mine: 'Werkstatt 2, laufende Nummer (mindestens 3, höchstens 4, 100 – 999: 1990 – noch immer)',
            theirs: 'Werkstatt 2, laufende Nummer (mindestens 3, höchstens 4, 100 – 899: 1990 – noch immer)',
          },
        ],
      },
      {
        title: 'Futter: olive twill',
        parts: [{ label: 'Gilt', mine: 'als Gewohnheit', theirs: 'ohne Ausnahme' }],
      },
      {
        title: 'Modell Tote',
        parts: [
          { label: 'Jahre und Größen', mine: 'Breite 30 cm, Toleranz ± 1', theirs: 'Breite 31 cm, Toleranz ± 1' },
        ],
      },
    ]);
  } finally {
    chooseLanguage('en');
  }
});

test('every list of a file has a title of its own, in either language', () => {
  const mine = {
    format: 2,
    carriers: [{ kind: 'tab', where: 'inner pocket' }],
    marks: [{ kind: 'repair', texts: ['R', 'R2'], means: 'mended' }],
    parts: [{ id: 'fringe', words: ['fringe'] }],
    numbers: [{ of: 'stitches', part: 'handle', least: 8, most: 9 }],
    typefaces: [{ looks: 'narrow, no feet', used: ['1990', null] }],
    prices: [{ condition: 'used', year: 2015, currency: 'EUR', least: 100 }],
  };
  const theirs = {
    format: 2,
    carriers: [{ kind: 'tab', where: 'inner pocket', note: 'seen' }],
    marks: [{ kind: 'repair', texts: ['R', 'R2'], means: 'sewn anew' }],
    parts: [{ id: 'fringe', words: ['tassels'] }],
    numbers: [{ of: 'stitches', part: 'handle', least: 7, most: 9 }],
    typefaces: [{ looks: 'narrow, no feet', used: ['1990', null], note: 'seen' }],
    prices: [{ condition: 'used', year: 2015, currency: 'EUR', least: 120 }],
  };
  const titles = () => conflictsOf(mine, theirs).map(({ title }) => title);
  expect(titles()).toEqual([
    'On a tab: inner pocket',
    'Mark R, R2',
    'Part fringe',
    'Stitches of a part: handle',
    'Characters: narrow, no feet',
    'Price of any piece, used, 2015, EUR',
  ]);
  chooseLanguage('de');
  try {
    expect(titles()).toEqual([
      'Auf einer Lasche: inner pocket',
      'Zeichen R, R2',
      'Teil fringe',
      'Stiche eines Teils: Henkel',
      'Schrift: narrow, no feet',
      'Preis irgendeines Stücks, gebraucht, 2015, EUR',
    ]);
  } finally {
    chooseLanguage('en');
  }
});
