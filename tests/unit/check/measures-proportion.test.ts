import { measuresProportion } from '../../../src/check/measures-proportion';
import type { Measure } from '../../../src/listing/types';
import { testRule } from '../../rule-tester';
import { facts, ondrasse, stated, withPhotos } from './sample';

type Sizes = Partial<Record<'width' | 'height' | 'depth', number>>;
interface How {
  unit?: Measure['unit'];
  precisionMm?: number;
  maker?: typeof ondrasse;
}
/** A listing that states sides in millimetres, each as coarse as `precisionMm`. */
const sized = (title: string, sizes: Sizes, { unit = 'cm', precisionMm = 1, maker = ondrasse }: How = {}) =>
  facts({
    maker,
    listing: withPhotos(1, {
      title: stated(title),
      measures: Object.entries(sizes).flatMap(([dimension, mm]) =>
        stated<Measure>({ dimension: dimension as keyof Sizes, mm, precisionMm, unit, words: `${mm / 10} cm` }),
      ),
    }),
  });
const sided = (sizes: Sizes) => Object.entries(sizes).map(([side, mm]) => ({ side, mm }));
const rule = 'The sizes of one model keep its shape; a wrong unit makes every side wrong by the same factor.';
const own = {
  kind: 'doubt' as const,
  basis: [rule],
  asks: ['measures'],
  source: 'maker file of Ondrasse: size of Carryall 30',
};
/** So little that only the limit itself is told from what lies over it. */
const tiny = 1e-6;
const small = { width: 118, height: 83, depth: 67 };
const large = { width: 762, height: 533, depth: 432 };
const tenfold = { width: 3000, height: 2100 };
const tenth = { width: 30, height: 21 };
const two = { ...ondrasse, models: [...ondrasse.models, { name: 'Carryall 50' }] };
const tall = {
  ...ondrasse,
  models: [
    ...ondrasse.models,
    { name: 'Carryall 20', runs: [{ size: { width: 20, height: 20, depth: 10, unit: 'cm' as const, tolerance: 1 } }] },
  ],
};

