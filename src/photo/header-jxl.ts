import { ascii } from './ascii';

/** Width over height by the number that stands for it. Source: ISO/IEC 18181-1, SizeHeader. */
const ratios: readonly (readonly [across: number, down: number])[] = [
  [1, 1],
  [12, 10],
  [4, 3],
  [3, 2],
  [16, 9],
  [5, 4],
  [2, 1],
];
/** Bits of a side's length by its selector. */
const sideBits = [9, 13, 18, 30];
/** Boxes that are looked at on the way to the picture: it stands near the front. */
const mostBoxes = 64;

/**
 * Size in pixels of a JPEG XL picture, as stored, from its codestream or from the box that holds its beginning; null where
 * it is no such file, or cut off before it says so. Source: ISO/IEC 18181-1 (SizeHeader) and 18181-2 (boxes).
 */
export function jxlSize(bytes: Uint8Array): { width: number; height: number } | 'cut' | null {
  if (bytes[0] === 0xff && bytes[1] === 0x0a) return sizeIn(bytes, 2);
  if (ascii(bytes, 4, 4) !== 'JXL ') return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = 12, box = 0; at + 8 <= bytes.length && box < mostBoxes; box++) {
    const [length, kind] = [view.getUint32(at), ascii(bytes, at + 4, 4)];
    // Length 1 says that 64 bits of it follow the kind; 0 runs to the end.
    const inside = at + (length === 1 ? 16 : 8);
    if (kind === 'jxlc') return sizeIn(bytes, inside + 2);
    if (kind === 'jxlp') return sizeIn(bytes, inside + 4 + 2);
    if (length < 8) return 'cut';
    at += length;
  }
  return 'cut';
}

function sizeIn(bytes: Uint8Array, from: number): { width: number; height: number } | 'cut' {
  // The longest header: a selector and thirty bits a side, a ratio and the flag.
  if (bytes.length < from + 9) return 'cut';
  let bit = from * 8;
  const read = (count: number): number => {
    let value = 0;
    for (let at = 0; at < count; at++, bit++) value += ((bytes[bit >> 3]! >> (bit & 7)) & 1) * 2 ** at;
    return value;
  };
  const isSmall = read(1) === 1;
  const side = (): number => (isSmall ? 8 * (read(5) + 1) : read(sideBits[read(2)]!) + 1);
  const height = side();
  const ratio = ratios[read(3) - 1];
  return { width: ratio === undefined ? side() : Math.floor((height * ratio[0]) / ratio[1]), height };
}
