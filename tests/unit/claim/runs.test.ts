import { expect, it } from 'vitest';
import { runsOf } from '../../../src/claim/runs';

it('neighbours go on with the one before them, or begin a run', () => {
  const near = (before: number, one: number) => one - before <= 2;
  expect(runsOf([1, 3, 6, 7, 9, 20], near)).toEqual([[1, 3], [6, 7, 9], [20]]);
  expect(runsOf([4], near)).toEqual([[4]]);
  expect(runsOf([], near)).toEqual([]);
});
