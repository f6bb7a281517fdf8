import { stampEvenness } from '../../../src/check/stamp-evenness';
import { testRule } from '../../rule-tester';
import { facts, kv0915, readPhoto, stampLine } from './sample';

type What = 'depth-slope' | 'pitch-spread';
const both = (...measured: [what: What, value: number, uncertainty: number, unit?: 'share' | 'degree'][]) =>
  facts({
    decodings: [kv0915],
    photos: [
      readPhoto('p1', {
        lines: [
          stampLine('p1', 'KV0915', {
            measurements: measured.map(([what, value, uncertainty, unit = 'share']) => ({
              what,
              value,
              uncertainty,
              unit: unit as 'share',
            })),
          }),
        ],
      }),
    ],
  });
const told = {
  kind: 'gap' as const,
  basis: ['Characters of one die are struck together, at one pitch; characters struck by hand one by one are not.'],
  asks: ['stamp-photo'],
  photos: ['p1'],
};
const open = 'One photo cannot tell whether that is the light, wear or the way it was struck.';

testRule(stampEvenness, {
  speaks: {
    'on surely uneven depth': [
      both(['depth-slope', 0.9, 0.1]),
      {
        ...told,
        data: { photo: 1, faults: ['depth'] },
        says: `The stamp in photo 1 looks uneven: its depth changes from one end to the other. ${open}`,
      },
    ],
    'on depth that falls as on depth that rises': [
      both(['depth-slope', -0.9, 0.1]),
      {
        ...told,
        data: { photo: 1, faults: ['depth'] },
        says: `The stamp in photo 1 looks uneven: its depth changes from one end to the other. ${open}`,
      },
    ],
    'on both at once': [
      both(['depth-slope', 0.9, 0.1], ['pitch-spread', 0.6, 0.1]),
      {
        ...told,
        data: { photo: 1, faults: ['depth', 'pitch'] },
        says: `The stamp in photo 1 looks uneven: its depth changes from one end to the other and its characters are unevenly spaced. ${open}`,
      },
    ],
  },
  silent: {
    'when the measurement is unsure': both(['depth-slope', 0.9, 0.3]),
    'when it is small': both(['pitch-spread', 0.1, 0.01]),
    'when it is measured in something else': both(['depth-slope', 0.9, 0.1, 'degree']),
    'when nothing was measured': both(),
  },
  declines: {
    'without a read stamp': [facts(), 'cannot-tell', 'no-stamp-read'],
    'with a stamp that was not accepted': [
      facts({ decodings: [{ ...kv0915, accepted: false }] }),
      'cannot-tell',
      'no-stamp-read',
    ],
    'with a code that is only quoted': [
      facts({ decodings: [{ ...kv0915, from: { kind: 'claim', claimId: 'c' } }] }),
      'cannot-tell',
      'no-stamp-read',
    ],
  },
  limits: {
    unevenDepth: {
      is: 0.6,
      step: 0.01,
      given: (value) => both(['depth-slope', value, 0]),
      under: 'silent',
      at: 'silent',
      over: 'gap',
    },
    unevenPitch: {
      is: 0.35,
      step: 0.01,
      given: (value) => both(['pitch-spread', value, 0]),
      under: 'silent',
      at: 'silent',
      over: 'gap',
    },
  },
});
