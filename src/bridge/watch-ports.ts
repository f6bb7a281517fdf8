import type { WatchPorts } from '../watch';
import { browser } from './browser';

const generationKey = 'watch-list-generation';

/** What the watch list needs of the browser. The counter lives in storage.local, apart from the database. */
export const watchPorts: WatchPorts = {
  counter: {
    async read() {
      const value = (await browser.storage.local.get(generationKey))[generationKey];
      return typeof value === 'number' ? value : 0;
    },
    write: (generation) => browser.storage.local.set({ [generationKey]: generation }),
  },
  now: () => new Date().toISOString(),
  newId: () => crypto.randomUUID(),
};
