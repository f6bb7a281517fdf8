import { type KnownCode, type Learned, learning } from '../../code';
import { reported } from '../../problem';
import { askRoom, type Room } from '../../reader/ask-room';
import { inTurns } from './in-turns';

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
    return await askRoom<Learned>(examples, { openRoom, signal });
  } catch (error) {
    if (signal.aborted) return null;
    onHere(reported(error).said);
    return inTurns(learning(examples), { signal, ...(pause && { pause }) });
  }
}
