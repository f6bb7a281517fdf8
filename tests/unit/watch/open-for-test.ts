import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openWatchList, type WatchList } from '../../../src/watch';

/** A watch list with a clock and ids of the test's own; `restart` opens it again as a new browser start would. */
export function testBench() {
  globalThis.indexedDB = new IDBFactory();
  let generation = 0;
  let minutes = 0;
  let ids = 0;
  const opened: WatchList[] = [];
  const ports = {
    counter: {
      read: async () => generation,
      write: async (value: number) => {
        generation = value;
      },
    },
    now: () => new Date(Date.UTC(2026, 2, 1, 10, minutes++)).toISOString(),
    newId: () => `case-${++ids}`,
  };
  const open = async (): Promise<WatchList> => {
    const list = await openWatchList(ports);
    if (!list.ok) throw new Error(`the list did not open: ${list.problem.what}`);
    opened.push(list.value);
    return list.value;
  };
  return {
    open,
    ports,
    restart: () => {
      for (const list of opened.splice(0)) list.close();
      return open();
    },
    wipe: () => {
      for (const list of opened.splice(0)) list.close();
      globalThis.indexedDB = new IDBFactory();
    },
    passDays: (days: number) => {
      minutes += days * 24 * 60;
    },
    generation: () => generation,
  };
}

/** The value of a result that the test expects to be good. */
export function good<T>(result: { ok: true; value: T } | { ok: false; problem: { what: string } }): T {
  if (!result.ok) throw new Error(result.problem.what);
  return result.value;
}
