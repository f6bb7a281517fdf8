import { openDB } from 'idb';
import { describe, expect, it } from 'vitest';
import { databaseName, structureVersion } from '../../../src/watch/database';
import { openRecord } from '../../../src/watch/migrations';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

const at = '2026-03-01T10:00:00.000Z';

/** A record as the trial builds wrote it, before records had a version. */
const trialRecord = () => ({
  id: 'old-1',
  key: 'https://attic-arcade.example/item/7',
  title: 'Ondrasse Carryall 30',
  savedAt: at,
  changedAt: at,
  status: 'watching',
  case: sampleCase(),
});

/** A record of version 1: one look, one note, the key of its address within. */
const firstRecord = () => ({
  ...trialRecord(),
  version: 1,
  note: 'asked for the lining',
  removedAt: at,
  pictures: [{ photoId: 'p1', lineId: null, picture: 'data:image/jpeg;base64,AAAA' }],
});

const withoutKey = <T extends { key: string }>({ key: _key, ...rest }: T) => rest;

describe('records of other versions', () => {
  it('brings a record without a version up to this one', () => {
    expect(openRecord(trialRecord())).toEqual({
      state: 'readable',
      record: {
        ...withoutKey(trialRecord()),
        version: 2,
        note: '',
        removedAt: null,
        pictures: [],
        otherNotes: [],
        earlier: [],
      },
    });
  });

  it('brings a record of version 1 up to this one', () => {
    expect(openRecord(firstRecord())).toEqual({
      state: 'readable',
      record: { ...withoutKey(firstRecord()), version: 2, otherNotes: [], earlier: [] },
    });
  });

  it.each([
    [undefined, 'record-damaged'],
    [null, 'record-damaged'],
    [[], 'record-damaged'],
    [{}, 'record-damaged'],
    [{ ...trialRecord(), version: 'one' }, 'record-damaged'],
    [{ ...trialRecord(), version: 3 }, 'record-newer'],
  ])('fails closed on %j', (raw, code) => {
    expect(openRecord(raw)).toMatchObject({ problem: { code } });
  });

  it('shows a record of a newer version, exports it, and never changes it', async () => {
    const bench = testBench();
    await (await bench.open()).rows();
    const newer = { ...trialRecord(), version: 9, id: 'new-1', madeUp: true };
    const database = await openDB(databaseName, structureVersion);
    await database.put('cases', newer);
    database.close();
    const list = await bench.restart();
    expect(good(await list.rows())).toMatchObject([{ state: 'newer', id: 'new-1', title: newer.title }]);
    expect(await list.setNote('new-1', 'x', '')).toMatchObject({ ok: false, problem: { code: 'record-newer' } });
    expect(JSON.parse(good(await list.exportText())).records).toEqual([newer]);
  });

  it('takes over the database of the first structure: every case, found by its address', async () => {
    const bench = testBench();
    const database = await openDB(databaseName, 1, {
      upgrade(made) {
        made.createObjectStore('cases', { keyPath: 'id' }).createIndex('byKey', 'key');
        made.createObjectStore('meta');
      },
    });
    await database.put('cases', { ...firstRecord(), removedAt: null });
    await database.put('meta', 4, 'generation');
    database.close();
    bench.storeMark(4);
    const list = await bench.open();
    expect(list.loss()).toBeNull();
    expect(good(await list.findByUrl('https://attic-arcade.example/item/7?utm_source=mail'))).toMatchObject({
      id: 'old-1',
      note: 'asked for the lining',
    });
    expect(bench.mark()).toMatchObject({ generation: 4, records: 1, loss: null });
  });

  it('refuses a database of a newer structure and leaves it as it is', async () => {
    const bench = testBench();
    (await bench.open()).close();
    const database = await openDB(databaseName, structureVersion + 1);
    database.close();
    await expect(bench.open()).rejects.toThrow('written by a newer version');
  });
});
