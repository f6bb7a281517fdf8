import { sizePlausible } from '../../../src/check/size-plausible';
import type { Measure } from '../../../src/listing/types';
import { testRule } from '../../rule-tester';
import { facts, measureOf, stated, withPhotos } from './sample';

const sized = (...measures: Measure[]) =>
  facts({ listing: withPhotos(1, { measures: measures.flatMap((one) => stated(one)) }) });
const wide = (mm: number) => sized(measureOf('width', mm, `${mm / 10} cm`));
const rule = 'From a key ring to a trunk, no piece that is carried is under 1 cm or over 2 m wide or high.';

testRule(sizePlausible, {
  speaks: {
    'on a width of three metres': [
      sized(measureOf('width', 3000, '300 cm')),
      {
        kind: 'doubt',
        data: { side: 'width', words: '300 cm', mm: 3000, limit: 'largest' },
        says: 'The width is stated as “300 cm” = 300 cm (118.1 in), which is over 2 m.',
        basis: [rule],
        asks: ['measures'],
      },
    ],
    'on a height of a few millimetres': [
      sized(measureOf('height', 2.1, '2.1 mm')),
      {
        kind: 'doubt',
        data: { side: 'height', words: '2.1 mm', mm: 2.1, limit: 'smallest' },
        says: 'The height is stated as “2.1 mm” = 0.2 cm (0.1 in), which is under 1 cm.',
        basis: [rule],
        asks: ['measures'],
      },
    ],
  },
  silent: {
    'on a belt': wide(1050),
    'on a key ring': wide(20),
    'on a garment bag': wide(1300),
    'on a trunk': wide(960),
    'on a usual size': wide(300),
    'on the depth of a card case': sized(measureOf('width', 100, '10 cm'), measureOf('depth', 5, '0.5 cm')),
  },
  declines: { 'without any size': [sized(), 'cannot-tell', 'not-stated'] },
  limits: {
    smallestMm: { is: 10, step: 0.1, given: wide, under: 'doubt', at: 'silent', over: 'silent' },
    largestMm: { is: 2000, step: 1, given: wide, under: 'silent', at: 'silent', over: 'doubt' },
  },
});
