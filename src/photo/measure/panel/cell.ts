import type { GreyImage } from '../../types';
import { sampleGrey } from '../../warp';
import { type HalfSpectrum, planeOf, spectrumOf } from '../fourier';

/** One repeat of a pattern, as all repeats of a part of the panel have it on the average: a square that closes on itself. */
export interface Cell {
  /** `side` × `side` samples, mean 0, sum of squares 1. */
  data: Float64Array;
}

/** Samples of a repeat's side. */
export const side = 64;

interface Way {
  x: number;
  y: number;
}

/** Lays the repeats over each other, from those samples of the panel that `holds` names; null where fewer than one lies there. */
export function foldCell(
  image: GreyImage,
  across: Way,
  down: Way,
  holds: (x: number, y: number) => boolean,
): Cell | null {
  const area = across.x * down.y - across.y * down.x;
  if (!(Math.abs(area) > 9)) return null;
  const sums = new Float64Array(side * side);
  const weights = new Float64Array(side * side);
  const corners = [0, image.width].flatMap((x) => [0, image.height].map((y) => ({ x, y })));
  const us = corners.map(({ x, y }) => (x * down.y - y * down.x) / area);
  const vs = corners.map(({ x, y }) => (across.x * y - across.y * x) / area);
  const [fewest, most] = [Math.floor(Math.min(...us)), Math.ceil(Math.max(...us))];
  const [lowest, highest] = [Math.floor(Math.min(...vs)), Math.ceil(Math.max(...vs))];
  for (let v = lowest; v < highest; v++) {
    for (let u = fewest; u < most; u++) {
      for (let row = 0; row < side; row++) {
        for (let column = 0; column < side; column++) {
          const [a, b] = [u + column / side, v + row / side];
          const x = a * across.x + b * down.x;
          const y = a * across.y + b * down.y;
          if (x < 0 || y < 0 || x >= image.width || y >= image.height || !holds(x, y)) continue;
          sums[row * side + column]! += sampleGrey(image, x, y);
          weights[row * side + column]!++;
        }
      }
    }
  }
  if (weights.some((weight) => weight < 1)) return null;
  const data = sums.map((sum, at) => sum / weights[at]!);
  const mean = data.reduce((sum, value) => sum + value, 0) / data.length;
  return levelled(data, () => mean);
}

/** A cell without what does not change across it: bands are alike under every upright mirror, and tell of none. */
export function withoutBands({ data }: Cell): Cell | null {
  const means = Array.from({ length: side }, (_, row) => {
    const band = data.subarray(row * side, (row + 1) * side);
    return band.reduce((sum, value) => sum + value, 0) / side;
  });
  return levelled(data, (row) => means[row]!);
}

function levelled(data: Float64Array, meanOf: (row: number) => number): Cell | null {
  const level = data.map((value, at) => value - meanOf(Math.floor(at / side)));
  const size = Math.sqrt(level.reduce((sum, value) => sum + value * value, 0));
  return size > 0 ? { data: level.map((value) => value / size) } : null;
}

/** How the second cell is turned before it is laid on the first. */
export type Turn = 'as-it-is' | 'mirrored' | 'half-turned';

export interface Match {
  /** By how much the second is moved, shares of the repeat, 0 to 1. */
  u: number;
  v: number;
  /** −1 to 1. */
  alike: number;
}

/** The spectrum of the likeness of two cells at every movement of the second. */
function likenessOf(one: Cell, other: Cell, turn: Turn): HalfSpectrum {
  const spectrum = spectrumOf(one.data, side);
  const { real, imaginary } = spectrum;
  const against = spectrumOf(turned(other, turn), side);
  for (let at = 0; at < real.length; at++) {
    const [a, b, c, d] = [real[at]!, imaginary[at]!, against.real[at]!, against.imaginary[at]!];
    real[at] = a * c + b * d;
    imaginary[at] = b * c - a * d;
  }
  return spectrum;
}

function turned({ data }: Cell, turn: Turn): Float64Array {
  if (turn === 'as-it-is') return data.slice();
  const out = new Float64Array(side * side);
  for (let row = 0; row < side; row++) {
    for (let column = 0; column < side; column++) {
      const from = turn === 'mirrored' ? row : (side - row) % side;
      out[row * side + column] = data[from * side + ((side - column) % side)]!;
    }
  }
  return out;
}

/** The movement under which two cells are most alike, between samples; rows no further than `rows` shares off where said. */
export function bestMatch(one: Cell, other: Cell, turn: Turn, rows = 0.5): Match {
  const spectrum = likenessOf(one, other, turn);
  const alike = planeOf({ ...spectrum, real: spectrum.real.slice(), imaginary: spectrum.imaginary.slice() });
  const reach = Math.min(side / 2, Math.round(rows * side));
  let [column, row] = [0, 0];
  const at = (x: number, y: number): number => alike[((y + side) % side) * side + ((x + side) % side)]!;
  for (let y = -reach; y <= reach; y++)
    for (let x = 0; x < side; x++) if (at(x, y) > at(column, row)) [column, row] = [x, y];
  const near = summit(column, row, 1, at);
  const exact = (x: number, y: number): number => heightAt(spectrum, x, y);
  const top = summit(near.x, near.y, 0.25, exact);
  return { u: top.x / side, v: top.y / side, alike: exact(top.x, top.y) };
}

/** The top of the parabolas through heights `step` to either side of a place. */
function summit(
  x: number,
  y: number,
  step: number,
  height: (x: number, y: number) => number,
): { x: number; y: number } {
  const here = height(x, y);
  const by = (low: number, high: number): number => {
    const bend = low - 2 * here + high;
    return bend < 0 ? Math.max(-0.5, Math.min(0.5, (low - high) / (2 * bend))) * step : 0;
  };
  return {
    x: x + by(height(x - step, y), height(x + step, y)),
    y: y + by(height(x, y - step), height(x, y + step)),
  };
}

/** What the plane of a spectrum is between its samples. */
function heightAt({ real, imaginary, width, height }: HalfSpectrum, x: number, y: number): number {
  const half = width / 2 + 1;
  const turn = (at: number, by: number, of: number): number => (2 * Math.PI * at * by) / of;
  const cosine = Float64Array.from({ length: half }, (_, at) => Math.cos(turn(at, x, width)));
  const sine = Float64Array.from({ length: half }, (_, at) => Math.sin(turn(at, x, width)));
  let sum = 0;
  for (let row = 0; row < height; row++) {
    const angle = turn(row <= height / 2 ? row : row - height, y, height);
    let [r, i] = [0, 0];
    for (let column = 0; column < half; column++) {
      const at = row * half + column;
      // All frequencies but the first and the last stand for their mirror image too.
      const times = column === 0 || column === half - 1 ? 1 : 2;
      r += times * (real[at]! * cosine[column]! - imaginary[at]! * sine[column]!);
      i += times * (real[at]! * sine[column]! + imaginary[at]! * cosine[column]!);
    }
    sum += r * Math.cos(angle) - i * Math.sin(angle);
  }
  return sum / (width * height);
}
