import type { Lattice } from './types';

/**
 * Where a lattice's characters stand, as shares of its length: the middle of each run of steps in which one character
 * is the most likely. Only for lattices whose steps are even slices of the line.
 */
export function characterMiddles(lattice: Lattice): number[] {
  const middles: number[] = [];
  let weight = 0;
  let place = 0;
  let running = '';
  const close = (): void => {
    if (running !== '' && running !== ' ' && weight > 0) middles.push(place / weight / lattice.steps.length);
    weight = 0;
    place = 0;
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
    }
  });
  close();
  return middles;
}
