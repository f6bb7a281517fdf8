import { describe, expect, it } from 'vitest';
import type { PixelImage } from '../../../src/photo';
import { type OpenPrintReader, printWhenNeeded, readStamp, type StampNets } from '../../../src/stamp';

const photo: PixelImage = { width: 640, height: 480, data: new Uint8ClampedArray(640 * 480 * 4).fill(120) };

/** An engine that counts its starts and reads nothing. */
function countingEngine(): { starts: number; ends: number; open: () => Promise<OpenPrintReader> } {
  const engine = {
    starts: 0,
    ends: 0,
    open: async () => {
      engine.starts++;
      return { read: async () => [], close: async () => void engine.ends++ };
    },
  };
  return engine;
}
const neverFails = (error: unknown): never => {
  throw error;
};

/** Nets that find one line, of `text`, as a stamp or as words. */
const netsFinding = (text: string | null, stampScore: number): StampNets => ({
  acceptance: { stampScore: 0.5 },
  margin: 0.5,
  findLines: async () =>
    text === null
      ? []
      : [
          {
            quad: [
              { x: 100, y: 100 },
              { x: 400, y: 100 },
              { x: 400, y: 160 },
              { x: 100, y: 160 },
            ],
            stampScore,
          },
        ],
  readLine: async () => ({ steps: [...(text ?? '')].flatMap((character) => [{ [character]: 1 }, { '': 1 }]) }),
});

describe('a print reader that starts when it is needed', () => {
  it('does not start for a photo without lines, nor for one that shows only a code', async () => {
    const engine = countingEngine();
    const print = printWhenNeeded(engine.open, neverFails);
    await readStamp(photo, 'p1', { print, net: netsFinding(null, 0) });
    await readStamp(photo, 'p2', { print, net: netsFinding('KV0915', 0.9) });
    expect(engine.starts).toBe(0);
    await print.close();
    expect(engine.ends).toBe(0);
  });

  it('starts once for all lines of words, and ends with its owner', async () => {
    const engine = countingEngine();
    const print = printWhenNeeded(engine.open, neverFails);
    await readStamp(photo, 'p1', { print, net: netsFinding('CUIR', 0.1) });
    await readStamp(photo, 'p2', { print, net: netsFinding('CUIR', 0.1) });
    expect(engine.starts).toBe(1);
    await print.close();
    expect(engine.ends).toBe(1);
  });

  it('that cannot start leaves the nets’ reading as it is, and is told once', async () => {
    const told: unknown[] = [];
    const print = printWhenNeeded(
      () => Promise.reject(new Error('no WASM')),
      (error) => told.push(error),
    );
    const net = netsFinding('CUIR', 0.1);
    const withIt = await readStamp(photo, 'p1', { print, net });
    expect(withIt).toEqual(await readStamp(photo, 'p1', { print: null, net }));
    expect(withIt).toMatchObject({ state: 'read', printed: ['CUIR'] });
    expect(told.map(String)).toEqual(['Error: no WASM']);
  });

  it('that cannot start and has no nets beside it leaves the photo unread: no engine could start', async () => {
    const print = printWhenNeeded(
      () => Promise.reject(new Error('no WASM')),
      () => {},
    );
    expect(await readStamp(photo, 'p1', { print })).toMatchObject({
      state: 'unread',
      problem: { code: 'no-stamp-engine' },
    });
  });
});
