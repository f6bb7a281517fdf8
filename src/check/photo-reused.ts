import type { PhotoRead } from '../stamp/types';
import { orCopied, readAsGiven } from './copies';
import { practice } from './frame';
import { askPhoto, listWords } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

/** Bits of 64 in which two pictures of one photo may differ after scaling and compression. Own choice. */
const sameBits = 3;

export const photoReused = defineWritten({
  id: 'photo-reused',
  family: 'photos',
  title: 'Every photo is another photo',
  failureTitle: 'The same photo is shown more than once',
  kinds: ['gap'],
  basis: 'A photo shown twice shows nothing more the second time.',
  innocent: 'Marketplaces and sellers upload a photo twice by mistake.',
  settles: 'Another photo in its place.',
  source: practice,
  needs: { photos: 'read' },
  run({ photos, photoWords }) {
    const read = readAsGiven(photos);
    const pairs = read.flatMap((first, index) =>
      read
        .slice(index + 1)
        .flatMap((second) => (sameHash(first, second) ? [[first.photoId, second.photoId] as const] : [])),
    );
    const found = pairs.slice(0, 3).map(
      ([a, b]): WrittenSpeech => ({
        kind: 'gap',
        key: `${a}/${b}`,
        statement: `${listWords([photoWords(a), photoWords(b)])} show the same picture.`.replace(/^p/, 'P'),
        photos: [a, b],
        asks: [askPhoto('parts', 'Could you add photos of parts that are not shown yet?')],
      }),
    );
    return orCopied(found, photos);
  },
});

type ReadPhoto = Extract<PhotoRead, { state: 'read' }>;
function sameHash(a: ReadPhoto, b: ReadPhoto): boolean {
  if (!/^[0-9a-f]{16}$/.test(a.hash) || !/^[0-9a-f]{16}$/.test(b.hash)) return false;
  // A blank picture has no edges to compare.
  if (/^(0+|f+)$/.test(a.hash)) return false;
  const bits = (BigInt(`0x${a.hash}`) ^ BigInt(`0x${b.hash}`)).toString(2).replace(/0/g, '').length;
  return bits <= sameBits;
}
