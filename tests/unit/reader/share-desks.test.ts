import { describe, expect, it } from 'vitest';
import { fail, type Result, succeed } from '../../../src/problem';
import { shareDesks } from '../../../src/reader/share-desks';
import { workersAtOnce } from '../../../src/reader/workers-at-once';

interface Desk {
  number: number;
  open(): void;
  close(): void;
}

/** Desks whose work ends when the test says so; what happens is told in order. */
function room(most: number, whenOpened = () => {}) {
  const told: string[] = [];
  const running = new Map<string, { desk: number; end: (outcome: Result<string> | Promise<never>) => void }>();
  let made = 0;
  let whenIdle: (() => void) | null = null;
  const desks = shareDesks<Desk>({
    create() {
      const number = ++made;
      const open = () => {
        told.push(`open ${number}`);
        whenOpened();
      };
      return { number, open, close: () => told.push(`close ${number}`) };
    },
    most,
    isEnd: (code) => code === 'gone',
    afterIdle(call) {
      whenIdle = call;
      return () => {
        whenIdle = null;
      };
    },
  });
  const hand = (name: string) =>
    desks.do<string>(
      ({ number }) =>
        new Promise((end) => {
          told.push(`${name} at ${number}`);
          running.set(name, { desk: number, end });
        }),
    );
  const end = async (name: string, outcome: Result<string> | Promise<never> = succeed(name)) => {
    running.get(name)?.end(outcome);
    await new Promise((turn) => setTimeout(turn, 0));
  };
  return { desks, hand, end, told, idle: () => whenIdle };
}

const problem = (code: string) => fail({ code, where: 'desk', what: '', remedy: '' });

describe('desks that share the photos', () => {
  it('are one where the machine bears one: the next begins when the one before is done', async () => {
    const { hand, end, told } = room(1);
    const outcomes = [hand('a'), hand('b')];
    expect(told).toEqual(['a at 1']);
    await end('a');
    expect(told).toEqual(['a at 1', 'b at 1']);
    await end('b');
    expect(await Promise.all(outcomes)).toEqual([succeed('a'), succeed('b')]);
  });

  it('are opened as they are needed, and take the next in turn', async () => {
    const { hand, end, told } = room(2);
    hand('a');
    await end('a');
    for (const name of ['b', 'c', 'd', 'e']) hand(name);
    expect(told).toEqual(['a at 1', 'b at 1', 'c at 2']);
    await end('c');
    await end('b');
    expect(told).toEqual(['a at 1', 'b at 1', 'c at 2', 'd at 2', 'e at 1']);
  });

  it('close when they stand idle, all but the first', async () => {
    const { hand, end, told, idle } = room(2);
    hand('a');
    hand('b');
    await end('a');
    expect(idle()).toBeNull();
    await end('b');
    idle()?.();
    expect(told.slice(2)).toEqual(['close 2']);
    hand('c');
    expect(told.slice(3)).toEqual(['c at 1']);
  });

  it('fall back to the first where a further one ends: its photo is read there, and no other is opened', async () => {
    const { hand, end, told } = room(2);
    const first = hand('a');
    const second = hand('b');
    const third = hand('c');
    await end('b', problem('gone'));
    expect(told).toEqual(['a at 1', 'b at 2', 'close 2']);
    await end('a');
    expect(told.slice(3)).toEqual(['b at 1']);
    await end('b');
    await end('c');
    expect(await Promise.all([first, second, third])).toEqual([succeed('a'), succeed('b'), succeed('c')]);
    expect(told.slice(4)).toEqual(['c at 1']);
  });

  it('tell a failure that is the photo’s own, and the end of the first', async () => {
    const { hand, end } = room(2);
    const outcomes = [hand('a'), hand('b')];
    await end('b', problem('damaged'));
    await end('a', problem('gone'));
    expect(await Promise.all(outcomes)).toEqual([problem('gone'), problem('damaged')]);
  });

  it('say that work failed at the first after a further one ended, and take the next', async () => {
    const { hand, end, told } = room(2);
    hand('a');
    const outcomes = Promise.allSettled([hand('b'), hand('c')]);
    await end('b', problem('gone'));
    await end('a');
    await end('b', Promise.reject(new Error('no work')));
    await end('c');
    expect(await outcomes).toEqual([
      { status: 'rejected', reason: new Error('no work') },
      { status: 'fulfilled', value: succeed('c') },
    ]);
    expect(told).toEqual(['a at 1', 'b at 2', 'close 2', 'b at 1', 'c at 1']);
  });

  it('say that they could not be renewed, and take the next', async () => {
    const { desks, hand, told } = room(1, () => {
      throw new Error('cannot open');
    });
    const renewed = desks.renew();
    hand('a');
    await expect(renewed).rejects.toThrow('cannot open');
    expect(told).toEqual(['close 1', 'open 1', 'a at 1']);
  });

  it('are renewed once all before is done, and what comes after waits for it', async () => {
    const { desks, hand, end, told } = room(2);
    hand('a');
    hand('b');
    const renewed = desks.renew();
    hand('c');
    await end('a');
    expect(told).toEqual(['a at 1', 'b at 2']);
    await end('b');
    await renewed;
    expect(told.slice(2)).toEqual(['close 2', 'close 1', 'open 1', 'c at 1']);
  });
});

describe('photos read at once', () => {
  it('are two with four cores and 8 GB, and one with less or where nobody knows', () => {
    expect(workersAtOnce({ hardwareConcurrency: 4, deviceMemory: 8 })).toBe(2);
    expect(workersAtOnce({ hardwareConcurrency: 3, deviceMemory: 8 })).toBe(1);
    expect(workersAtOnce({ hardwareConcurrency: 16, deviceMemory: 4 })).toBe(1);
    expect(workersAtOnce({ hardwareConcurrency: 16 })).toBe(1);
    expect(workersAtOnce({})).toBe(1);
  });
});
