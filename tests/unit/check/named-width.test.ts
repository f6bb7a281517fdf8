import { namedWidth } from '../../../src/check/named-width';
import type { Measure } from '../../../src/listing/types';
import { testRule } from '../../rule-tester';
import { claim, facts, judgedBy, measureOf, stated, withPhotos } from './sample';

const sized = (model: string, ...measures: Measure[]) =>
  facts({
    listing: withPhotos(1, { model: stated(model), measures: measures.flatMap((one) => stated(one)) }),
  });
const near = measureOf('width', 510, '51 cm');
const far = measureOf('width', 400, '40 cm');
const basis = ["A model's number is often its width in centimetres."];

testRule(namedWidth, {
  speaks: {
    'for a width near the number, without a maker file': [
      judgedBy(sized('Weekender 50', near), null),
      {
        kind: 'agreement',
        data: { name: 'Weekender 50', mm: 510, number: 50 },
        says: '“Weekender 50” is 51 cm (20.1 in) wide, as its number says.',
        basis,
        evidence: ['size-read-0', 'named-width'],
      },
    ],
    'of another width': [
      sized('Weekender 50', far),
      {
        kind: 'doubt',
        data: { name: 'Weekender 50', mm: 400, number: 50 },
        says: '“Weekender 50” is said to be 40 cm (15.7 in) wide, but its number says about 50 cm.',
        basis,
        asks: ['measures'],
        evidence: ['size-read-0', 'named-width'],
      },
    ],
    'of the seller’s own words, with their claims': [
      facts({
        claims: [
          claim('model', 'Weekender 50', { model: 'Weekender 50' }),
          claim('measure', '40 cm wide', { measure: far }),
        ],
      }),
      {
        kind: 'doubt',
        data: { name: 'Weekender 50', mm: 400, number: 50 },
        says: '“Weekender 50” is said to be 40 cm (15.7 in) wide, but its number says about 50 cm.',
        basis,
        asks: ['measures'],
        claims: ['claim-model', 'claim-measure'],
        evidence: ['size-claim-measure', 'named-width'],
      },
    ],
  },
  silent: {},
  declines: {
    'on a model whose size the file gives, which has its own check': [
      sized('Carryall 30', far),
      'not-applicable',
      'model-size-in-file',
    ],
    'without the width': [sized('Weekender 50', measureOf('height', 300, '30 cm')), 'cannot-tell', 'not-stated'],
    'on a number that is a year': [sized('Weekender 1984', far), 'not-applicable', 'no-numbered-model'],
    'on a number too small for a width': [sized('Weekender 09', far), 'not-applicable', 'no-numbered-model'],
    'on a number too large for one': [sized('Weekender 91', far), 'not-applicable', 'no-numbered-model'],
  },
  limits: {
    // Stated to 5 mm, which rounding explains.
    nearMm: {
      is: 30,
      step: 1,
      given: (mm) => sized('Weekender 50', measureOf('width', 500 + 5 + mm, 'wider')),
      under: 'agreement',
      at: 'agreement',
      over: 'doubt',
    },
  },
});
