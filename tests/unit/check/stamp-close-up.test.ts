import { stampCloseUp } from '../../../src/check/stamp-close-up';
import { testRule } from '../../rule-tester';
import { facts, kv0915, madeIn, readPhoto, stampLine, unreadPhoto, withPhotos } from './sample';

const two = (second = readPhoto('p2')) => facts({ listing: withPhotos(2), photos: [readPhoto('p1'), second] });
const scored = (stampScore: number) =>
  facts({ photos: [readPhoto('p1', { lines: [stampLine('p1', 'KV0915', { stampScore })] })] });
const quoted = { ...kv0915, from: { kind: 'claim' as const, claimId: 'c' } };
const basis = ['The stamp is what dates a piece; a buyer should see it and not only be told.'];

testRule(stampCloseUp, {
  speaks: {
    'when photos that were all read show none': [
      two(),
      { kind: 'gap', data: { photos: 2 }, says: 'None of the 2 photos shows the stamp.', basis, asks: ['stamp-photo'] },
    ],
    'also when the code is quoted': [
      { ...two(), decodings: [quoted] },
      { kind: 'gap', data: { photos: 2 }, says: 'None of the 2 photos shows the stamp.', basis, asks: ['stamp-photo'] },
    ],
    'when only one of two dates that the seller gives is before the first stamps': [
      { ...two(), claims: [madeIn(1972), { ...madeIn(1985), id: 'claim-made-2' }] },
      { kind: 'gap', data: { photos: 2 }, says: 'None of the 2 photos shows the stamp.', basis, asks: ['stamp-photo'] },
    ],
  },
  silent: {
    'when a photo shows a stamp': scored(0.9),
    'when a photo shows one that was not read': facts({ decodings: [{ ...kv0915, accepted: false }] }),
  },
  declines: {
    'while one photo of two is unread': [two(unreadPhoto('p2') as never), 'cannot-tell', 'photos-not-read'],
    'on a piece from before the first stamps': [facts({ claims: [madeIn(1972)] }), 'not-applicable', 'not-yet-stamped'],
  },
  limits: {
    looksLikeStamp: { is: 0.5, step: 0.01, given: scored, under: 'gap', at: 'silent', over: 'silent' },
  },
});
