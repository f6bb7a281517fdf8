import { openDB } from 'idb';
import { describe, expect, it } from 'vitest';
import type { SentPhoto } from '../../../src/case';
import { packing } from '../../../src/store/packing';
import type { BroughtPhoto, WatchList } from '../../../src/watch';
import { databaseName, structureVersion, type WatchSchema } from '../../../src/watch/database';
import { writeExport } from '../../../src/watch/transfer';
import { type ReadParts, sharePictures } from '../../../src/watch/transfer-parts';
import type { StoredPicture } from '../../../src/watch/types';
import { strings } from '../../../src/words';
import { photoRead } from '../../photo-read';
import { good, recordsOf, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

/** Photos that are kept whole, each of so many bytes: too large for the small pictures of a look. */
const whole = (...sizes: number[]): StoredPicture[] =>
  sizes.map((size, at) => ({
    hash: String(at).repeat(64),
    type: 'image/jpeg',
    bytes: new Uint8Array(size).fill(at + 1),
  }));
const small: StoredPicture = { hash: 'a'.repeat(64), type: 'image/webp', bytes: new Uint8Array(30) };

const holding = (pictures: StoredPicture[]): ReadParts =>
  ({
    getAllKeys: async (store: string) => (store === 'pictures' ? pictures.map(({ hash }) => hash) : []),
    get: async (_: string, hash: string) => pictures.find((one) => one.hash === hash),
  }) as unknown as ReadParts;
const names = (files: string[][]): string[] => files.map((file) => file.map(([first]) => first).join(''));

describe('the photos of an export that are kept whole', () => {
  it.each([
    ['all in one file where they fit', 200_000_000, ['012']],
    // Of 1.2, 0.8 and 0.4 million characters: the first leaves no room for the second, and the third fits again.
    ['each in the first file that has room', 1_700_000, ['02', '1']],
    ['one that is larger than a file in one of its own', 500_000, ['2', '0', '1']],
  ])('stand %s', async (_how, room, files) => {
    const shared = await sharePictures(holding([...whole(900_000, 600_000, 300_000), small]), room);
    expect([names(shared.whole), names([shared.small])]).toEqual([files, ['a']]);
  });
});

it.each([
  // The longest data address of a small picture has 400,000 characters, of which three bytes take four.
  [299_982, true],
  [299_983, false],
  [0, false],
])('a picture of %i bytes is a small one: %s', async (bytes, isSmall) => {
  const one: StoredPicture = { ...small, bytes: new Uint8Array(bytes) };
  expect((await sharePictures(holding([one]))).small).toEqual(isSmall ? [one.hash] : []);
});

const chat: SentPhoto = { id: `sent-${'a'.repeat(32)}`, from: 'seller-chat', on: '2026-02-27' };
const picture = 'data:image/webp;base64,AAAA';
const sent = (fill: number): BroughtPhoto => ({
  photo: chat,
  read: photoRead(chat.id, { hash: 'f0e1d2c3b4a59687' }),
  pictures: [{ photoId: chat.id, lineId: null, picture }],
  file: { type: 'image/jpeg', bytes: new Uint8Array(600_000).fill(fill) },
});

/** Three cases with a photo kept whole each, exported into files that hold one each. */
async function exported() {
  const list = await testBench().open();
  for (const fill of [1, 2, 3]) {
    const { id } = good(await list.save(sampleCase(`https://attic-arcade.example/item/${fill}`, `Bag ${fill}`), []));
    good(await list.addSent(id, [sent(fill)]));
  }
  const database = await openDB<WatchSchema>(databaseName, structureVersion);
  const now = '2026-03-05T10:00:00.000Z';
  const files: string[] = [];
  for (const file of [0, 1, 2]) files.push(await writeExport(database, packing, { file, now, mostWhole: 1_000_000 }));
  database.close();
  return { list, files: files as [string, string, string], records: await recordsOf(list) };
}

/** Which of its photos a list has whole, by what each is filled with. */
async function wholeIn(list: WatchList): Promise<number[]> {
  const found: number[] = [];
  for (const { id } of good(await list.rows())) {
    const [look] = good(await list.get(id)).looks;
    for (const { file } of look?.state === 'readable' ? look.files : [])
      found.push(...(good(await list.file(file))?.bytes.slice(0, 1) ?? []));
  }
  return found.sort();
}

describe('an export of several files', () => {
  it.each([
    ['in their order', [0, 1, 2]],
    ['the last first', [2, 1, 0]],
    ['one of them twice', [1, 0, 1, 2]],
  ] as const)('brings back everything, taken in %s', async (_how, order) => {
    const { files, records } = await exported();
    const other = await testBench().open();
    for (const at of order) good(await other.importText(files[at]!));
    expect(await wholeIn(other)).toEqual([1, 2, 3]);
    expect((await recordsOf(other)).map(({ title }) => title).sort()).toEqual(records.map(({ title }) => title).sort());
    for (const { id } of good(await other.rows()))
      expect(good(await other.get(id)).looks[0]).toMatchObject({ pictures: [{ photoId: chat.id, picture }] });
  });

  it('has all records and small pictures in the first file, and says there what is not in it', async () => {
    const { files } = await exported();
    const other = await testBench().open();
    const imported = good(await other.importText(files[0]));
    expect(imported).toMatchObject({ added: 3, leftOut: 2, file: { number: 1, of: 3 }, filled: 0 });
    expect(strings.watch.imported(imported).slice(1)).toEqual([
      'This was file 1 of 3 of one export: import the others too.',
      'The file had no room for 2 photos in full: of them the small picture came along.',
    ]);
    expect(await wholeIn(other)).toHaveLength(1);
  });

  it('fills what a case that is otherwise the same as here is without, and says so', async () => {
    const { files } = await exported();
    const other = await testBench().open();
    good(await other.importText(files[0]));
    const imported = good(await other.importText(files[1]));
    expect(imported).toMatchObject({ added: 0, same: 1, filled: 1, leftOut: 0 });
    expect(strings.watch.imported(imported)).toContain('1 picture that cases here were without came along.');
    expect(good(await other.importText(files[1]))).toMatchObject({ same: 1, filled: 0 });
  });

  it('fills a case in the bin too, which may come back', async () => {
    const { files } = await exported();
    const bench = testBench();
    const other = await bench.open();
    good(await other.importText(files[0]));
    bench.passDays(1);
    for (const { id } of good(await other.rows())) good(await other.remove(id));
    for (const file of files.slice(1)) expect(good(await other.importText(file))).toMatchObject({ stayDeleted: 1 });
    for (const { id } of good(await other.rows())) good(await other.restore(id));
    expect(await wholeIn(other)).toEqual([1, 2, 3]);
  });

  it('is one file where all photos fit, and former files say nothing of others', async () => {
    const { list } = await exported();
    expect(good(await list.exportFiles())).toEqual({ files: 1, photos: 0 });
    const file = JSON.parse(good(await list.exportText()));
    expect([file.leftOut, file.file, file.pictures.length]).toEqual([0, undefined, 4]);
    const { leftOut: _, ...former } = file;
    const other = await testBench().open();
    expect(good(await other.importText(JSON.stringify(former)))).toMatchObject({ added: 3, leftOut: 0, file: null });
  });
});
