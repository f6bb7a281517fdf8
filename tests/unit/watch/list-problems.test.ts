import { openDB } from 'idb';
import { describe, expect, it } from 'vitest';
import { problem } from '../../../src/problem';
import { packing } from '../../../src/store/packing';
import { openWatchList } from '../../../src/watch';
import { databaseName, structureVersion } from '../../../src/watch/database';
import { addressOf, openLook, unpackLook } from '../../../src/watch/look';
import { lookVersion } from '../../../src/watch/types';
import { problemInEnglish } from '../../said';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

describe('what the list says of what it does not do', () => {
  it('for a record that is not there', async () => {
    const list = await testBench().open();
    const missing = {
      ok: false,
      problem: problem('record-missing', 'watch list'),
    };
    expect(await list.get('x')).toEqual(missing);
    expect(await list.setStatus('x', 'asked')).toEqual(missing);
    expect(await list.setNote('x', 'a', '')).toEqual(missing);
    expect(await list.remove('x')).toEqual(missing);
    expect(await list.restore('x')).toEqual(missing);
    expect(await list.settleOtherNote('x', { from: 'bin', at: '', note: '', status: null }, true)).toEqual(missing);
  });

  it('for a note that is too long', async () => {
    const list = await testBench().open();
    const { id } = good(await list.save(sampleCase(), []));
    expect(good(await list.setNote(id, 'n'.repeat(20_000), '')).record.note).toHaveLength(20_000);
    expect(await list.setNote(id, 'n'.repeat(20_001), '')).toEqual({
      ok: false,
      problem: problem('record-refused', 'note', { place: 'note', fault: 'too-large' }),
    });
  });

  it.each([
    ['QuotaExceededError', 'disk-full', 'the disk is full', 'Free some space and save again. Nothing was changed.'],
    ['Error', 'watch-list-failed', 'the browser did not carry out the change', 'Nothing was changed. Try again.'],
  ])('when the browser fails with %s', async (name, code, what, remedy) => {
    const bench = testBench();
    const failing = { ...packing, pack: () => Promise.reject(Object.assign(new Error('no'), { name })) };
    const list = good(await openWatchList({ ...bench.ports, packing: failing }));
    const saved = await list.save(sampleCase(), []);
    expect(saved.ok ? null : problemInEnglish(saved.problem)).toEqual({ code, where: 'watch list', what, remedy });
    list.close();
  });

  it('when the browser closes it for a newer build, and when a newer build wrote it', async () => {
    const bench = testBench();
    const list = await bench.open();
    (await openDB(databaseName, structureVersion + 1)).close();
    expect(await list.rows()).toEqual({
      ok: false,
      problem: problem('watch-list-closed', 'watch list'),
    });
    expect(await openWatchList(bench.ports)).toEqual({
      ok: false,
      problem: problem('watch-list-newer', 'watch list'),
    });
  });

  it('when the browser does not open it, or its mark', async () => {
    const bench = testBench();
    globalThis.indexedDB = {
      open: () => {
        throw new Error('no');
      },
    } as unknown as IDBFactory;
    expect(await openWatchList(bench.ports)).toEqual({
      ok: false,
      problem: problem('watch-list-closed', 'watch list'),
    });
    const other = testBench();
    const marks = { ...other.ports, changeMark: () => Promise.reject(new Error('no')) };
    expect(await openWatchList(marks)).toMatchObject({ ok: false, problem: { code: 'watch-list-failed' } });
    // It was closed again: nothing holds a newer build up.
    (await openDB(databaseName, 9)).close();
  });
});

describe('a look that cannot be read', () => {
  const spoilt = { ok: false, problem: problem('look-spoilt', 'watch list') };
  it('is told: missing, cut off, or another one', async () => {
    expect(await unpackLook('a', undefined, packing)).toEqual({
      ok: false,
      problem: problem('look-missing', 'watch list'),
    });
    expect(await unpackLook('a', new Uint8Array([1, 2]), packing)).toEqual(spoilt);
    const packed = await packing.pack('words');
    expect(await unpackLook('a', packed, packing)).toEqual(spoilt);
    expect(await unpackLook(await packing.digest('words'), packed, packing)).toEqual({ ok: true, value: 'words' });
  });

  it('is told: of a newer build, or of no form', () => {
    expect(openLook({ version: lookVersion + 1 })).toEqual({
      state: 'newer',
      problem: problem('record-newer', 'watch list', { version: lookVersion + 1 }),
    });
    expect(openLook({ version: '2' })).toMatchObject({ state: 'damaged' });
    expect(openLook(null)).toEqual({
      state: 'damaged',
      problem: problem('record-damaged', 'watch list', { place: '', fault: 'wrong-kind' }),
    });
  });

  it('has no picture where the bytes are none of pixels', () => {
    const bytes = new Uint8Array([1]);
    expect(addressOf(undefined, packing)).toBeNull();
    expect(addressOf({ hash: '', type: 'image/svg+xml', bytes }, packing)).toBeNull();
    expect(addressOf({ hash: '', type: 'image/png', bytes }, packing)).toBe('data:image/png;base64,AQ==');
  });
});