testRule(measuresProportion, {
  speaks: {
    'of inches written as centimetres, all three sides 2.54 times too small': [
      sized('Carryall 30', small),
      {
        ...own,
        data: { fault: 'unit', model: 'Carryall 30', sides: sided(small), factor: 1 / 2.54, mistaken: 'inches-as-cm' },
        says: 'The listing states width 11.8 cm (4.6 in), height 8.3 cm (3.3 in) and depth 6.7 cm (2.6 in), each smaller by a factor of 2.54 than the side of a Carryall 30: inches written as centimetres would explain it.',
        evidence: [
          'size-read-0',
          'model-size-width',
          'size-read-1',
          'model-size-height',
          'size-read-2',
          'model-size-depth',
        ],
      },
    ],
    'of centimetres written as inches': [
      sized('Carryall 30', large, { unit: 'in' }),
      {
        ...own,
        data: { fault: 'unit', model: 'Carryall 30', sides: sided(large), factor: 2.54, mistaken: 'cm-as-inches' },
        says: 'The listing states width 76.2 cm (30 in), height 53.3 cm (21 in) and depth 43.2 cm (17 in), each 2.54 times the side of a Carryall 30: centimetres written as inches would explain it.',
        evidence: [
          'size-read-0',
          'model-size-width',
          'size-read-1',
          'model-size-height',
          'size-read-2',
          'model-size-depth',
        ],
      },
    ],
    'of millimetres written as centimetres': [
      sized('Carryall 30', tenfold),
      {
        ...own,
        data: { fault: 'unit', model: 'Carryall 30', sides: sided(tenfold), factor: 10, mistaken: 'mm-as-cm' },
        says: 'The listing states width 300 cm (118.1 in) and height 210 cm (82.7 in), each 10 times the side of a Carryall 30: millimetres written as centimetres would explain it.',
        evidence: ['size-read-0', 'model-size-width', 'size-read-1', 'model-size-height'],
      },
    ],
    'of centimetres written as millimetres': [
      sized('Carryall 30', tenth),
      {
        ...own,
        data: { fault: 'unit', model: 'Carryall 30', sides: sided(tenth), factor: 0.1, mistaken: 'cm-as-mm' },
        says: 'The listing states width 3 cm (1.2 in) and height 2.1 cm (0.8 in), each smaller by a factor of 10 than the side of a Carryall 30: centimetres written as millimetres would explain it.',
        evidence: ['size-read-0', 'model-size-width', 'size-read-1', 'model-size-height'],
      },
    ],
    'of a shape that no size of the model has': [
      sized('Ondrasse Carryall 40', { width: 400, height: 120, depth: 220 }),
      {
        ...own,
        data: {
          fault: 'shape',
          one: { side: 'width', mm: 400 },
          other: { side: 'height', mm: 120 },
          models: ['Carryall 30'],
          least: 300 / 210,
          most: 300 / 210,
        },
        says: 'Width 40 cm (15.7 in) is 3.3 times the height 12 cm (4.7 in); Carryall 30 has 1.4 times.',
        evidence: ['proportion-width:height', 'family-proportion-width:height'],
      },
    ],
    'of a model of the file without a size, held against its relatives': [
      sized('Carryall 50', { width: 500, height: 150 }, { maker: two }),
      {
        ...own,
        data: {
          fault: 'shape',
          one: { side: 'width', mm: 500 },
          other: { side: 'height', mm: 150 },
          models: ['Carryall 30'],
          least: 300 / 210,
          most: 300 / 210,
        },
        says: 'Width 50 cm (19.7 in) is 3.3 times the height 15 cm (5.9 in); Carryall 30 has 1.4 times.',
        evidence: ['proportion-width:height', 'family-proportion-width:height'],
      },
    ],
    'of the widest and the narrowest proportion that relatives have': [
      sized('Carryall 40', { width: 400, height: 120 }, { maker: tall }),
      {
        ...own,
        source: 'maker file of Ondrasse: size of Carryall 30, Carryall 20',
        data: {
          fault: 'shape',
          one: { side: 'width', mm: 400 },
          other: { side: 'height', mm: 120 },
          models: ['Carryall 30', 'Carryall 20'],
          least: 1,
          most: 300 / 210,
        },
        says: 'Width 40 cm (15.7 in) is 3.3 times the height 12 cm (4.7 in); Carryall 30 and Carryall 20 have 1.0 to 1.4 times.',
        evidence: ['proportion-width:height', 'family-proportion-width:height'],
      },
    ],
  },
  silent: {
    'when the sides fit': sized('Carryall 30', { width: 300, height: 212, depth: 165 }),
    'when no single unit explains them': sized('Carryall 30', { width: 118, height: 210, depth: 170 }),
    'when they are another size of the model': sized('Carryall 30', { width: 380, height: 260, depth: 190 }),
    'on the same shape in another size': sized('Carryall 40', { width: 400, height: 280, depth: 226 }),
    'on a shape that is a fifth off': sized('Carryall 40', { width: 400, height: 245, depth: 200 }),
    'on a shape that one of the relatives has': sized('Carryall 40', { width: 400, height: 400 }, { maker: tall }),
  },
  declines: {
    'from one side': [sized('Carryall 30', { width: 118 }), 'cannot-tell', 'fewer-than-two-sides'],
    'on a model that nothing on file is named like': [
      sized('A bag', { width: 400, height: 100 }),
      'not-applicable',
      'no-sized-relative',
    ],
  },
  limits: {
    // Stated to the millimetre, the model to 10 mm: a height of 210 mm in a tenth may be off by 10 + (1 + 5) / 0.1.
    tapeMm: {
      is: 5,
      step: 0.01,
      given: (tape) => sized('Carryall 30', { width: 30, height: (210 + 10 + (1 + tape) / 0.1) / 10 }),
      under: 'doubt',
      at: 'doubt',
      over: 'silent',
    },
    // Width over height is 300 / 210 on file; 6 mm either way are the tape and the step, and `tiny` puts it just over.
    familyShare: {
      is: 0.2,
      step: 0.001,
      given: (share) => sized('Carryall 40', { width: 600 * (300 / 210) * (1 + share) + 6 + tiny, height: 594 }),
      under: 'silent',
      at: 'doubt',
      over: 'doubt',
    },
  },
});
