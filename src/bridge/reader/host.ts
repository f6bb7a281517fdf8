import { fail, type Result, succeed } from '../../problem';
import { browser } from '../browser';
import type { Adjustment, PhotoView } from '../protocol';
import type { ReaderAnswer, ReaderRequest } from './worker-messages';

/** A photo that takes longer has hung the recogniser; the worker is replaced. */
const patienceMs = 90_000;

type Wish = Omit<Extract<ReaderRequest, { kind: 'read' }>, 'id' | 'kind'>;

/** Owns the reader's worker: one photo at a time, in order; a worker that dies or hangs is replaced. */
export function createReaderHost() {
  let worker: Worker | null = null;
  let queue: Promise<unknown> = Promise.resolve();
  let lastId = 0;

  const start = (): Worker => {
    const started = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'stamp reader' });
    started.postMessage({ kind: 'start', files: browser.runtime.getURL('') } satisfies ReaderRequest);
    return started;
  };
  const end = () => {
    worker?.terminate();
    worker = null;
  };

  const ask = (wish: Wish): Promise<Result<PhotoView>> =>
    new Promise((resolve) => {
      worker ??= start();
      const asked = worker;
      const id = ++lastId;
      const settle = (result: Result<PhotoView>) => {
        clearTimeout(timer);
        asked.removeEventListener('message', onAnswer);
        asked.removeEventListener('error', onError);
        resolve(result);
      };
      const onAnswer = ({ data }: MessageEvent<ReaderAnswer>) => {
        if (data.id === id) settle(data.view ? succeed(data.view) : fail(data.problem));
      };
      const onError = (event: ErrorEvent) => {
        end();
        settle(fail(stopped(wish.photoId, event.message || 'the reader could not start')));
      };
      const timer = setTimeout(() => {
        end();
        settle(fail(stopped(wish.photoId, 'reading took longer than 90 seconds')));
      }, patienceMs);
      asked.addEventListener('message', onAnswer);
      asked.addEventListener('error', onError);
      asked.postMessage({ kind: 'read', id, ...wish } satisfies ReaderRequest);
    });

  const inTurn = <T>(work: () => T | Promise<T>): Promise<T> => {
    const next = queue.then(work, work);
    queue = next;
    return next;
  };

  return {
    read: (photoId: string, base64: string, adjustment: Adjustment) =>
      inTurn(() => ask({ photoId, base64, adjustment })),
    /** A fresh worker: the print recogniser adapts to what it saw, so every listing starts with a new one. */
    renew: () => inTurn(end),
  };
}
export type ReaderHost = ReturnType<typeof createReaderHost>;

const stopped = (photoId: string, what: string) => ({
  code: 'reader-stopped',
  where: `photo ${photoId}`,
  what,
  remedy: 'Read the photo again, or type the code by hand.',
});
