import { describe, expect, it } from 'vitest';
import { type KnownCode, learnSystem } from '../../../src/code';
import { learnBeside } from '../../../src/ui/makers/learn-beside';

const examples: KnownCode[] = ['1995-01', '1996-03', '1993-06', '1999-12', '2002-11', '2004-08'].map((reads) => ({
  code: `KV${reads.slice(5)}${reads.slice(2, 4)}`,
  reads,
}));
const wanted = learnSystem(examples);

/** A worker that answers as it is told, and notes when it is ended. */
function room(answer: (told: (type: string, event: object) => void) => void) {
  const listeners = new Map<string, (event: object) => void>();
  const made = {
    ended: false,
    addEventListener: (type: string, listener: unknown) => {
      listeners.set(type, listener as (event: object) => void);
    },
    postMessage: () => answer((type, event) => listeners.get(type)?.(event)),
    terminate: () => {
      made.ended = true;
    },
  };
  return made;
}
const failed = (message: string) => ({ message, preventDefault: () => {} });

describe('a search beside the page', () => {
  it('gives what the worker answers, and ends it', async () => {
    const opened = room((tell) => tell('message', { data: structuredClone(wanted) }));
    const whys: string[] = [];
    const { signal } = new AbortController();
    const learned = await learnBeside(examples, { signal, onHere: (why) => whys.push(why), openRoom: () => opened });
    expect([learned, whys, opened.ended]).toEqual([wanted, [], true]);
  });

  it.each([
    [
      'cannot be opened',
      'SecurityError: no workers',
      () => {
        throw new Error('SecurityError: no workers');
      },
    ],
    ['does not start', 'the worker did not start', () => room((tell) => tell('error', failed('')))],
    ['fails', 'out of memory', () => room((tell) => tell('error', failed('out of memory')))],
    ['cannot hand over', 'the answer could not be handed over', () => room((tell) => tell('messageerror', {}))],
  ])('runs on the page when the worker %s, and says why', async (_, why, openRoom) => {
    const whys: string[] = [];
    const { signal } = new AbortController();
    const learned = await learnBeside(examples, { signal, onHere: (one) => whys.push(one), openRoom });
    expect([learned, whys]).toEqual([wanted, [why]]);
  });

  it('is ended with its worker, and gives nothing', async () => {
    const ended = new AbortController();
    const opened = room(() => ended.abort());
    const { signal } = ended;
    const learned = await learnBeside(examples, { signal, onHere: () => {}, openRoom: () => opened });
    expect([learned, opened.ended]).toEqual([null, true]);
  });

  it('that was ended before it began opens no worker', async () => {
    const openRoom = () => {
      throw new Error('opened');
    };
    expect(await learnBeside(examples, { signal: AbortSignal.abort(), onHere: () => {}, openRoom })).toBeNull();
  });

  it('on the page is ended too', async () => {
    const ended = new AbortController();
    const openRoom = () => {
      throw new Error('no workers');
    };
    const learned = await learnBeside(examples, {
      signal: ended.signal,
      onHere: () => {},
      openRoom,
      pause: async () => ended.abort(),
    });
    expect(learned).toBeNull();
  });
});
