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

describe('records of other versions', () => {
  it('brings a record without a version up to this one', () => {
    expect(openRecord(trialRecord())).toEqual({
      state: 'readable',
      record: { ...trialRecord(), version: 1, note: '', removedAt: null, pictures: [] },
    });
  });

  it.each([
    [undefined, 'record-damaged'],
    [null, 'record-damaged'],
    [[], 'record-damaged'],
    [{}, 'record-damaged'],
    [{ ...trialRecord(), version: 'one' }, 'record-damaged'],
    [{ ...trialRecord(), version: 2 }, 'record-newer'],
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
    expect(good(await list.rows())).toMatchObject([{ state: 'newer', id: 'new-1', raw: newer }]);
    expect(await list.setNote('new-1', 'x')).toMatchObject({ ok: false, problem: { code: 'record-newer' } });
    expect(JSON.parse(good(await list.exportText())).records).toEqual([newer]);
  });

  it('refuses a database of a newer structure and leaves it as it is', async () => {
    const bench = testBench();
    (await bench.open()).close();
    const database = await openDB(databaseName, structureVersion + 1);
    database.close();
    await expect(bench.open()).rejects.toThrow('written by a newer version');
  });
});
