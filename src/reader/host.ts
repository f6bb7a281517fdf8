import type { PhotoView } from '../message/protocol';
import type { Adjustment } from '../photo/adjustment-types';
import type { Result } from '../problem';
import { createDesk } from './desk';
import { shareDesks } from './share-desks';
import { type Machine, workersAtOnce } from './workers-at-once';

/** A second worker that has had nothing to do for so long gives its memory back. */
const idleMs = 20_000;

/** Owns the reader's workers: photos in the order in which they are asked for, one or two at a time as the machine allows. */
export function createReaderHost() {
  const desks = shareDesks({
    create: createDesk,
    most: workersAtOnce(navigator as Machine),
    isEnd: (code) => code === 'reader-stopped' || code === 'reader-late',
    afterIdle(call) {
      const timer = setTimeout(call, idleMs);
      return () => clearTimeout(timer);
    },
  });
  return {
    read: (photoId: string, file: string, adjustment: Adjustment): Promise<Result<PhotoView>> =>
      desks.do((desk) =>
        desk.ask({ kind: 'read', photoId, file, adjustment }, (answer) => ('view' in answer ? answer.view : null)),
      ),
    /** How likely a photo shows a stamp, 0 to 1, by one quick look, or a closer one. */
    glance: (photoId: string, file: string, closer: boolean): Promise<Result<number>> =>
      desks.do((desk) =>
        desk.ask({ kind: 'glance', photoId, file, closer }, (answer) =>
          'likelihood' in answer ? answer.likelihood : null,
        ),
      ),
    /**
     * Fresh workers: the print recogniser adapts to what it saw, so every listing starts with a new one. The first starts
     * at once, while the photos are still on their way.
     */
    renew: (): Promise<void> => desks.renew(),
  };
}
