import { openDB } from 'idb';
import { describe, expect, it } from 'vitest';
import { buildCase, type Case, findingsOf } from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import { packing } from '../../../src/store/packing';
import { caseOf, compareFound, type SavedCase } from '../../../src/watch';
import { databaseName, structureVersion, type WatchSchema } from '../../../src/watch/database';
import { lookVersion } from '../../../src/watch/types';
import { blankListing } from '../blank-listing';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

const at = '2026-03-01T10:00:00.000Z';
const picture = (base64: string) => ({ photoId: 'p1', lineId: null, picture: `data:image/jpeg;base64,${base64}` });
const later = (day: number) => sampleCase(undefined, undefined, `2026-03-0${day}T10:00:00.000Z`);
const other = 'https://attic-arcade.example/item/8';

type Store = Awaited<ReturnType<typeof openDB<WatchSchema>>>;
async function inDatabase(work: (database: Store) => Promise<unknown>): Promise<void> {
  const database = await openDB<WatchSchema>(databaseName, structureVersion);
  await work(database);
  database.close();
}

describe('looks and pictures', () => {
  it('lie in the database once, as bytes, whoever names them', async () => {
    const bench = testBench();
    const list = await bench.open();
    await list.save(later(1), [picture('AAAA')]);
    await list.save(later(2), [picture('AAAA')]);
    await list.save(sampleCase(other), [picture('AAAA')]);
    const { looks, pictures, cases } = await bench.copy();
    expect([looks.length, pictures.length]).toEqual([3, 1]);
    expect(pictures[0]).toMatchObject({ type: 'image/jpeg', bytes: new Uint8Array([0, 0, 0]) });
    expect(JSON.stringify(cases)).not.toContain('base64');
  });

  it('end with the last record that names them, and not before', async () => {
    const bench = testBench();
    const list = await bench.open();
    const first = good(await list.save(later(1), [picture('AAAA')]));
    const second = good(await list.save(sampleCase(other), [picture('AAAA')]));
    for (const [{ id }, left] of [
      [first, 1],
      [second, 0],
    ] as const) {
      await list.remove(id);
      bench.passDays(31);
      await list.emptyBin();
      const { looks, pictures } = await bench.copy();
      expect([looks.length, pictures.length]).toEqual([left, left]);
    }
  });

  it('of too many the first and the later ones stay, and the others end', async () => {
    const bench = testBench();
    const list = await bench.open();
    for (let day = 1; day <= 24; day++) {
      await list.save(sampleCase(undefined, undefined, new Date(Date.UTC(2026, 2, day)).toISOString()), []);
    }
    const [row] = good(await list.rows());
    const { looks } = good(await list.get(row!.id));
    expect(looks).toHaveLength(21);
    expect(looks.at(-1)).toMatchObject({ readAt: '2026-03-01T00:00:00.000Z' });
    expect((await bench.copy()).looks).toHaveLength(21);
  });

  it('are kept for a record of a newer version that names them in a way of its own', async () => {
    const bench = testBench();
    const list = await bench.open();
    const { id, looks } = good(await list.save(later(1), []));
    const [name] = looks;
    const newer = { version: 10, id: 'from-tomorrow', glances: { first: name!.look } };
    const text = JSON.stringify({ ...JSON.parse(good(await list.exportText())), records: [newer] });
    await list.importText(text);
    await list.remove(id);
    bench.passDays(31);
    await list.emptyBin();
    expect((await bench.copy()).looks.map(({ hash }) => hash)).toEqual([name!.look]);
  });
});

