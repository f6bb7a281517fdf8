import type { HandMark, HandMeasure } from '../../photo';
import { fail, problem, type Result, succeed } from '../../problem';
import type { Room } from '../ask-room';
import type { MeasuringAnswer, MeasuringRequest } from './messages';

type Measured = Result<HandMeasure[][]> | null;

/** Measures marks on one photo, in a worker of its own: moving a mark never waits for it. */
export interface Measuring {
  /** What each mark measures; null where later marks were asked for in the meantime, or it was ended. */
  measure(marks: readonly HandMark[]): Promise<Measured>;
  end(): void;
}

const openMeasuringRoom = (): Room =>
  new Worker(new URL('./measuring-room.ts', import.meta.url), { type: 'module', name: 'measuring' });

interface Asked {
  id: number;
  marks: readonly HandMark[];
  settle: (measured: Measured) => void;
}

/** A worker that failed answers nothing for ever: whoever asks next is answered by a fresh one. */
export function startMeasuring(bytes: ArrayBuffer, openRoom = openMeasuringRoom): Measuring {
  let lastId = 0;
  let ended = false;
  let asked: Asked | null = null;
  /** The one that waits, and no other: only the latest marks count. */
  let waiting: Asked | null = null;
  let room: Room | null = open();

  function open(): Room {
    const opened = openRoom();
    opened.addEventListener('message', (({ data }: MessageEvent<MeasuringAnswer>) => {
      if (data.id === asked?.id) answer(data.problem ? fail(data.problem) : succeed(data.measures));
    }) as EventListener);
    opened.addEventListener('error', ((event: ErrorEvent) => {
      opened.terminate();
      if (room === opened) room = null;
      if (asked) answer(fail(stopped(event.message)));
    }) as EventListener);
    opened.postMessage({ kind: 'photo', bytes } satisfies MeasuringRequest);
    return opened;
  }

  function answer(measured: Measured): void {
    const answered = asked;
    const next = waiting;
    asked = null;
    waiting = null;
    answered?.settle(next ? null : measured);
    if (next) ask(next);
  }

  /** Whoever waited until now is overtaken. */
  function wait(one: Asked | null): void {
    waiting?.settle(null);
    waiting = one;
  }

  function ask(one: Asked): void {
    asked = one;
    room ??= open();
    room.postMessage({ kind: 'marks', id: one.id, marks: [...one.marks] } satisfies MeasuringRequest);
  }

  return {
    measure: (marks) =>
      new Promise((settle) => {
        if (ended) return settle(null);
        const one = { id: ++lastId, marks, settle };
        if (asked) wait(one);
        else ask(one);
      }),
    end() {
      ended = true;
      room?.terminate();
      wait(null);
      answer(null);
    },
  };
}

const stopped = (said: string) => problem('measuring-failed', 'photo', { said });
