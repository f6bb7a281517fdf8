import { openDB } from 'idb';
import { expect, it } from 'vitest';
import { databaseName, structureVersion } from '../../../src/watch/database';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

const at = '2026-03-01T10:00:00.000Z';
const record = {
  id: 'old-1',
  key: 'https://attic-arcade.example/item/7',
  title: 'Ondrasse Carryall 30',
  savedAt: at,
  changedAt: at,
  status: 'watching',
  case: sampleCase(),
};

/** The database as builds of each structure made it, with one record. */
async function madeWith(version: number) {
  const database = await openDB(databaseName, version, {
    upgrade(made) {
      const cases = made.createObjectStore('cases', { keyPath: 'id' });
      if (version === 1) cases.createIndex('byKey', 'key');
      else cases.createIndex('byId', 'id');
      const meta = made.createObjectStore('meta');
      if (version < 2) return;
      const rows = made.createObjectStore('rows', { keyPath: 'id' });
      rows.createIndex('byKey', 'key');
      rows.createIndex('byRemoval', 'removedAt');
      meta.put('id-of-then', 'identity');
      if (version < 3) return;
      made.createObjectStore('looks', { keyPath: 'hash' });
      made.createObjectStore('pictures', { keyPath: 'hash' });
      rows.createIndex('byUse', 'uses', { multiEntry: true });
    },
  });
  await database.put('cases', record);
  database.close();
}

it.each([1, 2, 3])('a database of structure %i is raised to the present one with its record', async (version) => {
  const bench = testBench();
  await madeWith(version);
  const list = await bench.open();
  expect(good(await list.rows()).map(({ id, state }) => [id, state])).toEqual([['old-1', 'readable']]);
  expect(good(await list.get('old-1')).looks).toHaveLength(1);
  good(await list.save(sampleCase('https://attic-arcade.example/item/8'), []));
  list.close();

  const database = await openDB(databaseName, structureVersion);
  const transaction = database.transaction([...database.objectStoreNames]);
  const indexes = Object.fromEntries(
    [...database.objectStoreNames].map((store) => [store, [...transaction.objectStore(store).indexNames].sort()]),
  );
  const identity = await transaction.objectStore('meta').get('identity');
  database.close();
  expect(indexes).toEqual({
    cases: ['byId'],
    likenesses: [],
    looks: [],
    meta: [],
    pictures: [],
    rows: ['byKey', 'byRemoval', 'byUse'],
  });
  expect(identity).toBe(version === 1 ? 'id-1' : 'id-of-then');
});

it('the first change of a list makes its first generation', async () => {
  const bench = testBench();
  const list = await bench.open();
  expect(bench.generation()).toBe(0);
  const { id } = good(await list.save(sampleCase(), []));
  expect(bench.generation()).toBe(1);
  good(await list.setStatus(id, 'asked'));
  expect(bench.generation()).toBe(2);
  expect((await list.setStatus('none', 'asked')).ok).toBe(false);
  expect(bench.generation()).toBe(2);
});
