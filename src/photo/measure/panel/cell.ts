import type { GreyImage } from '../../types';
import { sampleGrey } from '../../warp';
import { planeOf, spectrumOf } from '../fourier';

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
  const size = Math.sqrt(data.reduce((sum, value) => sum + (value - mean) ** 2, 0));
  return size > 0 ? { data: data.map((value) => (value - mean) / size) } : null;
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

/** Likeness of two cells at every movement, row by row. */
export function likenessOf(one: Cell, other: Cell, turn: Turn): Float64Array {
  const spectrum = spectrumOf(one.data, side);
  const { real, imaginary } = spectrum;
  const against = spectrumOf(turned(other, turn), side);
  for (let at = 0; at < real.length; at++) {
    const [a, b, c, d] = [real[at]!, imaginary[at]!, against.real[at]!, against.imaginary[at]!];
    real[at] = a * c + b * d;
    imaginary[at] = b * c - a * d;
  }
  return planeOf(spectrum);
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
  const alike = likenessOf(one, other, turn);
  const reach = Math.min(side / 2, Math.round(rows * side));
  let best = 0;
  let top = -2;
  for (let row = -reach; row <= reach; row++) {
    const line = ((row + side) % side) * side;
    for (let column = 0; column < side; column++) {
      if (alike[line + column]! <= top) continue;
      top = alike[line + column]!;
      best = line + column;
    }
  }
  const [row, column] = [Math.floor(best / side), best % side];
  const at = (r: number, c: number): number => alike[((r + side) % side) * side + ((c + side) % side)]!;
  const between = (low: number, high: number): number => {
    const bend = low - 2 * top + high;
    return bend < 0 ? Math.max(-0.5, Math.min(0.5, (low - high) / (2 * bend))) : 0;
  };
  return {
    u: (column + between(at(row, column - 1), at(row, column + 1))) / side,
    v: (row + between(at(row - 1, column), at(row + 1, column))) / side,
    alike: top,
  };
}
