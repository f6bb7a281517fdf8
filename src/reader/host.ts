import { browser } from '../browser/api';
import { workInTurn } from '../message/in-turn';
import type { PhotoView } from '../message/protocol';
import type { Adjustment } from '../photo/adjustment-types';
import { fail, problem, type Result, succeed } from '../problem';
import type { GlanceAnswer, LifeBegun, ReaderAnswer, ReaderRequest } from './worker-messages';

/** A photo that takes longer has hung the recogniser; the worker is replaced. */
const patienceMs = 90_000;

type WithoutId<T> = T extends unknown ? Omit<T, 'id'> : never;
type Wish = WithoutId<Extract<ReaderRequest, { id: number }>>;
type Answer = ReaderAnswer | GlanceAnswer;

/** Owns the reader's worker: one photo at a time, in order; a worker that dies or hangs is replaced. */
export function createReaderHost() {
  let worker: Worker | null = null;
  const inTurn = workInTurn();
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
  const end = () => {
    worker?.terminate();
    worker = null;
  };

  const ask = <T>(wish: Wish, take: (answer: Answer) => T | null): Promise<Result<T>> =>
    new Promise((resolve) => {
      worker ??= start();
      const asked = worker;
      const id = ++lastId;
      const settle = (result: Result<T>) => {
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
        if (worker === asked) end();
        settle(fail(problem('reader-late', where, { seconds: patienceMs / 1000 })));
      }, patienceMs);
      asked.addEventListener('message', onAnswer);
      asked.addEventListener('error', onError);
      asked.postMessage({ ...wish, id } satisfies ReaderRequest);
    });

  return {
    read: (photoId: string, base64: string, adjustment: Adjustment): Promise<Result<PhotoView>> =>
      inTurn(() =>
        ask({ kind: 'read', photoId, base64, adjustment }, (answer) => ('view' in answer ? answer.view : null)),
      ),
    /** How likely a photo shows a stamp, 0 to 1, by one quick look, or a closer one. */
    glance: (photoId: string, base64: string, closer: boolean): Promise<Result<number>> =>
      inTurn(() =>
        ask({ kind: 'glance', photoId, base64, closer }, (answer) =>
          'likelihood' in answer ? answer.likelihood : null,
        ),
      ),
    /**
     * A fresh worker: the print recogniser adapts to what it saw, so every listing starts with a new one. It starts at
     * once, while the photos are still on their way.
     */
    renew: (): Promise<void> =>
      inTurn(() => {
        end();
        worker = start();
      }),
  };
}
