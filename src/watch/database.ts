import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { fail, type Problem, type Result, succeed } from '../problem';

/** Version of the database's structure (its stores and indexes). Records carry a version of their own. */
export const structureVersion = 1;
export const databaseName = 'tellstamp-watch-list';

export type StoredRecord = Record<string, unknown> & { id: string; key: string };

/** `cases` holds records as they were written, whatever their version; `meta` the generation of the last change. */
export interface WatchSchema extends DBSchema {
  cases: { key: string; value: StoredRecord; indexes: { byKey: string } };
  meta: { key: string; value: number };
}
export type WatchDatabase = IDBPDatabase<WatchSchema>;

/** Opens the database, making what is missing. A newer structure is refused, never changed. */
export async function openDatabase(onLost: () => void): Promise<Result<WatchDatabase>> {
  try {
    const database = await openDB<WatchSchema>(databaseName, structureVersion, {
      upgrade(database, oldVersion) {
        // One step for each structure version, none of which is ever edited after it was published.
        if (oldVersion < 1) {
          database.createObjectStore('cases', { keyPath: 'id' }).createIndex('byKey', 'key');
          database.createObjectStore('meta');
        }
      },
      // Another part of the extension wants a newer structure: let it, rather than hold it up.
      blocking: (_now, _wanted, event) => {
        (event.target as unknown as { close(): void }).close();
        onLost();
      },
      terminated: onLost,
    });
    return succeed(database);
  } catch (error) {
    return fail(openProblem(error));
  }
}

function openProblem(error: unknown): Problem {
  const name = (error as { name?: string } | null)?.name;
  if (name === 'VersionError') {
    return {
      code: 'watch-list-newer',
      where: 'watch list',
      what: 'the watch list was written by a newer version of the extension',
      remedy: 'Update the extension. Nothing was changed.',
    };
  }
  return {
    code: 'watch-list-closed',
    where: 'watch list',
    what: 'the browser did not open the watch list',
    remedy: 'Close other windows of the extension and try again; check the free disk space.',
  };
}
