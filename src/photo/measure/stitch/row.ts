import { powerAbove, transform } from '../fourier';
import { median } from '../median';
import { alongLine, type Strip } from './strip';
import { type Line, unrestfulLines } from './unrest';

/** A straight row of something that repeats, in a strip. */
export interface Row extends Line {
  /** Pixels from one to the next, as the strongest of its frequencies has it. */
  pitch: number;
  /** How many times stronger than the same frequency on lines beside it. */
  stands: number;
}

/** Shortest pitch that is looked for, pixels: below, JPEG and sharpening draw rows of their own. */
export const leastPitch = 4;
const fewest = 2.4;

/**
 * Rows near the marked line whose brightness repeats against that of lines beside them, best first.
 * `reach`: rows of the strip that the line may be off at either end.
 */
export function findRows(strip: Strip, reach: number, most: number): Row[] {
  return unrestfulLines(strip, reach, 5)
    .flatMap((line) => pitchesOf(strip, line))
    .sort((a, b) => b.stands - a.stands)
    .slice(0, most);
}

function pitchesOf(strip: Strip, line: Line): Row[] {
  const { length } = strip;
  const samples = Math.min(1024, powerAbove(length) >= length * 1.5 ? powerAbove(length) / 2 : powerAbove(length));
  const bins = Math.min(samples / 2 - 2, Math.floor(length / leastPitch)) + 2;
  const window = Float64Array.from(
    { length: samples },
    (_, at) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (at + 0.5)) / samples),
  );
  const own = powerOf(strip, line.first, line.last, window, bins);
  const beside: Float64Array[] = [];
  for (let off = -strip.aside; off <= strip.aside; off += strip.aside / 5) {
    if (Math.abs(off - (line.first + line.last) / 2) > 4)
      beside.push(powerOf(strip, off, off + line.last - line.first, window, bins));
  }
  const usual = Float64Array.from({ length: bins }, (_, k) => median(beside.map((power) => power[k]!)));
  const floor = median(own.subarray(3)) + 1e-9;
  const rows: Row[] = [];
  for (let k = 2; k < bins - 1; k++) {
    const here = own[k]!;
    if (here < own[k - 1]! || here < own[k + 1]! || here < floor * 3) continue;
    const [low, high] = [Math.sqrt(own[k - 1]!), Math.sqrt(own[k + 1]!)];
    const cycles = k + (high - low) / (2 * Math.sqrt(here) + 1e-9);
    if (cycles < fewest || cycles > length / leastPitch) continue;
    rows.push({ ...line, pitch: length / cycles, stands: here / (usual[k]! + floor) });
  }
  return rows.sort((a, b) => b.stands - a.stands).slice(0, 3);
}

function powerOf(strip: Strip, first: number, last: number, window: Float64Array, bins: number): Float64Array {
  const real = new Float64Array(window.length);
  const imaginary = new Float64Array(window.length);
  alongLine(strip, first, last, 1, real);
  const mean = real.reduce((sum, value) => sum + value, 0) / real.length;
  for (let at = 0; at < real.length; at++) real[at] = (real[at]! - mean) * window[at]!;
  transform(real, imaginary);
  const power = new Float64Array(bins);
  for (let k = 0; k < bins; k++) power[k] = real[k]! ** 2 + imaginary[k]! ** 2;
  return power;
}
