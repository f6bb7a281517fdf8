import { describe, expect, it } from 'vitest';
import { minimalConflicts } from '../../../src/evidence/conflicts';

describe('the smallest sets that leave nothing', () => {
  const sets = (count: number, ...allowed: number[]) => minimalConflicts({ count, allowed: allowed.map(BigInt) });
  const complete = true;

  it('are none where something is left', () => {
    expect(sets(3, 0b011, 0b110)).toEqual({ sets: [], complete });
    expect(sets(1)).toEqual({ sets: [], complete });
  });

  it('are single pieces that allow nothing, pairs and three that only together leave none', () => {
    expect(sets(2, 0b00, 0b11)).toEqual({ sets: [[0]], complete });
    expect(sets(2, 0b01, 0b10, 0b11)).toEqual({ sets: [[0, 1]], complete });
    expect(sets(3, 0b011, 0b110, 0b101)).toEqual({ sets: [[0, 1, 2]], complete });
    expect(
      sets(3, 0b011, 0b110, 0b101, 0b000)
        .sets.map((set) => set.join())
        .sort(),
    ).toEqual(['0,1,2', '3']);
    expect(
      sets(3, 0b001, 0b010, 0b101)
        .sets.map((set) => set.join())
        .sort(),
    ).toEqual(['0,1', '1,2']);
  });

  /** So many that allow only the first cell, and so many that allow only the second: each pair is a conflict. */
  const apart = (first: number, second: number, ...more: number[]) =>
    sets(2, ...Array(first).fill(0b01), ...Array(second).fill(0b10), ...more);

  it('are listed up to two thousand of them', () => {
    const all = apart(40, 50);
    expect([all.sets.length, all.complete]).toEqual([2000, true]);
    expect(new Set(all.sets.map((set) => set.join())).size).toBe(2000);
    const more = apart(29, 69);
    expect([more.sets.length, more.complete]).toEqual([2000, false]);
    expect(more.sets.slice(0, 2)).toEqual([
      [0, 29],
      [0, 30],
    ]);
    expect(apart(29, 69, 0b00)).toMatchObject({ complete: false });
    expect(apart(29, 69, 0b00).sets[0]).toEqual([98]);
  });

  it('are, of too many, those of one, two and three', () => {
    // Thirteen cells, and two that leave out each: more sets of thirteen than are looked for, one of three and no pair.
    const every = 2 ** 13 - 1;
    const each = Array.from({ length: 26 }, (_, at) => every - 2 ** (at % 13));
    const thirds = [0, 1, 2].map((third) =>
      each.slice(0, 13).reduce((bits, _, at) => (at % 3 === third ? bits : bits + 2 ** at), 0),
    );
    const many = sets(13, ...each, ...thirds);
    expect(many.complete).toBe(false);
    expect(many.sets.filter((set) => set.length <= 3)).toEqual([[26, 27, 28]]);
    expect(many.sets.length).toBeLessThanOrEqual(2000);
    const pairs = sets(13, ...each, ...thirds, every - (thirds[0] as number));
    expect(pairs.sets.slice(0, 2)).toEqual([
      [26, 29],
      [26, 27, 28],
    ]);
  });
});
