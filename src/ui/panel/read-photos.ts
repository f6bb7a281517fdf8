import type { PhotoBytes, PhotoView } from '../../message/protocol';
import { fail, type Problem, problem, type Result, succeed } from '../../problem';
import { isOfTheReader } from '../../reader';
import { nextStep, placesLeft, type Step, type Way } from './photo-steps';

/** Time as the session knows it: in tests it goes as the test says. */
export interface Clock {
  /** Milliseconds from some beginning. */
  now(): number;
  /** Calls after so many milliseconds, unless it is ended first by what it gives back. */
  wake(afterMs: number, call: () => void): () => void;
}

/** What reading a listing's photos needs and tells. */
export interface PhotoWork {
  /** How many photos the reader takes at once. */
  atOnce: number;
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
 * the likeliest to show the stamp is read first, as many at once as the reader takes. One that never comes holds up nothing
 * and is given up at its deadline; one that the reader failed on is tried once more by a fresh reader. Ends when each is
 * done with, or at the signal.
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
  /** Pieces of work that the reader is at. */
  let working = 0;
  let isFresh = false;
  let hasBegun = false;
  /** That a photo's reading began is told after what was done before it. */
  const untold: (() => void)[] = [];
  const tellBegun = () => {
    for (const tell of untold.splice(0)) tell();
  };
  let endWake = () => {};

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
    const outcome = fetched.ok ? known && succeed(known) : fetched;
    ways[index] = outcome ? { at: 'done', closer: false } : { at: 'here' };
    if (outcome) work.done(id, outcome);
  };
  const look = async (index: number, way: Way | undefined, closer: boolean) => {
    ways[index] = { at: 'work', closer, alone: false };
    const glance = await work.glance(idAt(ids, index), closer);
    const before = way?.at === 'seen' ? way.likelihood : null;
    const likelihood = glance.ok ? glance.value : (before ?? 0);
    const both = before === null ? likelihood : (before + likelihood) / 2;
    ways[index] = { at: 'seen', likelihood: both, again: false, closer };
    return () => {};
  };
  const read = async (index: number, way: Extract<Way, { at: 'seen' }>) => {
    const id = idAt(ids, index);
    ways[index] = { at: 'work', closer: way.closer, alone: way.again };
    const isLikely = way.likelihood > 0 && !hasBegun;
    hasBegun = true;
    untold.push(() => work.begins(id, isLikely));
    if (way.again) await work.renew();
    const outcome = await work.read(id);
    if (!way.again && failedByReader(outcome)) {
      ways[index] = { ...way, again: true };
      return () => {};
    }
    ways[index] = { at: 'done', closer: way.closer };
    return () => work.done(id, outcome);
  };

  await new Promise<void>((end, failed) => {
    const nextNow = (): Step => nextStep(ways, clock.now(), lastArrival);
    /** As much as the reader takes at once. */
    const begin = () => {
      while (isFresh && working < work.atOnce && !signal.aborted) {
        const step = nextNow();
        if (!('index' in step)) return;
        const way = ways[step.index];
        working++;
        const done =
          step.do === 'read' && way?.at === 'seen'
            ? read(step.index, way)
            : look(step.index, way, step.do === 'look-closer');
        done
          .then((tell) => {
            working--;
            if (signal.aborted) return;
            // The reader is at the next before what it read is judged and shown.
            begin();
            tell();
            tellBegun();
            goOn();
          })
          .catch(failed);
      }
    };
    const goOn = () => {
      endWake();
      if (signal.aborted) return;
      for (const [index, { at }] of ways.entries()) {
        if (at === 'unasked' && placesLeft(ways, clock.now()) > 0) fetchOne(index).then(goOn, failed);
      }
      begin();
      tellBegun();
      const step = nextNow();
      if (!isFresh || working > 0) return;
      if (step.do === 'end') end();
      if (step.do === 'rest') work.rests(ways.filter(({ at }) => at === 'asked').length);
      if (step.do === 'wait') endWake = clock.wake(step.until - clock.now(), goOn);
    };
    signal.addEventListener('abort', () => end(), { once: true });
    goOn();
    work.renew().then(() => {
      isFresh = true;
      goOn();
    }, failed);
  });
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
