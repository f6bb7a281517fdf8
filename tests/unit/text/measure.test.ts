import { describe, expect, it } from 'vitest';
import { parseMeasures } from '../../../src/text';

const read = (text: string, language: string | null) =>
  parseMeasures(text, language).map(({ measure }) => [
    measure.dimension,
    measure.mm,
    measure.precisionMm,
    measure.unit,
  ]);

describe('measurements', () => {
  it.each<[string, string | null, unknown[]]>([
    [
      'H 12 × W 8½ in',
      'en',
      [
        ['height', 304.8, 12.7, 'in'],
        ['width', 215.9, 6.35, 'in'],
      ],
    ],
    [
      '25 x 19 x 15 cm',
      'en',
      [
        ['unknown', 250, 5, 'cm'],
        ['unknown', 190, 5, 'cm'],
        ['unknown', 150, 5, 'cm'],
      ],
    ],
    ['12.5" wide', 'en', [['width', 317.5, 1.27, 'in']]],
    // The next line begins with a word, and is no "in brown".
    ['depth 6 in\nNice bag', 'en', [['depth', 152.4, 12.7, 'in']]],
    [
      'L30 H21 P17',
      'fr',
      [
        ['width', 300, 5, 'assumed-cm'],
        ['height', 210, 5, 'assumed-cm'],
        ['depth', 170, 5, 'assumed-cm'],
      ],
    ],
    [
      'Breite ca. 30 cm, Höhe 21 cm',
      'de',
      [
        ['width', 300, 10, 'cm'],
        ['height', 210, 10, 'cm'],
      ],
    ],
    [
      'H x W x D: 12 x 8 x 4 in',
      'en',
      [
        ['height', 304.8, 12.7, 'in'],
        ['width', 203.2, 12.7, 'in'],
        ['depth', 101.6, 12.7, 'in'],
      ],
    ],
    [
      'Maße (B/H/T): 30/21/17 cm',
      'de',
      [
        ['width', 300, 5, 'cm'],
        ['height', 210, 5, 'cm'],
        ['depth', 170, 5, 'cm'],
      ],
    ],
    [
      '30 cm de large sur 21 cm de haut',
      'fr',
      [
        ['width', 300, 5, 'cm'],
        ['height', 210, 5, 'cm'],
      ],
    ],
    [
      'cm 30 x 20',
      'it',
      [
        ['unknown', 300, 5, 'cm'],
        ['unknown', 200, 5, 'cm'],
      ],
    ],
    [
      'Larghezza 30 cm, altezza 21,5 cm',
      'it',
      [
        ['width', 300, 5, 'cm'],
        ['height', 215, 0.5, 'cm'],
      ],
    ],
    [
      'ancho 30 cm, alto 21 cm, fondo 17 cm',
      'es',
      [
        ['width', 300, 5, 'cm'],
        ['height', 210, 5, 'cm'],
        ['depth', 170, 5, 'cm'],
      ],
    ],
    [
      '30 breed, 21 hoog cm',
      'nl',
      [
        ['width', 300, 5, 'cm'],
        ['height', 210, 5, 'cm'],
      ],
    ],
    [
      '横30cm 縦21cm マチ17cm',
      'ja',
      [
        ['width', 300, 5, 'cm'],
        ['height', 210, 5, 'cm'],
        ['depth', 170, 5, 'cm'],
      ],
    ],
    [
      '幅約30㎝×高さ21㎝',
      'ja',
      [
        ['width', 300, 10, 'cm'],
        ['height', 210, 10, 'cm'],
      ],
    ],
    [
      '12" (30 cm) wide',
      'en',
      [
        ['width', 304.8, 12.7, 'in'],
        ['width', 300, 5, 'cm'],
      ],
    ],
    [
      'Width 12 inches (30 cm), height 8 inches',
      'en',
      [
        ['width', 304.8, 12.7, 'in'],
        ['width', 300, 5, 'cm'],
        ['height', 203.2, 12.7, 'in'],
      ],
    ],
    [
      '30cm (W) x 21cm (H) x 17cm (D)',
      'en',
      [
        ['width', 300, 5, 'cm'],
        ['height', 210, 5, 'cm'],
        ['depth', 170, 5, 'cm'],
      ],
    ],
    [
      '30W x 21H x 17D cm',
      'en',
      [
        ['width', 300, 5, 'cm'],
        ['height', 210, 5, 'cm'],
        ['depth', 170, 5, 'cm'],
      ],
    ],
    [
      'L x B x H: 30 x 17 x 21 cm',
      'de',
      [
        ['width', 300, 5, 'cm'],
        ['depth', 170, 5, 'cm'],
        ['height', 210, 5, 'cm'],
      ],
    ],
    ['strap drop 22 in', 'en', [['strap', 558.8, 12.7, 'in']]],
    ['Henkelhöhe: 15 cm', 'de', [['handle', 150, 5, 'cm']]],
    ['bandoulière 110 cm', 'fr', [['strap', 1100, 5, 'cm']]],
    ['1,20 m strap', 'en', [['strap', 1200, 5, 'cm']]],
    ['300 mm wide', 'en', [['width', 300, 0.5, 'mm']]],
    ['5/8 inch strap', 'en', [['strap', 15.875, 1.588, 'in']]],
    [
      '12 1/2 x 8 3/4 inches',
      'en',
      [
        ['unknown', 317.5, 6.35, 'in'],
        ['unknown', 222.25, 3.175, 'in'],
      ],
    ],
    ['21 cm（高さ）', 'ja', [['height', 210, 5, 'cm']]],
  ])('%s', (text, language, expected) => expect(read(text, language)).toEqual(expected));
});

