import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { fail, type Problem, problem, type Result, succeed } from '../problem';
import type { StoredLikenesses } from './likenesses';
import type { WatchRow } from './rows';
import type { StoredLook, StoredPicture } from './types';

/** Version of the database's structure (its stores and indexes). Records carry a version of their own. */
export const structureVersion = 4;
export const databaseName = 'tellstamp-watch-list';

export type StoredRecord = Record<string, unknown> & { id: string };

/**
 * `cases` holds records as they were written, whatever their version: what the buyer did about a listing, and the names of
 * the looks at it. `looks` and `pictures` hold what never changes, under the SHA-256 of its content; `likenesses`, under a look's name, what was worked out of its pictures later. `rows` is what a list
 * shows of each record; `meta` the database's identity, the generation of its last change, the number of records, and the
 * format of the rows.
 */
export interface WatchSchema extends DBSchema {
  cases: { key: string; value: StoredRecord; indexes: { byId: string } };
  rows: { key: string; value: WatchRow; indexes: { byKey: string; byRemoval: string; byUse: string } };
  looks: { key: string; value: StoredLook };
  pictures: { key: string; value: StoredPicture };
  likenesses: { key: string; value: StoredLikenesses };
  meta: { key: string; value: number | string };
}
export type WatchDatabase = IDBPDatabase<WatchSchema>;

/** Opens the database, making what is missing. A newer structure is refused, never changed. */
export async function openDatabase(newId: () => string, onLost: () => void): Promise<Result<WatchDatabase>> {
  try {
    const database = await openDB<WatchSchema>(databaseName, structureVersion, {
      upgrade(database, oldVersion, _newVersion, transaction) {
        // One step for each structure version, none of which is ever edited after it was published.
        if (oldVersion < 1) {
          database.createObjectStore('cases', { keyPath: 'id' });
          database.createObjectStore('meta');
        }
        if (oldVersion < 2) {
          const cases = transaction.objectStore('cases');
          if (oldVersion === 1) cases.deleteIndex('byKey' as 'byId');
          // By it records are counted: counting the store itself would read them.
          cases.createIndex('byId', 'id');
          const rows = database.createObjectStore('rows', { keyPath: 'id' });
          rows.createIndex('byKey', 'key');
          // Null is no key: only deleted records stand in it.
          rows.createIndex('byRemoval', 'removedAt');
          transaction.objectStore('meta').put(newId(), 'identity');
        }
        if (oldVersion < 3) {
          database.createObjectStore('looks', { keyPath: 'hash' });
          database.createObjectStore('pictures', { keyPath: 'hash' });
          // By it a look or picture is known that no record needs any more.
          transaction.objectStore('rows').createIndex('byUse', 'uses', { multiEntry: true });
        }
        if (oldVersion < 4) database.createObjectStore('likenesses', { keyPath: 'hash' });
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

const openProblem = (error: unknown): Problem =>
  problem(
    (error as { name?: string } | null)?.name === 'VersionError' ? 'watch-list-newer' : 'watch-list-closed',
    'watch list',
  );
