import { hashPoint } from './random';

/** Smooth noise in [-1, 1] with features one unit wide. */
export function smoothNoise(x: number, y: number, seed: number): number {
  const column = Math.floor(x);
  const row = Math.floor(y);
  const alongX = ease(x - column);
  const alongY = ease(y - row);
  const top = mix(hashPoint(column, row, seed), hashPoint(column + 1, row, seed), alongX);
  const bottom = mix(hashPoint(column, row + 1, seed), hashPoint(column + 1, row + 1, seed), alongX);
  return mix(top, bottom, alongY) * 2 - 1;
}

/** Noise summed over octaves, each half as wide and half as strong; about [-1, 1]. */
export function layeredNoise(x: number, y: number, seed: number, octaves: number): number {
  let sum = 0;
  let strength = 0.5;
  let scale = 1;
  for (let octave = 0; octave < octaves; octave++) {
    sum += strength * smoothNoise(x * scale, y * scale, seed + octave * 101);
    strength /= 2;
    scale *= 2.03;
  }
  return sum;
}

/**
 * Leather's pebbles: distance to the nearest crease between cells of about one unit, 0 on the crease, about 1 on a
 * pebble's top. Cells are the nearest of one jittered point a square.
 */
export function pebbles(x: number, y: number, seed: number): number {
  const column = Math.floor(x);
  const row = Math.floor(y);
  let nearest = 9;
  let second = 9;
  for (let dy = -1; dy <= 1; dy++) {
    for (let dx = -1; dx <= 1; dx++) {
      const px = column + dx + hashPoint(column + dx, row + dy, seed);
      const py = row + dy + hashPoint(column + dx, row + dy, seed + 7919);
      const distance = Math.hypot(px - x, py - y);
      if (distance < nearest) {
        second = nearest;
        nearest = distance;
      } else if (distance < second) second = distance;
    }
  }
  return Math.min(1, (second - nearest) * 1.6);
}

export const mix = (a: number, b: number, share: number): number => a + (b - a) * share;
const ease = (t: number): number => t * t * (3 - 2 * t);

/** 0 below `from`, 1 above `to`, smooth between; `from` may be the larger one. */
export function ramp(from: number, to: number, value: number): number {
  const t = Math.min(1, Math.max(0, (value - from) / (to - from)));
  return ease(t);
}
