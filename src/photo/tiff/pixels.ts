import { leastSamples, type TiffLayout } from './layout';

/** Red, green, blue of one pixel from its samples, each 0 to 255. */
type Colour = (samples: Float32Array, out: Float32Array) => void;

/** How a pixel's samples, 0 to 255 but for a palette's numbers, become its colour on white. */
export function colourOf({ meaning, alpha, bits, colours }: TiffLayout): Colour {
  const plain = plainColour(meaning, bits, colours);
  if (alpha === 'none') return plain;
  const at = leastSamples[meaning];
  return (from, out) => {
    plain(from, out);
    const share = from[at]! / 255;
    const own = alpha === 'beside' ? share : 1;
    for (let channel = 0; channel < 3; channel++) out[channel] = out[channel]! * own + 255 * (1 - share);
  };
}

function plainColour(meaning: TiffLayout['meaning'], bits: number, colours: readonly number[]): Colour {
  switch (meaning) {
    case 'grey':
      return (from, out) => out.fill(from[0]!);
    case 'white-is-zero':
      return (from, out) => out.fill(255 - from[0]!);
    case 'palette':
      // 16 bits a part, all reds first. Source: TIFF 6.0, ColorMap.
      return (from, out) => {
        for (let channel = 0; channel < 3; channel++) out[channel] = colours[(channel << bits) + from[0]!]! / 257;
      };
    case 'cmyk':
      // Without the ink's own profile: each ink takes its share of the paper's light.
      return (from, out) => {
        for (let channel = 0; channel < 3; channel++) out[channel] = ((255 - from[channel]!) * (255 - from[3]!)) / 255;
      };
    default:
      return (from, out) => {
        for (let channel = 0; channel < 3; channel++) out[channel] = from[channel]!;
      };
  }
}

/**
 * Undoes what a row's samples say as differences from the pixel before, in place. Source: TIFF 6.0, section 14.
 * `step`: samples between one and the same of the next pixel.
 */
export function addDifferences(row: Uint8Array, bits: 8 | 16, step: number, isLittle: boolean): void {
  if (bits === 8) {
    for (let at = step; at < row.length; at++) row[at] = row[at]! + row[at - step]!;
    return;
  }
  const view = new DataView(row.buffer, row.byteOffset, row.byteLength);
  for (let at = step * 2; at + 2 <= row.length; at += 2) {
    view.setUint16(at, view.getUint16(at, isLittle) + view.getUint16(at - step * 2, isLittle), isLittle);
  }
}

/** One sample of a row, 0 to 255; a palette's numbers as they are. */
export function sampleOf({
  bits,
  isLittle,
  meaning,
}: Pick<TiffLayout, 'bits' | 'isLittle' | 'meaning'>): (row: Uint8Array, index: number) => number {
  if (bits === 8) return (row, index) => row[index]!;
  // The upper byte is the sample, as near as 8 bits tell it.
  if (bits === 16) return (row, index) => row[2 * index + (isLittle ? 1 : 0)]!;
  const most = (1 << bits) - 1;
  const scale = meaning === 'palette' ? 1 : 255 / most;
  return (row, index) => {
    const bit = index * bits;
    return ((row[bit >> 3]! >> (8 - bits - (bit & 7))) & most) * scale;
  };
}
