import { codeDenied } from '../../../src/check/code-denied';
import { testRule } from '../../rule-tester';
import { claim, decoded, facts, kv0915 } from './sample';

const none = claim('no-code', 'no date code inside', {});
const quoted = claim('code', 'date code KV0915', { code: 'KV0915' });
const unsure = { ...decoded('2018', []), accepted: false };
const typed = { ...kv0915, from: { kind: 'typed' as const } };

testRule(codeDenied, {
  speaks: {
    'of a code in a photo where the seller finds none': [
      facts({ decodings: [kv0915], claims: [none] }),
      {
        kind: 'gap',
        data: { shown: { from: 'photo', photo: 1, code: 'KV0915' }, denied: 'no date code inside' },
        says: 'The stamp in photo 1 reads KV0915, but the seller finds no code: “no date code inside”.',
        basis: [
          'A seller who finds no code shows none. It is easily overlooked, and what a photo shows may be another mark.',
        ],
        asks: ['whole-stamp'],
        evidence: ['code-text-decoding-KV0915'],
        photos: ['p1'],
        claims: ['claim-no-code'],
      },
    ],
  },
  silent: {
    'where no photo shows one': facts({ claims: [none] }),
    'where what a photo shows is not surely read': facts({ decodings: [unsure], claims: [none] }),
    'where the buyer typed one': facts({ decodings: [typed], claims: [none] }),
  },
  declines: {
    'where the seller quotes one too': [
      facts({ decodings: [kv0915], claims: [none, quoted] }),
      'not-applicable',
      'no-code-denied',
    ],
    'where nobody says that there is none': [facts({ decodings: [kv0915] }), 'not-applicable', 'no-code-denied'],
  },
});
