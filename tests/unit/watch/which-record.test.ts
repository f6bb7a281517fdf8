import { openDB } from 'idb';
import { describe, expect, it } from 'vitest';
import { packing } from '../../../src/store/packing';
import type { WatchList } from '../../../src/watch';
import { databaseName, structureVersion, type WatchSchema } from '../../../src/watch/database';
import { listingKey } from '../../../src/watch/listing-key';
import { openLook } from '../../../src/watch/look';
import { bringForward } from '../../../src/watch/migrations';
import { recordVersion } from '../../../src/watch/types';
import { good, testBench } from './open-for-test';
import { sampleCase, sampleRecord } from './sample-case';

const url = 'https://attic-arcade.example/item/1';

/** Puts a record beside another of the same listing, as a list that was put together by hand may hold them. */
async function besideIt(list: WatchList, id: string, over: { id: string; note: string; removedAt: string | null }) {
  const { record } = good(await list.get(id));
  const database = await openDB<WatchSchema>(databaseName, structureVersion);
  const row = (await database.get('rows', id))!;
  await database.put('cases', { ...record, ...over });
  await database.put('rows', { ...row, id: over.id, removedAt: over.removedAt } as typeof row);
  database.close();
}

/** The file of another machine with a note on the listing, under this id. */
async function fileOf(id: string, note: string): Promise<string> {
  const list = await testBench().open();
  const made = good(await list.save(sampleCase(url), []));
  good(await list.setNote(made.id, note, ''));
  const file = JSON.parse(good(await list.exportText()));
  file.records[0].id = id;
  return JSON.stringify(file);
}

describe('a record that is taken in joins', () => {
  const cases: [string, string, string | null, string | null, string][] = [
    ['the one of its id', 'z-9', null, null, 'z-9'],
    ['the one of its id in the bin too', 'z-9', null, '2026-02-01T10:00:00.000Z', 'z-9'],
    ['of others the one outside the bin', 'other-3', '2026-02-01T10:00:00.000Z', null, 'z-9'],
    ['of two outside the bin the first', 'other-3', null, null, 'id-2'],
  ];
  it.each(cases)('%s', async (_which, id, firstRemoved, secondRemoved, joined) => {
    const file = await fileOf(id, 'theirs');
    const list = await testBench().open();
    const first = good(await list.save(sampleCase(url), []));
    expect(first.id).toBe('id-2');
    await besideIt(list, first.id, { id: 'z-9', note: '', removedAt: secondRemoved });
    await besideIt(list, first.id, { id: 'id-2', note: '', removedAt: firstRemoved });
    expect(good(await list.importText(file))).toMatchObject({ added: 0, joined: ['Ondrasse Carryall 30'] });
    const noted: string[] = [];
    for (const one of ['id-2', 'z-9']) if (good(await list.get(one)).record.note === 'theirs') noted.push(one);
    expect(noted).toEqual([joined]);
  });
});

it.each([
  [29, true],
  [30, true],
  [31, false],
])('a deleted record can be put back after %i days: %s', async (days, isThere) => {
  const bench = testBench();
  const list = await bench.open();
  const { id } = good(await list.save(sampleCase(url), []));
  good(await list.remove(id));
  const { removedAt } = good(await list.get(id)).record;
  // To the minute: each look at the clock of the bench takes one.
  bench.ports.now = () => new Date(Date.parse(removedAt!) + days * 86_400_000).toISOString();
  good(await list.emptyBin());
  expect((await list.restore(id)).ok).toBe(isThere);
});

it('a look of an older form that is not whole is damaged', () => {
  for (const version of [1, 2, 3, 4]) expect(openLook({ version })).toMatchObject({ state: 'damaged' });
});

it('a record that is not of an older form stays as it is, or says what it is', async () => {
  const record = sampleRecord();
  expect(await bringForward(record, packing)).toEqual({
    state: 'readable',
    record,
    parts: { looks: [], pictures: [] },
  });
  const newer = await bringForward({ ...record, version: recordVersion + 1 }, packing);
  expect(newer).toMatchObject({ state: 'newer' });
  expect(newer).not.toHaveProperty('parts');
  const damaged = await bringForward({ ...record, note: 7 }, packing);
  expect(damaged).toMatchObject({ state: 'damaged' });
  expect(damaged).not.toHaveProperty('parts');
});

it.each([
  ['https://attic-arcade.example', 'attic-arcade.example'],
  ['https://attic-arcade.example/', 'attic-arcade.example'],
  ['https://attic-arcade.example/a', 'attic-arcade.example/a'],
  ['https://attic-arcade.example/a/', 'attic-arcade.example/a'],
  ['https://attic-arcade.example?b=2&a=1', 'attic-arcade.example?a=1&b=2'],
])('the key of %s is %s', (address, key) => expect(listingKey(address)).toBe(key));

it('an export goes on without a picture that the browser has lost', async () => {
  const list = await testBench().open();
  const pictures = ['AAAA', 'BBBB'].map((end, at) => ({
    photoId: `p${at}`,
    lineId: null,
    picture: `data:image/webp;base64,${end}`,
  }));
  const { looks } = good(await list.save(sampleCase(url), pictures));
  const [lost] = looks[0]!.pictures;
  const database = await openDB<WatchSchema>(databaseName, structureVersion);
  await database.delete('pictures', lost!.picture);
  database.close();
  const file = JSON.parse(good(await list.exportText()));
  expect(file.pictures.map(({ picture }: { picture: string }) => picture)).toEqual(['data:image/webp;base64,BBBB']);
  expect(good(await (await testBench().open()).importText(JSON.stringify(file)))).toMatchObject({ added: 1 });
});

it('a newer record in a file keeps the others from nothing', async () => {
  const list = await testBench().open();
  good(await list.save(sampleCase(url), []));
  const file = JSON.parse(good(await list.exportText()));
  const newer = { ...file.records[0], id: 'newer-1', version: 99 };
  const imported = good(await list.importText(JSON.stringify({ ...file, records: [newer, ...file.records] })));
  expect(imported).toMatchObject({ newer: 1, same: 1, refused: [] });
});
