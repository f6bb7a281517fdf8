import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { makersFor } from '../../../src/maker';
import type { Problem } from '../../../src/problem';
import { packing } from '../../../src/store/packing';
import { type Mark, openWatchList, type WatchList, type WatchPorts, type WatchRecord } from '../../../src/watch';
import { databaseName, structureVersion, type WatchSchema } from '../../../src/watch/database';

/** The whole content of a database, as a copy of its files holds it. */
interface Copy {
  cases: WatchSchema['cases']['value'][];
  looks: WatchSchema['looks']['value'][];
  pictures: WatchSchema['pictures']['value'][];
  rows: WatchSchema['rows']['value'][];
  meta: [string, number | string][];
}

/** A watch list with a clock and ids of the test's own; `restart` opens it again as a new browser start would. */
export function testBench() {
  globalThis.indexedDB = new IDBFactory();
  let stored: unknown;
  let minutes = 0;
  let ids = 0;
  const opened: WatchList[] = [];
  const ports: WatchPorts = {
    changeMark: async (change) => {
      const mark = await change(stored);
      stored = mark;
      return mark;
    },
    now: () => new Date(Date.UTC(2026, 2, 1, 10, minutes++)).toISOString(),
    newId: () => `id-${++ids}`,
    packing,
    rules: '0.1.0',
    makers: async (url) => makersFor(url, []),
  };
  const open = async (): Promise<WatchList> => {
    const list = await openWatchList(ports);
    if (!list.ok) throw new Error(`the list did not open: ${list.problem.code}`);
    opened.push(list.value);
    return list.value;
  };
  const closeAll = () => {
    for (const list of opened.splice(0)) list.close();
  };
  return {
    open,
    ports,
    restart: () => {
      closeAll();
      return open();
    },
    /** The browser removes the database and nothing else. */
    wipe: () => {
      closeAll();
      globalThis.indexedDB = new IDBFactory();
    },
    copy: async (): Promise<Copy> => {
      const database = await openDB<WatchSchema>(databaseName, structureVersion);
      const keys = await database.getAllKeys('meta');
      const copy: Copy = {
        cases: await database.getAll('cases'),
        looks: await database.getAll('looks'),
        pictures: await database.getAll('pictures'),
        rows: await database.getAll('rows'),
        meta: await Promise.all(
          keys.map(async (key): Promise<[string, number | string]> => [key, (await database.get('meta', key)) ?? 0]),
        ),
      };
      database.close();
      return copy;
    },
    /** Puts a copy in the database's place, as a restored folder or a damaged log does. */
    putBack: async (copy: Copy) => {
      closeAll();
      const database = await openDB<WatchSchema>(databaseName, structureVersion);
      const transaction = database.transaction(['cases', 'looks', 'pictures', 'rows', 'meta'], 'readwrite');
      await Promise.all([
        transaction.objectStore('cases').clear(),
        transaction.objectStore('rows').clear(),
        ...copy.cases.map((one) => transaction.objectStore('cases').put(one)),
        transaction.objectStore('looks').clear(),
        transaction.objectStore('pictures').clear(),
        ...copy.looks.map((one) => transaction.objectStore('looks').put(one)),
        ...copy.pictures.map((one) => transaction.objectStore('pictures').put(one)),
        ...copy.rows.map((one) => transaction.objectStore('rows').put(one)),
        ...copy.meta.map(([key, value]) => transaction.objectStore('meta').put(value, key)),
      ]);
      await transaction.done;
      database.close();
    },
    passDays: (days: number) => {
      minutes += days * 24 * 60;
    },
    mark: () => stored as Mark | undefined,
    storeMark: (mark: unknown) => {
      stored = mark;
    },
    generation: () => (stored as Mark | undefined)?.generation ?? 0,
  };
}

/** The value of a result that the test expects to be good. */
export function good<T>(result: { ok: true; value: T } | { ok: false; problem: Problem }): T {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

/** Every record of a list that can be read, in the list's order, those in the bin too. */
export async function recordsOf(list: WatchList): Promise<WatchRecord[]> {
  const rows = good(await list.rows()).filter(({ state }) => state === 'readable');
  return Promise.all(rows.map(async ({ id }) => good(await list.get(id)).record));
}
