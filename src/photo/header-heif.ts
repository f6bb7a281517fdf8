import { ascii } from './ascii';

/** Boxes that hold boxes on the way to the picture's size, and how many bytes stand before the first inner box. */
const containers: Readonly<Record<string, number>> = { meta: 4, iprp: 0, ipco: 0 };

/**
 * Size in pixels of an AVIF or HEIC file, as stored, from the largest `ispe` box (image spatial extents) under meta/iprp/ipco; null when there is none.
 * Source: ISO/IEC 14496-12 (boxes) and 23008-12 section 6.5.3 (ispe).
 */
export function heifSize(bytes: Uint8Array): { width: number; height: number } | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let best: { width: number; height: number } | null = null;
  const waiting: [from: number, to: number][] = [[0, bytes.length]];
  let looked = 0;
  for (let range = waiting.pop(); range !== undefined; range = waiting.pop()) {
    let [at, end] = range;
    while (at + 8 <= end && looked < 5000) {
      looked++;
      const length = view.getUint32(at);
      const kind = ascii(bytes, at + 4, 4);
      // Length 0 runs to the end; 1 would be a 64-bit length, which no photo's header needs.
      const next = length === 0 ? end : at + length;
      if (length === 1 || next <= at || next > end) {
        if (kind !== 'mdat') break;
        at = end;
        continue;
      }
      const before = containers[kind];
      if (before !== undefined) waiting.push([at + 8 + before, next]);
      if (kind === 'ispe' && at + 20 <= end) {
        const size = { width: view.getUint32(at + 12), height: view.getUint32(at + 16) };
        if (best === null || size.width * size.height > best.width * best.height) best = size;
      }
      at = next;
    }
  }
  return best;
}
