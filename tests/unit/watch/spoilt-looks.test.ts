import { openDB } from 'idb';
import { describe, expect, it } from 'vitest';
import { packing } from '../../../src/store/packing';
import type { WatchList } from '../../../src/watch';
import { databaseName, structureVersion, type WatchSchema } from '../../../src/watch/database';
import { placeOfFault } from '../../../src/watch/record/standing';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

const url = 'https://attic-arcade.example/item/1';

async function kept() {
  const bench = testBench();
  const list = await bench.open();
  const { id } = good(await list.save(sampleCase(url), []));
  return { bench, list, id };
}

/** Puts other bytes under the name of the latest look. */
async function spoil(list: WatchList, id: string) {
  const name = good(await list.get(id)).record.looks[0]!.look;
  const database = await openDB<WatchSchema>(databaseName, structureVersion);
  await database.put('looks', { hash: name, packed: await packing.pack('{"version":4}') });
  database.close();
}

describe('a look that cannot be read', () => {
  it('gives the next one nothing to compare with, and says why', async () => {
    const { list, id } = await kept();
    expect(good(await list.earlier(url))?.look.readAt).toBe('2026-03-01T10:00:00.000Z');
    await spoil(list, id);
    expect(await list.earlier(url)).toMatchObject({ ok: false, problem: { code: 'look-spoilt' } });
  });

  it('has no photos that stand elsewhere too, and nothing to be worked out of', async () => {
    const { list, id } = await kept();
    const other = good(await list.save(sampleCase('https://attic-arcade.example/item/2'), []));
    await spoil(list, id);
    expect(good(await list.samePhotos(other.id))).toEqual([]);
    expect(good(await list.samePhotos(id))).toEqual([]);
    expect(good(await list.workOutLikenesses(async () => null))).toBe(0);
  });

  it('keeps a record of a newer form out of the list, and what it has stays', async () => {
    const { list } = await kept();
    const file = JSON.parse(good(await list.exportText()));
    const [look] = file.looks;
    const newer = { ...file.records[0], id: 'newer-1', version: 99 };
    const spoilt = { ...file, records: [newer], looks: [{ hash: look.hash, look: { ...look.look, replies: [1] } }] };
    const bench = testBench();
    const empty = await bench.open();
    const imported = good(await empty.importText(JSON.stringify(spoilt)));
    expect(imported).toMatchObject({ added: 0, newer: 0, refused: [{ code: 'record-damaged' }] });
    const whole = good(await empty.importText(JSON.stringify({ ...file, records: [newer] })));
    expect(whole).toMatchObject({ added: 0, newer: 1, refused: [] });
  });
});

it('what is wrong without a place is not possible', () => {
  expect(placeOfFault([])).toEqual({ place: '', fault: 'not-possible' });
});

it.each([
  [19_999, true],
  [20_000, true],
  [20_001, false],
])('a note of %i characters is kept: %s', async (length, isKept) => {
  const { list, id } = await kept();
  expect((await list.setNote(id, 'n'.repeat(length), '')).ok).toBe(isKept);
  expect(good(await list.get(id)).record.note).toHaveLength(isKept ? length : 0);
});
