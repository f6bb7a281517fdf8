import * as z from 'zod';
import type { PhotoRead } from '../stamp/types';
import { askFor } from './asks';
import { orWhyCopied, readAsGiven } from './copies';
import { defineCheck, practice } from './frame';
import { photoNumber } from './types';

/** Bits of 64 in which two pictures of one photo may differ after scaling and compression. Own choice. */
const sameBits = 3;

export const photoReused = defineCheck({
  id: 'photo-reused',
  family: 'photos',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({ photos: z.tuple([photoNumber, photoNumber]) }),
  needs: { photos: 'read' },
  run({ photos, photoNumber: number }) {
    const read = readAsGiven(photos);
    const pairs = read.flatMap((first, index) =>
      read
        .slice(index + 1)
        .flatMap((second) => (sameHash(first, second) ? [[first.photoId, second.photoId] as const] : [])),
    );
    const found = pairs.slice(0, 3).map(([a, b]) => ({
      kind: 'gap' as const,
      key: `${a}/${b}`,
      data: { photos: [number(a), number(b)] as [number | null, number | null] },
      photos: [a, b],
      asks: [askFor('parts-not-shown', {})],
    }));
    return orWhyCopied(found, photos);
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
