import { describe, expect, it } from 'vitest';
import { startedWithin } from '../../../src/reader/started-within';

/** An engine that starts when it is told to, and knows whether it was closed. */
function engine() {
  const one = {
    closed: false,
    async close() {
      one.closed = true;
    },
  };
  let start = (): void => {};
  const starting = new Promise<typeof one>((settle) => {
    start = () => settle(one);
  });
  return { one, starting, start };
}

describe('an engine that has a time to start in', () => {
  it('is handed over when it is there in time, and stays open', async () => {
    const { one, starting, start } = engine();
    start();
    expect(await startedWithin(20, starting)).toBe(one);
    await new Promise((settle) => setTimeout(settle, 40));
    expect(one.closed).toBe(false);
  });

  it('counts as failed when it says nothing, and is closed when it comes late', async () => {
    const { one, starting, start } = engine();
    await expect(startedWithin(20, starting)).rejects.toThrow('it did not start within 0.02 s');
    expect(one.closed).toBe(false);
    start();
    await new Promise((settle) => setTimeout(settle));
    expect(one.closed).toBe(true);
  });

  it('fails with its own words when it cannot start', async () => {
    await expect(startedWithin(20, Promise.reject(new Error('no such file')))).rejects.toThrow('no such file');
  });
});
