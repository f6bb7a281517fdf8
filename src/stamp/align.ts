import { type Quad, quadSize } from '../photo';
import { between } from './between';
import type { Lattice } from './types';

/** A character that a lattice spells: its middle as a share of the lattice's length, and the steps that it takes. */
export interface PlacedCharacter {
  character: string;
  middle: number;
  steps: number[];
}

/**
 * Where a lattice's characters stand: each run of steps in which one character is the most likely. Only for lattices
 * whose steps are even slices of the line.
 */
export function placedCharacters(lattice: Lattice): PlacedCharacter[] {
  const placed: PlacedCharacter[] = [];
  let weight = 0;
  let place = 0;
  let running = '';
  let steps: number[] = [];
  const close = (): void => {
    if (running !== '' && running !== ' ' && weight > 0) {
      placed.push({ character: running, middle: place / weight / lattice.steps.length, steps });
    }
    weight = 0;
    place = 0;
    steps = [];
  };
  lattice.steps.forEach((step, at) => {
    let best = '';
    let highest = 0;
    for (const [character, probability] of Object.entries(step)) {
      if (probability > highest) {
        best = character;
        highest = probability;
      }
    }
    if (best !== running) close();
    running = best;
    if (best !== '') {
      weight += highest;
      place += highest * (at + 0.5);
      steps.push(at);
    }
  });
  close();
  return placed;
}

/** Half a character's width with its air, in heights: what a character needs of a quad to either side. */
const halfCharacter = 0.4;

/**
 * The quad drawn out at its ends to hold every character, and their middles as shares of its width. `middles` are
 * shares of the lattice's length, which covers `margin` heights more than the quad at each end.
 */
export function lineAround(quad: Quad, middles: readonly number[], margin: number): { quad: Quad; middles: number[] } {
  const { across, down } = quadSize(quad);
  const ground = (margin * down) / Math.max(1e-6, across);
  const shares = middles.map((middle) => middle * (1 + 2 * ground) - ground);
  const [first, last] = [shares[0], shares.at(-1)];
  if (first === undefined || last === undefined || shares.length < 2) return { quad, middles: shares };
  const half = Math.min((last - first) / (shares.length - 1) / 2, (halfCharacter * down) / across);
  const from = Math.min(0, first - half);
  const to = Math.max(1, last + half);
  const [a, b, c, d] = quad;
  return {
    quad: [between(a, b, from), between(a, b, to), between(d, c, to), between(d, c, from)],
    middles: shares.map((share) => (share - from) / (to - from)),
  };
}
