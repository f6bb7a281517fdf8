import { hasOffscreen } from '../browser/compat';
import type { PhotoView } from '../message/protocol';
import { send } from '../message/send';
import type { Adjustment } from '../photo/adjustment-types';
import { type Problem, type Result, succeed } from '../problem';
import { createReaderHost } from './host';
import { type Machine, workersAtOnce } from './workers-at-once';

export interface Reader {
  /** `file` is the address of the photo's bytes inside the extension (blob:). */
  read(photoId: string, file: string, adjustment: Adjustment): Promise<Result<PhotoView>>;
  /** How likely a photo shows a stamp, 0 to 1, by one quick look, or a closer one. */
  glance(photoId: string, file: string, closer: boolean): Promise<Result<number>>;
  /** How many photos it reads at once. */
  atOnce: number;
  /** A fresh reader, which has seen nothing yet. */
  renew(): Promise<unknown>;
}

/** The reader as the panel sees it: in the offscreen document where the browser has one, else in the panel. */
export function connectReader(): Reader {
  const atOnce = workersAtOnce(navigator as Machine);
  return { ...(hasOffscreen() ? offscreenReader : createReaderHost()), atOnce };
}

/** Failures of the reader itself, not of the photo: with a fresh reader the photo may well be read. */
const ofTheReader = new Set(['reader-stopped', 'reader-failed', 'no-answer', 'unforeseen', 'stamp-engine-failed']);

export const isOfTheReader = ({ code }: Problem): boolean => ofTheReader.has(code);

/** Reads a photo, and once more where the reader failed and not the photo. */
export async function readOnceMore(read: () => Promise<Result<PhotoView>>): Promise<Result<PhotoView>> {
  const outcome = await read();
  return !outcome.ok && isOfTheReader(outcome.problem) ? read() : outcome;
}

/** How often a document that is gone is opened again for one photo: the new one may be closed as well. */
const openings = 2;

/** Asks the offscreen document, and opens it where none answers: the browser closed it, or it was never opened. */
async function askReader<T>(ask: () => Promise<Result<T>>): Promise<Result<T>> {
  let answer = await ask();
  for (let opening = 1; opening <= openings; opening++) {
    if (answer.ok || answer.problem.code !== 'no-answer') return answer;
    const opened = await send('reader.open', {});
    if (!opened.ok) return opened;
    answer = await ask();
  }
  return answer;
}

const offscreenReader: Omit<Reader, 'atOnce'> = {
  read: (photoId, file, adjustment) => askReader(() => send('photo.read', { photoId, file, adjustment })),
  async glance(photoId, file, closer) {
    const glance = await askReader(() => send('photo.glance', { photoId, file, closer }));
    return glance.ok ? succeed(glance.value.likelihood) : glance;
  },
  async renew() {
    await send('reader.open', {});
    return askReader(() => send('reader.renew', {}));
  },
};
