import { describe, expect, it } from 'vitest';
import { type FasterNets, netsWithFaster } from '../../../src/stamp';
import { mostDifference } from '../../../src/stamp/net/faster';
import type { NetSession } from '../../../src/stamp/net/nets';

const input = Float32Array.of(1, 2, 3);
const shape = [1, 1, 1, 3];

/** A net that answers its input with `change` added, and counts its runs. */
function net(change = 0): NetSession & { runs: number } {
  const session = {
    runs: 0,
    run: async (numbers: Float32Array) => {
      session.runs++;
      return { data: numbers.map((value) => value + change), shape };
    },
  };
  return session;
}
const never = new Promise<string>(() => {});

async function start(fast: Partial<FasterNets>, plainFinder = net()) {
  const told: string[] = [];
  const plain = { finder: plainFinder, recogniser: net() };
  const opened: FasterNets = { finder: net(), recogniser: net(), lost: never, ...fast };
  const opening = Promise.resolve(opened);
  const nets = netsWithFaster(plain, opening, (why) => told.push(why));
  await opening;
  return { nets, plain, told };
}
const answerOf = async (session: NetSession) => [...((await session.run(input, shape)).data as Float32Array)];

describe('nets with a faster runtime beside the plain one', () => {
  it('read plainly until the faster one is there, and where it never comes', async () => {
    const plain = { finder: net(), recogniser: net() };
    const nets = netsWithFaster(plain, new Promise(() => {}), () => {});
    expect(await answerOf(nets.finder)).toEqual([1, 2, 3]);
    const without = netsWithFaster(plain, Promise.resolve(null), () => {});
    await Promise.resolve();
    expect(await answerOf(without.finder)).toEqual([1, 2, 3]);
    expect([nets.usesFaster(), without.usesFaster(), plain.finder.runs]).toEqual([false, false, 2]);
  });

  it('compute each net’s first answer both ways, give the plain one, and from then on run the faster one alone', async () => {
    const finder = net(mostDifference / 2);
    const { nets, plain, told } = await start({ finder });
    expect(await answerOf(nets.finder)).toEqual([1, 2, 3]);
    expect((await answerOf(nets.finder))[0]).toBeCloseTo(1 + mostDifference / 2, 5);
    await nets.recogniser.run(input, shape);
    expect([finder.runs, plain.finder.runs, plain.recogniser.runs]).toEqual([2, 1, 1]);
    expect([nets.usesFaster(), told]).toEqual([true, []]);
  });

  it.each<[string, NetSession['run'], RegExp]>([
    ['fails', () => Promise.reject(new Error('out of memory')), /out of memory/],
    [
      'throws at once',
      () => {
        throw new Error('no device');
      },
      /no device/,
    ],
    ['gives no number', async () => ({ data: Float32Array.of(1, Number.NaN, 3), shape }), /not finite/],
    [
      'gives an endless number',
      async () => ({ data: Float32Array.of(1, 2, Number.POSITIVE_INFINITY), shape }),
      /not finite/,
    ],
    [
      'gives other numbers',
      async () => ({ data: Float32Array.of(1, 2, 3.1), shape }),
      /finder's answers differ by 0\.0999/,
    ],
    ['gives another shape', async () => ({ data: Float32Array.of(1, 2, 3), shape: [3] }), /differ by Infinity/],
    ['gives fewer numbers', async () => ({ data: Float32Array.of(1, 2), shape }), /differ by Infinity/],
  ])('go back to the plain runtime for good when the faster one %s', async (_, run, why) => {
    const recogniser = net();
    const { nets, told } = await start({ finder: { run }, recogniser });
    expect(await answerOf(nets.finder)).toEqual([1, 2, 3]);
    expect(nets.usesFaster()).toBe(false);
    expect(await answerOf(nets.finder)).toEqual([1, 2, 3]);
    expect(await answerOf(nets.recogniser)).toEqual([1, 2, 3]);
    expect(recogniser.runs).toBe(0);
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(why);
  });

  it('also later, when it had agreed before', async () => {
    let broken = false;
    const { nets, told } = await start({
      finder: { run: async () => ({ data: broken ? Float32Array.of(Number.NaN, 2, 3) : input, shape }) },
    });
    await nets.finder.run(input, shape);
    broken = true;
    expect(await answerOf(nets.finder)).toEqual([1, 2, 3]);
    expect(told).toEqual(['an answer is not finite']);
  });

  it('lose no photo when the device is lost while it runs, even if its run never ends', async () => {
    let lose = (_why: string): void => {};
    const lost = new Promise<string>((settle) => {
      lose = settle;
    });
    const { nets, told } = await start({ finder: { run: () => new Promise(() => {}) }, lost });
    const running = answerOf(nets.finder);
    lose('the graphics device was lost: unplugged');
    expect(await running).toEqual([1, 2, 3]);
    expect([nets.usesFaster(), told]).toEqual([false, ['the graphics device was lost: unplugged']]);
  });

  it('take no answer of a device that was lost meanwhile, however finite', async () => {
    let lose = (_why: string): void => {};
    const lost = new Promise<string>((settle) => {
      lose = settle;
    });
    const zeros = async () => {
      lose('gone');
      await lost;
      return { data: Float32Array.of(1, 2, 3.001), shape };
    };
    const { nets, told } = await start({ finder: { run: zeros }, lost });
    expect(await answerOf(nets.finder)).toEqual([1, 2, 3]);
    expect([nets.usesFaster(), told]).toEqual([false, ['gone']]);
  });

  it('say why a faster runtime could not be opened', async () => {
    const told: string[] = [];
    const plain = { finder: net(), recogniser: net() };
    const opening = Promise.reject(new Error('Can’t create a session'));
    const nets = netsWithFaster(plain, opening, (why) => told.push(why));
    await opening.catch(() => {});
    expect(await answerOf(nets.finder)).toEqual([1, 2, 3]);
    expect(told).toEqual(['Can’t create a session']);
  });
});
