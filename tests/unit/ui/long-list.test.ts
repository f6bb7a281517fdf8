import { describe, expect, it } from 'vitest';
import { afterChange } from '../../../src/ui/watchlist/after-change';
import { rowByKey, rowsInSight } from '../../../src/ui/watchlist/rows-in-sight';
import type { ReadableRow } from '../../../src/watch';

const sight = { top: 100, windowHeight: 800, rowHeight: 100 };

describe('rows in sight', () => {
  it('are those of the window and six beyond each edge, however long the list is', () => {
    expect(rowsInSight(5000, sight, null)).toEqual(Array.from({ length: 13 }, (_, index) => index));
    const middle = rowsInSight(5000, { ...sight, top: -200_000 }, null);
    expect([middle[0], middle.at(-1), middle.length]).toEqual([1994, 2013, 20]);
    expect(rowsInSight(5000, { ...sight, top: -499_500 }, null).at(-1)).toBe(4999);
  });

  it('are none of an empty list, and all of a short one', () => {
    expect(rowsInSight(0, sight, 0)).toEqual([]);
    expect(rowsInSight(3, sight, 1)).toEqual([0, 1, 2]);
  });

  it('include the row that has the focus, in its place', () => {
    expect(rowsInSight(5000, sight, 4000).slice(-2)).toEqual([12, 4000]);
    expect(rowsInSight(5000, { ...sight, top: -200_000 }, 3).slice(0, 2)).toEqual([3, 1994]);
    expect(rowsInSight(10, sight, 40)).toHaveLength(10);
  });
});

describe('a key in the list', () => {
  it.each([
    ['ArrowDown', 5, 6],
    ['ArrowDown', 99, 99],
    ['ArrowUp', 0, 0],
    ['PageDown', 5, 12],
    ['PageUp', 5, 0],
    ['Home', 50, 0],
    ['End', 50, 99],
    ['Enter', 5, null],
  ])('%s leads from row %i to %s', (key, at, to) => {
    expect(rowByKey(key, at, 100, 7)).toBe(to);
  });
});

describe('rows after a change', () => {
  const row = (id: string, title = id) => ({ state: 'readable', id, title }) as ReadableRow;
  it('stay where they are, new ones first, ended ones left out', () => {
    const rows = [row('a'), row('b'), row('c')];
    const change = { rows: [row('c', 'renewed'), row('d')], gone: ['a'] };
    expect(afterChange(rows, change).map(({ id, title }) => `${id} ${title}`)).toEqual(['d d', 'b b', 'c renewed']);
  });
});