describe('a look that cannot be read', () => {
  async function spoilt(spoil: (hash: string, packed: Uint8Array) => Promise<WatchSchema['looks']['value'] | null>) {
    const bench = testBench();
    const list = await bench.open();
    const { id } = good(await list.save(later(1), []));
    const { looks } = good(await list.save(later(2), []));
    await inDatabase(async (database) => {
      const stored = (await database.get('looks', looks[0]!.look))!;
      const put = await spoil(stored.hash, stored.packed);
      if (put) await database.put('looks', put);
      else await database.delete('looks', stored.hash);
    });
    return { bench, list, id };
  }

  it.each([
    ['cut off', async (hash: string, packed: Uint8Array) => ({ hash, packed: packed.slice(0, 40) }), 'look-spoilt'],
    ['another one', async (hash: string) => ({ hash, packed: await packing.pack('{"version":1}') }), 'look-spoilt'],
    ['missing', async () => null, 'look-missing'],
  ])('because it is %s is named as damaged; note, status and the other looks stand', async (_how, spoil, code) => {
    const { list, id } = await spoilt(spoil);
    expect(good(await list.rows())).toMatchObject([{ state: 'readable', id }]);
    const saved = good(await list.get(id));
    expect(saved.looks).toMatchObject([
      { state: 'damaged', readAt: '2026-03-02T10:00:00.000Z', problem: { code } },
      { state: 'readable', readAt: '2026-03-01T10:00:00.000Z' },
    ]);
    expect(caseOf(saved)).toBeNull();
    expect(caseOf(saved, 1)).not.toBeNull();
    expect(good(await list.setNote(id, 'still here', '')).record.note).toBe('still here');
    expect(await list.earlier('https://attic-arcade.example/item/7')).toMatchObject({ ok: false });
  });

  it('is exported as its bytes, comes back as the same bytes, and nothing else is lost by it', async () => {
    const { bench, list, id } = await spoilt(async (hash, packed) => ({ hash, packed: packed.slice(0, 40) }));
    const before = (await bench.copy()).looks;
    const text = good(await list.exportText());
    const again = testBench();
    const elsewhere = await again.open();
    expect(good(await elsewhere.importText(text))).toMatchObject({ added: 1, refused: [] });
    expect((await again.copy()).looks).toEqual(before);
    expect(good(await elsewhere.get(id)).looks.map(({ state }) => state)).toEqual(['damaged', 'readable']);
  });

  it('because a newer build wrote it is called newer, and kept byte for byte', async () => {
    const bench = testBench();
    const list = await bench.open();
    const { id, looks } = good(await list.save(later(1), []));
    const file = JSON.parse(good(await list.exportText()));
    for (const change of [{ weather: 'rain' }, { version: lookVersion + 1 }]) {
      const look = { ...file.looks[0].look, ...change };
      const hash = await packing.digest(JSON.stringify(look));
      const text = JSON.stringify({
        ...file,
        records: [{ ...file.records[0], looks: [{ ...looks[0], look: hash }] }],
        looks: [{ hash, look }],
      });
      const elsewhere = await testBench().open();
      expect(good(await elsewhere.importText(text))).toMatchObject({ added: 1, refused: [] });
      expect(good(await elsewhere.get(id)).looks).toMatchObject([
        { state: 'newer', problem: { code: 'record-newer' } },
      ]);
      expect(JSON.parse(good(await elsewhere.exportText())).looks).toEqual([{ hash, look }]);
    }
  });
});

describe('what was found then and what is found now', () => {
  const text = 'Ondrasse Carryall 30, made in 1995, code KV0915. Lined in olive twill.';
  const listing = {
    ...blankListing,
    url: 'https://attic-arcade.example/item/7',
    readAt: at,
    title: [{ value: text, origin: 'json-ld' as const, where: 'name', confidence: 0.9 }],
    text,
  };
  const ondrasse = builtInMakers.find(({ maker }) => maker === 'Ondrasse') as MakerFile;
  const judged = (makers: MakerFile[]): Case => buildCase({ listing, photos: [], corrections: [], makers, now: at });

  async function saved(now: MakerFile[], then: MakerFile[] = [ondrasse]): Promise<SavedCase> {
    const bench = testBench();
    bench.ports.makers = async () => then;
    const list = await bench.open();
    const { id } = good(await list.save(judged(then), []));
    bench.ports.makers = async () => now;
    return good(await list.get(id));
  }
  const compared = (one: SavedCase) => {
    const [look] = one.looks;
    const kase = caseOf(one);
    if (look?.state !== 'readable' || !kase) throw new Error('the look cannot be read');
    return { ...compareFound(look.look, kase), look, kase };
  };

  it('are the same by the same rules and files, and the case is the one that was saved', async () => {
    const { then, now, look, kase } = compared(await saved([ondrasse]));
    expect([then, now]).toEqual([[], []]);
    expect(kase).toEqual(judged([ondrasse]));
    expect(findingsOf(kase).length).toBeGreaterThan(3);
    expect(look.look.judged).toMatchObject({
      at,
      rules: '0.1.0',
      maker: { name: 'Ondrasse', file: await packing.digest(JSON.stringify(ondrasse)) },
    });
    expect(look.makerFile).toBe('same');
  });

  it('differ when the maker file has changed, and both sides are told', async () => {
    const without = { ...ondrasse, codeSystems: ondrasse.codeSystems.slice(0, 0), construction: [] };
    const { then, now, look } = compared(await saved([without]));
    expect(look.makerFile).toBe('changed');
    expect(then.map(({ check }) => check)).toContain('construction-against-date');
    const before = findingsOf(judged([ondrasse])).length;
    const today = findingsOf(judged([without])).length;
    expect(before - then.length).toBe(today - now.length);
  });

  it('say so when the maker file is gone', async () => {
    const { then, look } = compared(await saved([]));
    expect(look.makerFile).toBe('gone');
    expect(then.length).toBeGreaterThan(0);
  });

  it('keep no sentence: a look holds kinds and data alone', async () => {
    const { look } = compared(await saved([ondrasse]));
    expect(Object.keys(look.look)).toEqual(['version', 'listing', 'photos', 'replies', 'judged', 'sent']);
    for (const one of look.look.judged.found) expect(Object.keys(one)).toEqual(['check', 'kind', 'data']);
  });
});
