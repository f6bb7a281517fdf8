import { openDB } from 'idb';
import { describe, expect, it } from 'vitest';
import type { Case } from '../../../src/case';
import { observed } from '../../../src/photo';
import { digits, side, written } from '../../../src/photo/likeness/written';
import { packing } from '../../../src/store/packing';
import { databaseName, structureVersion, type WatchSchema } from '../../../src/watch/database';
import type { StoredPicture } from '../../../src/watch/types';
import { photoRead } from '../../photo-read';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

/** Samples of a likeness as a photo with waves of its own has them. */
const samples = (seed: number, mirrored = false): number[] =>
  Array.from({ length: side * side }, (_, at) => {
    const x = mirrored ? side - 1 - (at % side) : at % side;
    const y = Math.floor(at / side);
    const waves = Math.sin(x * (0.5 + seed / 7) + y * 0.3) + Math.sin(y * (0.4 + seed / 9) - x * 0.2 * seed);
    return Math.floor(((waves + 2) / 4) * 63.9);
  });
const likeness = (seed: number, mirrored = false): string => written(samples(seed, mirrored));
/** As former builds wrote it, a digit for each sample. */
const formerly = (seed: number): string =>
  samples(seed)
    .map((sample) => digits[sample])
    .join('');

const picture = 'data:image/webp;base64,AAAA';
function caseWith(url: string, title: string, likenesses: readonly string[]): Case {
  const kase = sampleCase(url, title);
  const ids = likenesses.map((_, at) => `p${at + 1}`);
  const link = { alternatives: [], width: null, height: null, alt: '', origins: ['visible' as const] };
  return {
    ...kase,
    listing: { ...kase.listing, photos: ids.map((id) => ({ ...link, id, url: `${url}/${id}.jpg` })) },
    photos: ids.map((id, at) => {
      const read = photoRead(id);
      return { ...read, observations: [...read.observations, observed(id, 'likeness', likenesses[at]!)] };
    }),
  };
}

const readLater = (kase: Case): Case => ({
  ...kase,
  listing: { ...kase.listing, readAt: '2026-03-02T10:00:00.000Z' },
});

const [here, there] = ['https://attic-arcade.example/item/1', 'https://attic-arcade.example/item/2'];

describe('a photo of a kept case', () => {
  it('is found in another case, by number and with the pictures that were kept, mirrored or not', async () => {
    const list = await testBench().open();
    const own = caseWith(here, 'Carryall', [likeness(1), likeness(2)]);
    const { id } = good(await list.save(own, [{ photoId: 'p1', lineId: null, picture }]));
    const other = good(await list.save(caseWith(there, 'Carryall anew', [likeness(3), likeness(1, true)]), []));
    expect(good(await list.samePhotos(id))).toEqual([
      {
        id: other.id,
        title: 'Carryall anew',
        own: { photo: 1, picture, readAt: '2026-03-01T10:00:00.000Z' },
        earlier: false,
        other: { photo: 2, picture: null, readAt: '2026-03-01T10:00:00.000Z' },
        mirrored: true,
        cut: false,
      },
    ]);
    expect(good(await list.samePhotos(other.id))).toMatchObject([
      { id, own: { photo: 2 }, other: { photo: 1, picture } },
    ]);
  });

  it('is found by what a former build wrote down too', async () => {
    const list = await testBench().open();
    const { id } = good(await list.save(caseWith(here, 'Carryall', [formerly(1)]), []));
    good(await list.save(caseWith(there, 'Other', [likeness(4), likeness(1)]), []));
    expect(good(await list.samePhotos(id))).toMatchObject([{ title: 'Other', other: { photo: 2 } }]);
  });

  it('is found in an earlier look of another case too, and once in each', async () => {
    const list = await testBench().open();
    const { id } = good(await list.save(caseWith(here, 'Carryall', [likeness(1)]), []));
    good(await list.save(caseWith(there, 'Other', [likeness(1)]), []));
    const later = caseWith(there, 'Other', [likeness(4)]);
    good(await list.save(readLater(later), []));
    expect(good(await list.samePhotos(id))).toMatchObject([
      { title: 'Other', own: { photo: 1 }, other: { readAt: '2026-03-01T10:00:00.000Z' } },
    ]);
  });

  it('is told once of another case that had it at several looks', async () => {
    const list = await testBench().open();
    const { id } = good(await list.save(caseWith(here, 'Carryall', [likeness(1)]), []));
    good(await list.save(caseWith(there, 'Other', [likeness(1), likeness(4)]), []));
    good(await list.save(readLater(caseWith(there, 'Other', [likeness(6), likeness(1)])), []));
    expect(good(await list.samePhotos(id))).toMatchObject([{ own: { photo: 1 }, other: { photo: 2 } }]);
  });

  it('is found in no case that was deleted, in its own, or where it was read before likenesses were kept', async () => {
    const list = await testBench().open();
    const { id } = good(await list.save(caseWith(here, 'Carryall', [likeness(1), likeness(1)]), []));
    const gone = good(await list.save(caseWith(there, 'Gone', [likeness(1)]), []));
    good(await list.remove(gone.id));
    good(await list.save(caseWith(`${there}7`, 'Before', ['not of this form']), []));
    expect(good(await list.samePhotos(id))).toEqual([]);
  });

  it('is found where only an earlier look of its own has it, and says so; once where several have it', async () => {
    const list = await testBench().open();
    const { id } = good(await list.save(caseWith(here, 'Carryall', [likeness(1), likeness(2)]), []));
    good(await list.save(readLater(caseWith(here, 'Carryall', [likeness(5), likeness(2)])), []));
    good(await list.save(caseWith(there, 'Other', [likeness(2), likeness(1)]), []));
    expect(good(await list.samePhotos(id))).toMatchObject([
      { earlier: false, own: { photo: 2, readAt: '2026-03-02T10:00:00.000Z' }, other: { photo: 1 } },
      { earlier: true, own: { photo: 1, readAt: '2026-03-01T10:00:00.000Z' }, other: { photo: 2 } },
    ]);
  });
});

