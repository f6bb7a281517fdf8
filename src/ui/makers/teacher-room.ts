import '../../reader/page/plain-validation';
import { type KnownCode, learnSystem } from '../../code';

/** The teacher in a room of its own: the screen stays free while it works, and whoever asked ends it with its room. */
self.addEventListener('message', ({ data }: MessageEvent<readonly KnownCode[]>) => {
  self.postMessage(learnSystem(data));
});
