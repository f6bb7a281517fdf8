import { type KnownCode, type Learned, learning } from '../../code';
import { inTurns } from './in-turns';

/** As much of a worker as is used here. */
type Room = Pick<Worker, 'addEventListener' | 'postMessage' | 'terminate'>;

interface Asking {
  signal: AbortSignal;
  /** Told when the room fails, with the browser's words: the search then goes on at the screen's own cost. */
  onHere: (why: string) => void;
  openRoom?: () => Room;
  pause?: () => Promise<void>;
}

const openTeacherRoom = (): Room =>
  new Worker(new URL('./teacher-room.ts', import.meta.url), { type: 'module', name: 'teacher' });

/**
 * Learns from known codes in a worker, so that the page stays free; where the browser gives none, or it fails, on the
 * page in turns. Null when it was ended before: the worker is then gone.
 */
export async function learnBeside(
  examples: readonly KnownCode[],
  { signal, onHere, openRoom = openTeacherRoom, pause }: Asking,
): Promise<Learned | null> {
  try {
    return await inRoom(examples, signal, openRoom);
  } catch (error) {
    if (signal.aborted) return null;
    onHere(error instanceof Error ? error.message : String(error));
    return inTurns(learning(examples), { signal, ...(pause && { pause }) });
  }
}

async function inRoom(examples: readonly KnownCode[], signal: AbortSignal, openRoom: () => Room) {
  if (signal.aborted) return null;
  const room = openRoom();
  try {
    return await new Promise<Learned | null>((resolve, reject) => {
      room.addEventListener('message', (({ data }: MessageEvent<Learned>) => resolve(data)) as EventListener);
      room.addEventListener('error', ((event: ErrorEvent) => {
        event.preventDefault();
        reject(new Error(event.message || 'the worker did not start'));
      }) as EventListener);
      room.addEventListener('messageerror', () => reject(new Error('the answer could not be handed over')));
      signal.addEventListener('abort', () => resolve(null), { once: true });
      room.postMessage(examples);
    });
  } finally {
    room.terminate();
  }
}
