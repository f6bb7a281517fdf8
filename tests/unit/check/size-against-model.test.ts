import { sizeAgainstModel } from '../../../src/check/size-against-model';
import type { Measure } from '../../../src/listing/types';
import { testRule } from '../../rule-tester';
import { claim, facts, judgedBy, measureOf, ondrasse, stated, withPhotos } from './sample';

const sized = (title: string, ...measures: Measure[]) =>
  facts({ listing: withPhotos(1, { title: stated(title), measures: measures.flatMap((one) => stated(one)) }) });
const row = (...sizes: number[]) =>
  sized('Carryall 30', ...sizes.map((cm) => measureOf('unknown', cm * 10, `${cm} cm`)));
const source = 'maker file of Ondrasse: size of Carryall 30';
const basis = ['A model has the size of its time; the measurements of a piece stay within its tolerance.'];
const fitting = (...fits: [side: string, mm: number][]) => ({
  model: 'Carryall 30',
  off: [],
  fits: fits.map(([side, mm]) => ({ side, mm })),
});

testRule(sizeAgainstModel, {
  speaks: {
    'for sides within the tolerance': [
      sized('Ondrasse Carryall 30', measureOf('width', 305, '30.5 cm'), measureOf('height', 210, '21 cm')),
      {
        kind: 'agreement',
        data: fitting(['width', 305], ['height', 210]),
        says: 'The listing states width 30.5 cm (12 in) and height 21 cm (8.3 in), which a Carryall 30 has.',
        basis,
        source,
        evidence: ['size-read-0', 'model-size-width', 'size-read-1', 'model-size-height'],
      },
    ],
    'of another width, in both units': [
      sized('Ondrasse Carryall 30', measureOf('width', 254, '10 in', 12.7)),
      {
        kind: 'doubt',
        data: {
          model: 'Carryall 30',
          off: [{ side: 'width', mm: 254, words: '10 in', expectedMm: 300 }],
          fits: [],
        },
        says: 'The listing says Carryall 30, but states width “10 in” = 25.4 cm (10 in) and not 30 cm (11.8 in).',
        basis,
        asks: ['measures'],
        source,
        evidence: ['size-read-0', 'model-size-width'],
      },
    ],
    'for a measure that is as coarse as it is stated': [
      sized('Carryall 30', measureOf('width', 279.4, '11 in', 12.7)),
      {
        kind: 'agreement',
        data: fitting(['width', 279.4]),
        says: 'The listing states width 27.9 cm (11 in), which a Carryall 30 has.',
        basis,
        source,
        evidence: ['size-read-0', 'model-size-width'],
      },
    ],
    'with the sources that the file gives for the size': [
      judgedBy(sized('Carryall 50', measureOf('width', 500, '50 cm')), {
        ...ondrasse,
        models: [
          {
            name: 'Carryall 50',
            runs: [
              { size: { width: 50, height: 40, depth: 20, unit: 'cm', tolerance: 1 }, sources: ['invented size list'] },
            ],
          },
        ],
      }),
      {
        kind: 'agreement',
        data: { ...fitting(['width', 500]), model: 'Carryall 50' },
        says: 'The listing states width 50 cm (19.7 in), which a Carryall 50 has.',
        basis,
        source: 'maker file of Ondrasse: size of Carryall 50 (source: invented size list)',
        evidence: ['size-read-0', 'model-size-width'],
      },
    ],
    'for a row without names in any order': [
      row(21, 30, 17),
      {
        kind: 'agreement',
        data: fitting(['width', 300], ['height', 210], ['depth', 170]),
        says: 'The listing states width 30 cm (11.8 in), height 21 cm (8.3 in) and depth 17 cm (6.7 in), which a Carryall 30 has.',
        basis,
        source,
        evidence: [
          'size-read-1',
          'model-size-width',
          'size-read-0',
          'model-size-height',
          'size-read-2',
          'model-size-depth',
        ],
      },
    ],
    'of the one side of a row that is off, and of what it goes by': [
      { ...row(40, 21, 17), claims: [claim('model', 'Carryall 30', { model: 'Carryall 30' })] },
      {
        kind: 'doubt',
        data: {
          model: 'Carryall 30',
          off: [{ side: 'width', mm: 400, words: '40 cm', expectedMm: 300 }],
          fits: [
            { side: 'height', mm: 210 },
            { side: 'depth', mm: 170 },
          ],
        },
        says: 'The listing says Carryall 30, but states width “40 cm” = 40 cm (15.7 in) and not 30 cm (11.8 in).',
        basis,
        asks: ['measures'],
        claims: ['claim-model'],
        source,
        evidence: ['size-read-0', 'model-size-width'],
      },
    ],
  },
  silent: {},
  declines: {
    'on an unknown model': [sized('A bag', measureOf('width', 254, '10 in')), 'not-applicable', 'no-model-of-file'],
    'without a measurement': [sized('Carryall 30'), 'cannot-tell', 'no-sides-stated'],
    'where the file gives the model no size': [
      judgedBy(sized('Carryall 50', measureOf('width', 254, '10 in')), {
        ...ondrasse,
        models: [{ name: 'Carryall 50' }],
      }),
      'not-applicable',
      'model-without-size',
    ],
  },
  limits: {
    // Stated to 5 mm, the model to 10.
    tapeMm: {
      is: 5,
      step: 1,
      given: (mm) => sized('Carryall 30', measureOf('width', 300 + 5 + 10 + mm, 'wider')),
      under: 'agreement',
      at: 'agreement',
      over: 'doubt',
    },
  },
});
