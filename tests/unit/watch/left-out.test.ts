import { describe, expect, it } from 'vitest';
import { packing } from '../../../src/store/packing';
import { carryParts, countLeftOut, type ReadParts } from '../../../src/watch/transfer-parts';
import type { StoredPicture } from '../../../src/watch/types';
import { strings } from '../../../src/words';
import { good, testBench } from './open-for-test';
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

describe('an export that has no room for all photos that are kept whole', () => {
  const pictures = [...whole(900_000, 600_000, 300_000), small];
  const room = 1_700_000;

  it('carries as many as fit, each small picture, and says how many it leaves out, before and in the file', async () => {
    expect(await countLeftOut(holding(pictures), packing, room)).toBe(1);
    const { pictures: carried, leftOut } = await carryParts(holding(pictures), packing, room);
    expect(leftOut).toBe(1);
    // The first has 1.2 million characters and leaves no room for the second; the third fits again.
    expect(carried.map(({ hash }) => hash[0])).toEqual(['0', '2', 'a']);
  });

  it('leaves none out where all fit', async () => {
    expect(await countLeftOut(holding(pictures), packing)).toBe(0);
    expect((await carryParts(holding(pictures), packing)).pictures).toHaveLength(4);
  });

  it('is told of when it is brought in elsewhere, and files without the line leave out none', async () => {
    const list = await testBench().open();
    good(await list.save(sampleCase(), []));
    expect(good(await list.exportLeavesOut())).toBe(0);
    const file = JSON.parse(good(await list.exportText()));
    expect(file.leftOut).toBe(0);
    const other = await testBench().open();
    const imported = good(await other.importText(JSON.stringify({ ...file, leftOut: 3 })));
    expect(imported).toMatchObject({ added: 1, leftOut: 3 });
    expect(strings.watch.imported(imported).at(-1)).toBe(
      'The file had no room for 3 photos in full: of them the small picture came along.',
    );
    const { leftOut: _, ...former } = file;
    expect(good(await other.importText(JSON.stringify(former)))).toMatchObject({ same: 1, leftOut: 0 });
  });
});
