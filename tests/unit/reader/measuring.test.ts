import { describe, expect, it } from 'vitest';
import { fail, problem } from '../../../src/problem';
import { startMeasuring } from '../../../src/reader/measuring';
import type { MeasuringAnswer, MeasuringRequest } from '../../../src/reader/measuring/messages';

const bytes = new ArrayBuffer(3);

/** A worker that does as a test says, and notes what it was told. */
class Room extends EventTarget {
  told: MeasuringRequest[] = [];
  ended = false;
  postMessage(request: MeasuringRequest) {
    this.told.push(request);
  }
  terminate() {
    this.ended = true;
  }
  says(data: MeasuringAnswer) {
    this.dispatchEvent(Object.assign(new Event('message'), { data }));
  }
  fails(message: string) {
    this.dispatchEvent(Object.assign(new Event('error'), { message }));
  }
  get asked() {
    return this.told.flatMap((one) => (one.kind === 'marks' ? [one.id] : []));
  }
}

function rooms() {
  const opened: Room[] = [];
  const open = () => {
    const room = new Room();
    opened.push(room);
    return room;
  };
  return { opened, measuring: startMeasuring(bytes, open) };
}
/** Measuring whose worker did not load, and what the first marks were answered. */
async function notLoaded() {
  const { opened, measuring } = rooms();
  const first = measuring.measure([]);
  opened[0]?.fails('did not load');
  return { opened, measuring, first: await first };
}
const stopped = (said: string) => fail(problem('measuring-failed', 'photo', { said }));
/** Until all that was promised so far has been told. */
const settled = () => new Promise<void>((resolve) => setImmediate(resolve));

describe('measuring in a worker', () => {
  it('gives the answer to the latest marks, and null for those that were overtaken', async () => {
    const { opened, measuring } = rooms();
    const asked = [measuring.measure([]), measuring.measure([]), measuring.measure([])];
    opened[0]?.says({ id: 1, measures: [] });
    await settled();
    opened[0]?.says({ id: 3, measures: [[]] });
    expect(await Promise.all(asked)).toEqual([null, null, { ok: true, value: [[]] }]);
  });

  it('answers marks with the error of a worker that did not load', async () => {
    const { opened, first } = await notLoaded();
    expect(first).toEqual(stopped('did not load'));
    expect(opened[0]?.ended).toBe(true);
  });

  it('measures later marks in a fresh worker, which is given the photo again', async () => {
    const { opened, measuring } = await notLoaded();
    const later = measuring.measure([]);
    expect(opened[1]?.told).toEqual([
      { kind: 'photo', bytes },
      { kind: 'marks', id: 2, marks: [] },
    ]);
    opened[1]?.says({ id: 2, measures: [[]] });
    expect(await later).toEqual({ ok: true, value: [[]] });
  });

  it('answers later marks with the error where a fresh worker does not load either', async () => {
    const { opened, measuring } = await notLoaded();
    const later = measuring.measure([]);
    opened[1]?.fails('did not load again');
    expect(await later).toEqual(stopped('did not load again'));
  });

  it('measures marks that waited while the worker failed', async () => {
    const { opened, measuring } = rooms();
    const asked = [measuring.measure([]), measuring.measure([])];
    opened[0]?.fails('');
    await settled();
    expect(opened.map((room) => room.asked)).toEqual([[1], [2]]);
    opened[1]?.says({ id: 2, measures: [] });
    expect(await Promise.all(asked)).toEqual([null, { ok: true, value: [] }]);
  });

  it('measures the first marks though the worker had failed before they were there', async () => {
    const { opened, measuring } = rooms();
    opened[0]?.fails('did not load');
    const first = measuring.measure([]);
    opened[1]?.says({ id: 1, measures: [] });
    expect(await first).toEqual({ ok: true, value: [] });
  });

  it('ends the worker that is running, and measures nothing that comes after', async () => {
    const { opened, measuring } = rooms();
    const running = measuring.measure([]);
    measuring.end();
    expect(opened[0]?.ended).toBe(true);
    expect([await running, await measuring.measure([])]).toEqual([null, null]);
    expect(opened).toHaveLength(1);
  });
});
