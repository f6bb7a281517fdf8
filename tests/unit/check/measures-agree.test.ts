import { measuresAgree } from '../../../src/check/measures-agree';
import type { Measure } from '../../../src/listing/types';
import { testRule } from '../../rule-tester';
import { claim, facts, measureOf, stated, withPhotos } from './sample';

const sized = (...measures: Measure[]) =>
  facts({ listing: withPhotos(1, { measures: measures.flatMap((one) => stated(one)) }) });
const wide = measureOf('width', 300, '30 cm');
const wider = measureOf('width', 355.6, '14 in', 12.7);
const told = {
  kind: 'doubt' as const,
  data: { side: 'width', one: { words: '30 cm', mm: 300 }, other: { words: '14 in', mm: 355.6 } },
  says: 'The width is stated as “30 cm” = 30 cm (11.8 in) and as “14 in” = 35.6 cm (14 in).',
  basis: ['1 inch is 25.4 mm; the same side has one length.'],
  asks: ['measures'],
};

testRule(measuresAgree, {
  speaks: {
    'on one side with two lengths': [sized(wide, wider), { ...told, evidence: ['size-read-0', 'size-read-1'] }],
    'of the farthest two of three': [
      sized(wider, measureOf('width', 320, '32 cm'), wide),
      { ...told, evidence: ['size-read-2', 'size-read-0'] },
    ],
    'with the claims on that side alone': [
      facts({
        listing: withPhotos(1, { measures: stated(wide) }),
        claims: [
          claim('measure', '14 in wide', { measure: wider }, 'claim-wide'),
          claim('measure', '20 cm high', { measure: measureOf('height', 200, '20 cm') }, 'claim-high'),
        ],
      }),
      { ...told, claims: ['claim-wide'], evidence: ['size-read-0', 'size-claim-wide'] },
    ],
  },
  silent: {
    'when rounding explains it': sized(wide, measureOf('width', 304.8, '12 in', 12.7)),
    'on different sides': sized(wide, measureOf('height', 200, '20 cm')),
  },
  limits: {
    // Both are stated to 5 mm, which rounding explains.
    tapeMm: {
      is: 10,
      step: 1,
      given: (mm) => sized(wide, measureOf('width', 300 + 5 + 5 + mm, 'wider')),
      under: 'silent',
      at: 'silent',
      over: 'doubt',
    },
  },
});
