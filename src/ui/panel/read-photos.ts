import type { PhotoBytes, PhotoView } from '../../message/protocol';
import { fail, type Problem, problem, type Result } from '../../problem';
import { isOfTheReader } from '../../reader';
import { nextStep, placesLeft, type Way } from './photo-steps';

/** Time as the session knows it: in tests it goes as the test says. */
export interface Clock {
  /** Milliseconds from some beginning. */
  now(): number;
  /** Calls after so many milliseconds, unless it is ended first by what it gives back. */
  wake(afterMs: number, call: () => void): () => void;
}

/** What reading a listing's photos needs and tells. */
export interface PhotoWork {
  /** Whether a photo's bytes are here already. */
  isHere(id: string): boolean;
  fetch(id: string): Promise<Result<PhotoBytes>>;
  /** A photo's bytes came; gives the reading of them where there is one already. */
  arrived(id: string, bytes: PhotoBytes): PhotoView | null;
  /** How likely a photo shows a stamp, at the first look or a closer one. */
  glance(id: string, closer: boolean): Promise<Result<number>>;
  /** A photo is read now; `likely` where it is the first, and a glance saw something like a stamp in it. */
  begins(id: string, likely: boolean): void;
  read(id: string): Promise<Result<PhotoView>>;
  /** A fresh reader. */
  renew(): Promise<unknown>;
  /** A photo is done with: read, or not, and why. */
  done(id: string, outcome: Result<PhotoView>): void;
  /** All that came is read; so many photos are late, and are still read if they come. */
  rests(late: number): void;
}

/** The longest that one photo may take, by all ways to it, and all together from the first on. */
const photoMs = 35_000;
const allMs = 60_000;

/**
 * Reads photos: several travel at once, each is glanced at when it comes, the likelier half is looked at once more, and
 * the likeliest to show the stamp is read first. One that never comes holds up nothing and is given up at its deadline; one that the reader failed on is tried
 * once more by a fresh reader. Ends when each is done with, or at the signal.
 */
export async function readPhotos(
  ids: readonly string[],
  work: PhotoWork,
  clock: Clock,
  signal: AbortSignal,
): Promise<void> {
  if (ids.length === 0) return;
  const ways: Way[] = ids.map((id) => ({ at: work.isHere(id) ? 'here' : 'unasked' }));
  const begun = clock.now();
  let lastArrival = begun;
  let stir = () => {};

  const done = (index: number, outcome: Result<PhotoView>) => {
    const way = ways[index];
    ways[index] = { at: 'done', closer: way?.at === 'seen' && way.closer };
    work.done(idAt(ids, index), outcome);
  };
  const fetchOne = async (index: number) => {
    const id = idAt(ids, index);
    const since = clock.now();
    ways[index] = { at: 'asked', since };
    const leftMs = begun + allMs - since;
    const late = leftMs < photoMs ? allLate(id) : oneLate(id);
    const fetched = await byThen(
      clock,
      Math.min(photoMs, leftMs),
      twice(() => work.fetch(id)),
      late,
    );
    if (signal.aborted) return;
    lastArrival = clock.now();
    const known = fetched.ok ? work.arrived(id, fetched.value) : null;
    if (!fetched.ok) done(index, fetched);
    else if (known) done(index, { ok: true, value: known });
    else ways[index] = { at: 'here' };
    stir();
  };
  const fetchMore = () => {
    for (const [index, { at }] of ways.entries()) {
      if (at === 'unasked' && placesLeft(ways, clock.now()) > 0) fetchOne(index);
    }
  };
  /** Until something happens to a photo, or it is this late. */
  const stirred = (until: number | null) =>
    new Promise<void>((resume) => {
      const end = until === null ? () => {} : clock.wake(until - clock.now(), resume);
      stir = () => {
        end();
        resume();
      };
      signal.addEventListener('abort', stir, { once: true });
    });

  fetchMore();
  const fresh = work.renew();
  while (!signal.aborted) {
    fetchMore();
    const step = nextStep(ways, clock.now(), lastArrival);
    if (step.do === 'end') return;
    if (step.do === 'wait' || step.do === 'rest') {
      if (step.do === 'rest') work.rests(ways.filter(({ at }) => at === 'asked').length);
      await stirred(step.do === 'wait' ? step.until : null);
      continue;
    }
    const { index } = step;
    const id = idAt(ids, index);
    const way = ways[index];
    await fresh;
    if (signal.aborted) return;
    if (step.do === 'glance' || step.do === 'look-closer') {
      const closer = step.do === 'look-closer';
      const glance = await work.glance(id, closer);
      const before = way?.at === 'seen' ? way.likelihood : null;
      const likelihood = glance.ok ? glance.value : (before ?? 0);
      ways[index] = {
        at: 'seen',
        likelihood: before === null ? likelihood : (before + likelihood) / 2,
        again: false,
        closer,
      };
    } else if (way?.at === 'seen') {
      work.begins(id, way.likelihood > 0 && ways.every(({ at }) => at !== 'done'));
      if (way.again) await work.renew();
      const outcome = await work.read(id);
      if (signal.aborted) return;
      if (!way.again && failedByReader(outcome)) ways[index] = { ...way, again: true };
      else done(index, outcome);
    }
  }
}

const idAt = (ids: readonly string[], index: number): string => ids[index] ?? '';

/** What was asked, or a problem where the answer does not come in time. */
function byThen<T>(clock: Clock, ms: number, asked: Promise<Result<T>>, late: Problem): Promise<Result<T>> {
  return new Promise((settle) => {
    const end = clock.wake(Math.max(0, ms), () => settle(fail(late)));
    asked.then((answer) => {
      end();
      settle(answer);
    });
  });
}

/** Asks once more where a part of the extension was stopped while it was at it. */
async function twice<T>(ask: () => Promise<Result<T>>): Promise<Result<T>> {
  const first = await ask();
  return first.ok || !['no-answer', 'unforeseen'].includes(first.problem.code) ? first : ask();
}

function failedByReader(outcome: Result<PhotoView>): boolean {
  if (!outcome.ok) return isOfTheReader(outcome.problem);
  const { read } = outcome.value;
  return read.state === 'unread' && isOfTheReader(read.problem);
}

const oneLate = (id: string) => problem('photo-late', `photo ${id}`, { seconds: photoMs / 1000 });
const allLate = (id: string) => problem('photo-late', `photo ${id}`, { seconds: allMs / 1000, all: true });