describe('a photo that was kept before likenesses were', () => {
  /** What each picture is known again by, as if it were decoded; counts how many were asked for. */
  function decoder(of: Readonly<Record<string, string | null>>) {
    const asked: string[] = [];
    const likenessOf = async ({ bytes }: StoredPicture): Promise<string | null> => {
      const name = packing.toBase64(bytes);
      asked.push(name);
      return of[name] ?? null;
    };
    return { asked, likenessOf };
  }
  const kept = (photoId: string, base64: string) => ({
    photoId,
    lineId: null,
    picture: `data:image/webp;base64,${base64}`,
  });

  it('is found by the picture that was kept of it, which is looked at once; its look stays as it is', async () => {
    const bench = testBench();
    const list = await bench.open();
    const { id } = good(await list.save(caseWith(here, 'Carryall', [likeness(1)]), []));
    const before = caseWith(there, 'Before', ['', '', '']);
    const pictures = [kept('p1', 'AAAA'), kept('p2', 'BBBB')];
    const old = good(await list.save(before, pictures));
    expect(good(await list.samePhotos(id))).toEqual([]);
    const looks = (await bench.copy()).looks;
    const { asked, likenessOf } = decoder({ BBBB: likeness(1) });
    expect(good(await list.workOutLikenesses(likenessOf))).toBe(1);
    expect(asked).toEqual(['AAAA', 'BBBB']);
    expect(good(await list.samePhotos(id))).toMatchObject([{ id: old.id, other: { photo: 2 } }]);
    expect(good(await list.samePhotos(old.id))).toMatchObject([{ id, own: { photo: 2 } }]);
    expect((await bench.copy()).looks).toEqual(looks);
    expect(good(await (await bench.restart()).workOutLikenesses(likenessOf))).toBe(0);
    expect(asked).toHaveLength(2);
  });

  it('is looked at where a look comes in by a file, and once more where its picture comes later', async () => {
    const list = await testBench().open();
    good(await list.save(caseWith(there, 'Before', ['']), [kept('p1', 'BBBB')]));
    const file = JSON.parse(good(await list.exportText()));
    const other = await testBench().open();
    const { asked, likenessOf } = decoder({ BBBB: likeness(1) });
    good(await other.importText(JSON.stringify({ ...file, pictures: [] })));
    expect(good(await other.workOutLikenesses(likenessOf))).toBe(0);
    expect(good(await other.importText(JSON.stringify(file)))).toMatchObject({ same: 1, filled: 1 });
    expect(good(await other.workOutLikenesses(likenessOf))).toBe(1);
    expect(asked).toEqual(['BBBB']);
  });

  it('leaves nothing behind when its case ends', async () => {
    const bench = testBench();
    const list = await bench.open();
    const { id } = good(await list.save(caseWith(there, 'Before', ['']), [kept('p1', 'BBBB')]));
    good(await list.workOutLikenesses(decoder({ BBBB: likeness(1) }).likenessOf));
    good(await list.remove(id));
    bench.passDays(31);
    good(await list.emptyBin());
    const database = await openDB<WatchSchema>(databaseName, structureVersion);
    expect(await database.count('likenesses')).toBe(0);
    database.close();
  });
});