describe('numbers that measure nothing of the piece', () => {
  it.each([
    ['Carryall 30 in brown', 'en'],
    ['fits a 13 inch laptop', 'en'],
    ['a 2 cm scratch', 'en'],
    ['made in 1994', 'en'],
    ['£40 x 2 in stock', 'en'],
    ['code KV0915', 'en'],
    ['30x21x17', 'en'],
    ['kleiner Kratzer, 2 cm', 'de'],
    ['a stamp "R 8 - 0 3 1 2", no idea', 'en'],
    ['Nummer: 8 3 0 4 - 1 7', 'de'],
    ['bag 10 x 8 x 3', 'en'],
  ])('%s', (text, language) => expect(read(text, language)).toEqual([]));
});

it.each([
  ['Riemen 110–120 cm lang', 'strap', 1150, 55],
  ['length 110-120 cm', 'width', 1150, 55],
  ['ショルダー 110〜120cm', 'strap', 1150, 55],
  ['tracolla da 110 a 120 cm', 'strap', 1150, 55],
  ['bandoulière 1 m 20', 'strap', 1200, 5],
  ['handle drop 20 - 21 cm', 'handle', 205, 10],
])('one statement over a span is one measure: %s', (said, dimension, mm, precisionMm) => {
  expect(parseMeasures(said).map(({ measure }) => measure)).toMatchObject([{ dimension, mm, precisionMm }]);
});
it.each([
  ['W*H (cm): 30 x 20', [300, 200]],
  ['W x H (mm): 300 x 200', [300, 200]],
])('labels and their unit ahead of the numbers: %s', (said, mm) =>
  expect(parseMeasures(said, 'en').map(({ measure }) => [measure.dimension, measure.mm])).toEqual([
    ['width', mm[0]],
    ['height', mm[1]],
  ]),
);
it.each([
  ['10 x 7 x 3 in. Strap drop is 19 in.', ['unknown', 'unknown', 'unknown', 'strap']],
  ['9 x 6 ins. Handles reach 5 ins', ['unknown', 'unknown', 'handle']],
  ['12 in. strap', ['strap']],
  ['11 in. Wide, 8 in. High', ['width', 'height']],
])('the full stop of inches closes a sentence ahead of a strap: %s', (said, wanted) => {
  expect(parseMeasures(said, 'en').map(({ measure }) => measure.dimension)).toEqual(wanted);
});

it.each([
  ['Dentro si legge T5-118/94. È 24 x 20 x 14 cm.', [240, 200, 140]],
  ['The stamp says M3-214/98. 28 x 17 x 5 cm.', [280, 170, 50]],
  ['H. 22. L. 30 cm.', [220, 300]],
  ['Height 22 cm. 30 x 17 cm.', [220, 300, 170]],
])('a code that ends its sentence is no side of what follows: %s', (text, mm) => {
  expect(parseMeasures(text, null).map(({ measure }) => measure.mm)).toEqual(mm);
});

it('digits one by one are a code, the first of them too', () => {
  expect(parseMeasures('Number inside reads 1 4 C 5 0 M 3 7 (yes)', 'en')).toEqual([]);
});
it.each([
  ['bag 28 x 19 x 9.', 'en', [280, 190, 90]],
  ['Mide 30x24x15.', 'es', [300, 240, 150]],
  ['Mide 35 de ancho por 25 de alto y 14 de fondo.', 'es', [350, 250, 140]],
])('three sides without a unit, of what is measured: %s', (said, language, mm) =>
  expect(parseMeasures(said, language).map(({ measure }) => [measure.mm, measure.unit])).toEqual(
    mm.map((one) => [one, 'assumed-cm']),
  ),
);
it('two ends too far apart, or the larger first, are no span', () => {
  expect(parseMeasures('12-30 cm').map(({ measure }) => measure.mm)).toEqual([300]);
  expect(parseMeasures('30-20 cm').map(({ measure }) => measure.mm)).toEqual([200]);
});
