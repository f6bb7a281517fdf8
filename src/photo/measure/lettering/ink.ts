import { boxMean } from '../../contrast';
import type { GreyImage } from '../../types';

/** How much of a character each pixel holds: 0 the ground around it, 1 the middle of its strokes. */
export interface Ink extends GreyImage {
  /** Steps of 255 between ground and strokes. */
  contrast: number;
}

/** Characters that part less from their ground are not measured, steps of 255. */
const leastContrast = 10;
/** The other side of the ground may show at most this share of what the strokes show: else both walls of a pressed one. */
const mostOtherSide = 0.6;

/** The characters of a straightened line, told from a ground whose light changes slowly; `high`: their height, pixels. */
export function inkOf(line: GreyImage, high: number): Ink | 'flat' | 'relief' {
  const { width, height } = line;
  const around = boxMean(line, Math.round(high * 1.5), Math.round(high));
  const apart = boxMean({ ...line, data: line.data.map((value, at) => value - around.data[at]!) }, 1).data;
  const sorted = Float32Array.from(apart).sort();
  const at = (share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
  // Strokes fill less than half of their line: its middle value is the ground's.
  const ground = at(0.5);
  const [darker, lighter] = [ground - at(0.02), at(0.98) - ground];
  const contrast = Math.max(darker, lighter);
  if (contrast < leastContrast) return 'flat';
  if (Math.min(darker, lighter) > mostOtherSide * contrast) return 'relief';
  const sign = darker > lighter ? -1 : 1;
  // The middle of strokes, of which about a fifth of the line is.
  const full = sign * (at(sign < 0 ? 0.05 : 0.95) - ground);
  if (full < leastContrast / 2) return 'flat';
  const data = apart.map((value) => Math.min(1.2, Math.max(0, (sign * (value - ground)) / full)));
  return { width, height, data, contrast };
}
