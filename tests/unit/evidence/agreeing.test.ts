import { describe, expect, it } from 'vitest';
import { largestAgreeing, type PieceWeight } from '../../../src/evidence/agreeing';
import { placeCells } from '../../../src/evidence/cells';

describe('the largest sets that hold together', () => {
  const weight = (basis: string, over: Partial<PieceWeight> = {}): PieceWeight => ({
    ...{ basis, hard: true, follows: false },
    ...over,
  });
  const largest = (weights: PieceWeight[], ...allowed: number[]) =>
    largestAgreeing(
      { count: 3, allowed: allowed.map(BigInt) },
      placeCells(weights.map(() => ({ places: [] }))),
      weights,
    );

  it('are those of the most facts, then of the most hard ones, in the order of time', () => {
    const [a, b, c] = [weight('a'), weight('b'), weight('c')];
    expect(largest([a, b, c], 0b001, 0b010, 0b011)).toEqual([
      [0, 2],
      [1, 2],
    ]);
    expect(largest([a, weight('b', { hard: false }), c], 0b001, 0b010, 0b011)).toEqual([[0, 2]]);
    expect(largest([weight('a', { hard: false }), b, c], 0b001, 0b010, 0b011)).toEqual([[1, 2]]);
    // The same fact said twice is no more than one.
    expect(largest([a, a, b], 0b001, 0b001, 0b010)).toEqual([[0, 1], [2]]);
    expect(largest([a, a, b, c], 0b001, 0b001, 0b010, 0b010)).toEqual([[2, 3]]);
  });

  it('are none of nothing, and none that is part of another', () => {
    expect(largest([])).toEqual([]);
    expect(largest([weight('a')], 0b000)).toEqual([]);
    const follows = weight('a', { follows: true });
    expect(largest([weight('a'), follows], 0b011, 0b010)).toEqual([[0, 1]]);
  });

  it('hold what follows from a reading only with the reading, and it weighs nothing', () => {
    const follows = weight('a', { follows: true });
    expect(largest([weight('a'), follows, weight('b')], 0b001, 0b010, 0b010)).toEqual([[0], [2]]);
    expect(largest([weight('a'), follows, weight('b')], 0b010, 0b010, 0b010)).toEqual([[0, 1, 2]]);
    expect(largest([follows], 0b010)).toEqual([[0]]);
  });
});
