import { describe, expect, it } from 'vitest';
import { untilArrived } from '../../../../src/reader/page/page-arrived';

/** A document that is further at each look; the last state stays. */
function coming(states: [DocumentReadyState, size: number][]) {
  let looks = 0;
  const at = () => states[Math.min(looks, states.length - 1)] as [DocumentReadyState, number];
  const page = {
    readyState: () => at()[0],
    size: () => at()[1],
    async look() {
      looks += 1;
    },
  };
  return { page, looks: () => looks };
}

describe('waiting for a page to come', () => {
  it('reads at once what is there', async () => {
    const { page, looks } = coming([['complete', 10]]);
    expect(await untilArrived(page)).toBe(true);
    expect(looks()).toBe(0);
  });

  it('gives scripts a moment after the source has come', async () => {
    const { page, looks } = coming([
      ['loading', 5],
      ['loading', 9],
      ['interactive', 10],
    ]);
    expect(await untilArrived(page)).toBe(true);
    expect(looks()).toBe(3);
  });

  it('ends after counted looks at a page that streams without end', async () => {
    const { page, looks } = coming(Array.from({ length: 1_000 }, (_, at) => ['loading', at]));
    expect(await untilArrived(page)).toBe(false);
    expect(looks()).toBe(24);
  });

  it('ends earlier at one that brings nothing new', async () => {
    const { page, looks } = coming([['loading', 7]]);
    expect(await untilArrived(page)).toBe(false);
    expect(looks()).toBe(9);
  });
});
