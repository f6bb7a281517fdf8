import * as fc from 'fast-check';
import { beforeEach } from 'vitest';

/** More than fifty times what the busiest test needs; see `withCountedLoops`. */
const mostTurns = 50_000_000;

const counted = globalThis as { turn?: () => void; turns?: number };
counted.turns = 0;
counted.turn = () => {
  counted.turns = (counted.turns ?? 0) + 1;
  if (counted.turns > mostTurns) throw new Error('a loop does not end');
};
beforeEach(() => {
  counted.turns = 0;
});
// The same examples for every change: what is noticed is not left to chance.
fc.configureGlobal({ seed: 20_260_115 });
