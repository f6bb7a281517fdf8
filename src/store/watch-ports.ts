import { browser } from '../browser/api';
import { makersFor } from '../maker';
import type { WatchPorts } from '../watch';
import { finishedMakers } from './maker-files';
import { packing } from './packing';

const markKey = 'watch-list-mark';
/** Under this name former builds kept the generation alone. */
const formerKey = 'watch-list-generation';

/** What the watch list needs of the browser. Its mark lives in storage.local, apart from the database. */
export const watchPorts: WatchPorts = {
  changeMark: (change) =>
    // storage.local has no transactions: without the lock two windows could read the same mark, and the later lower it.
    navigator.locks.request(markKey, async () => {
      const stored = await browser.storage.local.get([markKey, formerKey]);
      const mark = await change(stored[markKey] ?? stored[formerKey]);
      await browser.storage.local.set({ [markKey]: mark });
      return mark;
    }),
  now: () => new Date().toISOString(),
  newId: () => crypto.randomUUID(),
  packing,
  rules: browser.runtime.getManifest().version,
  makers: async (url) => makersFor(url, await finishedMakers()),
};
