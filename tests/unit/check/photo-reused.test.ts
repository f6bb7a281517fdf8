import { photoReused } from '../../../src/check/photo-reused';
import { testRule } from '../../rule-tester';
import { facts, readPhoto, unreadPhoto, withPhotos } from './sample';

const hashed = (...hashes: string[]) =>
  facts({
    listing: withPhotos(hashes.length),
    photos: hashes.map((hash, index) => readPhoto(`p${index + 1}`, { hash })),
  });
const same = 'f0e1d2c3b4a59687';
/** The same with the lowest bits turned. */
const apart = (bits: number) => {
  const turned = BigInt(`0x${same}`) ^ ((1n << BigInt(bits)) - 1n);
  return hashed(same, turned.toString(16).padStart(16, '0'));
};
const told = (a: number, b: number) => ({
  kind: 'gap' as const,
  data: { photos: [a, b] },
  says: `Photo ${a} and photo ${b} show the same picture.`,
  basis: ['A photo shown twice shows nothing more the second time.'],
  asks: ['parts-not-shown'],
  photos: [`p${a}`, `p${b}`],
});

testRule(photoReused, {
  speaks: {
    'of two photos of one picture': [apart(1), told(1, 2)],
    'of three pairs at most': [hashed(same, same, same, same), [told(1, 2), told(1, 3), told(1, 4)]],
    'of a picture that returns after another': [hashed(same, '0f1e2d3c4b5a6978', same), told(1, 3)],
  },
  silent: {
    'on different pictures': hashed(same, '0f1e2d3c4b5a6978'),
    'on blank pictures': hashed('0000000000000000', '0000000000000000'),
    'on white pictures': hashed('ffffffffffffffff', 'ffffffffffffffff'),
    'on what is no hash': hashed('f0e1', 'f0e1'),
    'on one picture that was not measured': hashed(same, ''),
  },
  declines: { 'when no photo was read': [facts({ photos: [unreadPhoto('p1')] }), 'cannot-tell', 'photos-not-read'] },
  limits: { sameBits: { is: 3, step: 1, given: apart, under: 'gap', at: 'gap', over: 'silent' } },
});
