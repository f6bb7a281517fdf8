import { browser } from '../browser/api';
import { fail, problem, type Result, succeed } from '../problem';
import type { GlanceAnswer, LifeBegun, ReaderAnswer, ReaderRequest } from './worker-messages';

/** A photo that takes longer has hung the recogniser; the worker is replaced. */
const patienceMs = 90_000;

type WithoutId<T> = T extends unknown ? Omit<T, 'id'> : never;
/** What a worker is asked for. */
export type Wish = WithoutId<Extract<ReaderRequest, { id: number }>>;
export type Answer = ReaderAnswer | GlanceAnswer;

/** One place at which photos are read, one after the other, by a worker that is replaced when it dies or hangs. */
export interface Desk {
  ask<T>(wish: Wish, take: (answer: Answer) => T | null): Promise<Result<T>>;
  /** Starts its worker, where it has none. */
  open(): void;
  /** Ends its worker; the next question starts another. */
  close(): void;
}

export function createDesk(): Desk {
  let worker: Worker | null = null;
  let lastId = 0;

  const start = (): Worker => {
    const started = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'stamp reader' });
    const life = `stamp reader ${crypto.randomUUID()}`;
    started.addEventListener('error', () => {
      started.terminate();
      if (worker === started) worker = null;
    });
    started.addEventListener('message', ({ data }: MessageEvent<LifeBegun | Answer>) => {
      if (!('alive' in data)) return;
      // Given only when the worker is gone: one that is ended from outside, or for want of memory, raises no error.
      navigator.locks.request(life, () => {
        started.dispatchEvent(new ErrorEvent('error'));
      });
    });
    started.postMessage({ kind: 'start', files: browser.runtime.getURL(''), life } satisfies ReaderRequest);
    return started;
  };
  const close = () => {
    worker?.terminate();
    worker = null;
  };

  return {
    ask: (wish, take) =>
      new Promise((resolve) => {
        worker ??= start();
        const asked = worker;
        const id = ++lastId;
        const settle = (result: Parameters<typeof resolve>[0]) => {
          clearTimeout(timer);
          asked.removeEventListener('message', onAnswer);
          asked.removeEventListener('error', onError);
          resolve(result);
        };
        const where = `photo ${wish.photoId}`;
        const onAnswer = ({ data }: MessageEvent<Answer | LifeBegun>) => {
          if ('alive' in data || data.id !== id) return;
          const taken = take(data);
          if (taken !== null) settle(succeed(taken));
          else if (data.problem) settle(fail(data.problem));
        };
        const onError = ({ message }: ErrorEvent) => settle(fail(problem('reader-stopped', where, { said: message })));
        const timer = setTimeout(() => {
          if (worker === asked) close();
          settle(fail(problem('reader-late', where, { seconds: patienceMs / 1000 })));
        }, patienceMs);
        asked.addEventListener('message', onAnswer);
        asked.addEventListener('error', onError);
        asked.postMessage({ ...wish, id } satisfies ReaderRequest);
      }),
    open() {
      worker ??= start();
    },
    close,
  };
}
