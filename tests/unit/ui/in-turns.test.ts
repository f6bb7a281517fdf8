import { expect, test } from 'vitest';
import { inTurns } from '../../../src/ui/makers/in-turns';

/** Work of so many steps, each of which takes three of the clock's milliseconds. */
function* workOf(steps: number, clock: { now: number }): Generator<number, string> {
  for (let step = 1; step <= steps; step++) {
    clock.now += 3;
    yield step;
  }
  return 'done';
}

test('work is done in turns, and the page has its own between them', async () => {
  const clock = { now: 0 };
  const turns: number[] = [];
  const result = await inTurns(workOf(20, clock), {
    signal: new AbortController().signal,
    longest: 10,
    now: () => clock.now,
    pause: async () => void turns.push(clock.now),
  });
  expect(result).toBe('done');
  // Four steps reach the limit of a turn.
  expect(turns).toEqual([0, 12, 24, 36, 48, 60]);
});

test('work that is no longer wanted ends with the turn', async () => {
  const clock = { now: 0 };
  const ended = new AbortController();
  const result = await inTurns(workOf(1000, clock), {
    signal: ended.signal,
    longest: 10,
    now: () => clock.now,
    pause: async () => {
      if (clock.now > 20) ended.abort();
    },
  });
  expect(result).toBeNull();
  expect(clock.now).toBeLessThan(40);
});
