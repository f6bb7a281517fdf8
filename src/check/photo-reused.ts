import * as z from 'zod';
import { type PhotoRead, valueIn } from '../photo/read-types';
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
  limits: { sameBits },
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

function sameHash(one: PhotoRead, other: PhotoRead): boolean {
  const [a, b] = [hashOf(one), hashOf(other)];
  // A blank picture has no edges to compare.
  if (a === null || b === null || /^(0+|f+)$/.test(a)) return false;
  const bits = (BigInt(`0x${a}`) ^ BigInt(`0x${b}`)).toString(2).replace(/0/g, '').length;
  return bits <= sameBits;
}

function hashOf(photo: PhotoRead): string | null {
  const hash = valueIn(photo, 'hash');
  return typeof hash === 'string' && /^[0-9a-f]{16}$/.test(hash) ? hash : null;
}
