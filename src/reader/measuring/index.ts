import type { HandMark, HandMeasure } from '../../photo';
import { fail, type Result, succeed } from '../../problem';
import type { MeasuringAnswer, MeasuringRequest } from './messages';

/** Measures marks on one photo, in a worker of its own: moving a mark never waits for it. */
export interface Measuring {
  /** What each mark measures; null where later marks were asked for in the meantime. */
  measure(marks: readonly HandMark[]): Promise<Result<HandMeasure[][]> | null>;
  end(): void;
}

export function startMeasuring(bytes: ArrayBuffer): Measuring {
  const worker = new Worker(new URL('./measuring-room.ts', import.meta.url), { type: 'module', name: 'measuring' });
  let last = 0;
  let busy = false;
  /** The one that waits, and no other: only the latest marks count. */
  let next: (() => void) | null = null;
  worker.postMessage({ kind: 'photo', bytes } satisfies MeasuringRequest);

  const ask = (id: number, marks: readonly HandMark[]) =>
    new Promise<Result<HandMeasure[][]> | null>((resolve) => {
      const settle = (result: Result<HandMeasure[][]>) => {
        worker.removeEventListener('message', onAnswer);
        worker.removeEventListener('error', onError);
        busy = false;
        next?.();
        next = null;
        resolve(id === last ? result : null);
      };
      const onAnswer = ({ data }: MessageEvent<MeasuringAnswer>) => {
        if (data.id !== id) return;
        settle(data.problem ? fail(data.problem) : succeed(data.measures));
      };
      const onError = ({ message }: ErrorEvent) =>
        settle(
          fail({
            code: 'measuring-failed',
            where: 'photo',
            what: message || 'the worker stopped',
            remedy: 'Open the photo again.',
          }),
        );
      worker.addEventListener('message', onAnswer);
      worker.addEventListener('error', onError);
      busy = true;
      worker.postMessage({ kind: 'marks', id, marks: [...marks] } satisfies MeasuringRequest);
    });

  return {
    async measure(marks) {
      const id = ++last;
      if (busy) {
        next?.();
        await new Promise<void>((go) => {
          next = go;
        });
        if (id !== last) return null;
      }
      return ask(id, marks);
    },
    end: () => worker.terminate(),
  };
}
