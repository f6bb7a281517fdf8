import { describe, expect, it, vi } from 'vitest';
import { correct, typedCode } from '../../../src/case';
import { openWatchList, type WatchList } from '../../../src/watch';
import { good, recordsOf, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

const picture = { photoId: 'p1', lineId: null, picture: 'data:image/jpeg;base64,AAAA' };
const item = (number: number) => `https://attic-arcade.example/item/${number}`;

describe('the watch list', () => {
  it('keeps a saved case over a restart of the browser', async () => {
    const bench = testBench();
    const first = await bench.open();
    const saved = good(await first.save(sampleCase(), [picture]));
    const second = await bench.restart();
    expect(await recordsOf(second)).toEqual([saved]);
    expect(saved).toMatchObject({ status: 'watching', note: '', title: 'Ondrasse Carryall 30' });
    expect(good(await second.get(saved.id)).looks).toMatchObject([
      { state: 'readable', look: { listing: sampleCase().listing, photos: [] }, pictures: [picture] },
    ]);
  });

  it('shows of each record a row that holds no case', async () => {
    const list = await testBench().open();
    const saved = good(await list.save(sampleCase(), [picture]));
    const { id, savedAt, changedAt } = saved;
    expect(good(await list.rows())).toEqual([
      {
        state: 'readable',
        id,
        key: 'attic-arcade.example/item/7',
        title: 'Ondrasse Carryall 30',
        address: 'https://attic-arcade.example/item/7',
        price: null,
        face: saved.shown.face,
        head: {
          against: [],
          open: [],
          aside: false,
          notLookedAt: { photos: [], failed: [], withoutFile: '', reasons: [] },
        },
        status: 'watching',
        hasNote: false,
        otherNotes: 0,
        dated: null,
        savedAt,
        changedAt,
        removedAt: null,
        uses: [saved.shown.face, saved.looks[0]?.look],
      },
    ]);
    expect(good(await list.face(id))).toBe(picture.picture);
  });

  it('finds the saved case of a listing again, whatever tracks the visitor', async () => {
    const list = await testBench().open();
    const saved = good(await list.save(sampleCase('https://attic-arcade.example/item?id=7'), []));
    const found = await list.findByUrl('https://attic-arcade.example/item?utm_source=mail&id=7');
    expect(good(found)).toEqual(saved);
    expect(good(await list.findByUrl('https://attic-arcade.example/item?id=8'))).toBeNull();
  });

  it('adds a look to the case of a listing that is saved again and keeps its note, status and id', async () => {
    const list = await testBench().open();
    const { id, savedAt } = good(await list.save(sampleCase(), []));
    await list.setNote(id, 'asked about the lining', '');
    await list.setStatus(id, 'asked');
    const cheaper = sampleCase(undefined, 'Ondrasse Carryall 30, now cheaper', '2026-03-05T10:00:00.000Z');
    const again = good(await list.save(cheaper, [picture]));
    expect(again).toMatchObject({ id, savedAt, note: 'asked about the lining', status: 'asked' });
    expect(again.title).toBe('Ondrasse Carryall 30, now cheaper');
    expect(good(await list.get(id)).looks).toMatchObject([
      { look: { listing: cheaper.listing }, pictures: [picture] },
      { look: { listing: sampleCase().listing }, pictures: [] },
    ]);
    expect(await recordsOf(list)).toHaveLength(1);
  });

  it('takes a look that is saved twice for one', async () => {
    const bench = testBench();
    const list = await bench.open();
    await list.save(sampleCase(), []);
    const typed = {
      ...sampleCase(),
      judgedAt: '2026-03-01T10:04:00.000Z',
      corrections: correct([], typedCode('KV0915')),
    };
    const again = good(await list.save(typed, []));
    expect(again.looks).toMatchObject([{ corrections: typed.corrections, judgedAt: typed.judgedAt }]);
    expect((await bench.copy()).looks).toHaveLength(1);
  });

  it('keeps two pieces of a single-page shop apart', async () => {
    const list = await testBench().open();
    await list.save(sampleCase('https://attic-arcade.example/app.html#carryall-30'), []);
    await list.save(sampleCase('https://attic-arcade.example/app.html#carryall-25'), []);
    expect(await recordsOf(list)).toHaveLength(2);
  });

  it('answers with a problem, not a failure, when the record is gone', async () => {
    const list = await testBench().open();
    expect(await list.setNote('nothing', 'x', '')).toMatchObject({ ok: false, problem: { code: 'record-missing' } });
  });

  it('refuses a note that is too long and changes nothing', async () => {
    const bench = testBench();
    const list = await bench.open();
    const saved = good(await list.save(sampleCase(), []));
    const before = bench.generation();
    const refused = await list.setNote(saved.id, 'x'.repeat(20_001), '');
    expect(refused).toMatchObject({ ok: false, problem: { code: 'record-refused', where: 'note' } });
    expect(await recordsOf(list)).toEqual([saved]);
    expect(bench.generation()).toBe(before);
  });
});

describe('a deleted case', () => {
  it('comes back as it was', async () => {
    const list = await testBench().open();
    const saved = good(await list.save(sampleCase(), [picture]));
    await list.remove(saved.id);
    expect(good(await list.findByUrl(saved.shown.address))).toBeNull();
    const restored = good(await list.restore(saved.id));
    expect(restored).toEqual({ ...saved, changedAt: restored.changedAt });
  });

  it('is one case with the listing that is saved again, before and after its undo', async () => {
    const list = await testBench().open();
    const { id } = good(await list.save(sampleCase(), []));
    await list.setNote(id, 'asked for the lining', '');
    await list.remove(id);
    await list.save(sampleCase(undefined, undefined, '2026-03-05T10:00:00.000Z'), []);
    expect(await recordsOf(list)).toHaveLength(1);
    await list.restore(id);
    expect(await recordsOf(list)).toMatchObject([
      {
        id,
        removedAt: null,
        note: 'asked for the lining',
        looks: [{ readAt: '2026-03-05T10:00:00.000Z' }, { readAt: '2026-03-01T10:00:00.000Z' }],
      },
    ]);
  });

  it('joins the case of the same listing that came from elsewhere meanwhile', async () => {
    const bench = testBench();
    const list = await bench.open();
    const first = good(await list.save(sampleCase(), []));
    await list.setNote(first.id, 'of the deleted one', '');
    await list.remove(first.id);
    // As an older build left it: two records of one listing.
    const copy = await bench.copy();
    await bench.putBack({
      ...copy,
      rows: [],
      cases: [...copy.cases, { ...first, id: 'second', note: 'of the other' }],
    });
    const again = await bench.open();
    await again.restore(first.id);
    expect(await recordsOf(again)).toMatchObject([
      { id: 'second', note: 'of the other', otherNotes: [{ from: 'bin', note: 'of the deleted one' }] },
    ]);
  });

  it('leaves the bin after 30 days and not before', async () => {
    const bench = testBench();
    const list = await bench.open();
    const { id } = good(await list.save(sampleCase(), []));
    await list.remove(id);
    bench.passDays(29);
    await list.emptyBin();
    expect(good(await list.rows())).toHaveLength(1);
    const before = bench.generation();
    bench.passDays(2);
    await list.emptyBin();
    expect(good(await list.rows())).toEqual([]);
    expect(bench.generation()).toBe(before + 1);
    await list.emptyBin();
    expect(bench.generation()).toBe(before + 1);
  });
});

describe('a note that two windows edit', () => {
  it('keeps both texts and says so', async () => {
    const bench = testBench();
    const list = await bench.open();
    const { id } = good(await list.save(sampleCase(), []));
    await list.setNote(id, 'as both windows saw it', '');
    const first = good(await list.setNote(id, 'text of the first window', 'as both windows saw it'));
    expect(first.bothNotes).toBe(false);
    const second = good(await list.setNote(id, 'text of the second window', 'as both windows saw it'));
    expect(second.bothNotes).toBe(true);
    expect(good(await list.get(id)).record).toMatchObject({
      note: 'text of the second window',
      otherNotes: [{ from: 'window', note: 'text of the first window', status: null }],
    });
  });

  it('joins or drops the other text as the buyer says', async () => {
    const list = await testBench().open();
    const { id } = good(await list.save(sampleCase(), []));
    await list.setNote(id, 'one', '');
    await list.setNote(id, 'two', '');
    const other = good(await list.get(id)).record.otherNotes[0]!;
    expect(good(await list.settleOtherNote(id, other, true))).toMatchObject({ note: 'two\n\none', otherNotes: [] });
    await list.setNote(id, 'three', '');
    const next = good(await list.get(id)).record.otherNotes[0]!;
    expect(good(await list.settleOtherNote(id, next, false))).toMatchObject({ note: 'three', otherNotes: [] });
  });
});

describe('one change', () => {
  /** Records that were read out of the store of cases while `work` ran; walking over them all counts each. */
  async function recordsRead(work: () => Promise<unknown>): Promise<number> {
    let read = 0;
    const counted = (given: { name: string }, times: number) => {
      if (given.name === 'cases') read += times;
    };
    const { get, getAll, openCursor } = IDBObjectStore.prototype;
    const spies = [
      vi.spyOn(IDBObjectStore.prototype, 'get').mockImplementation(function (this: IDBObjectStore, query) {
        counted(this, 1);
        return get.call(this, query);
      }),
      vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementation(function (this: IDBObjectStore, ...query) {
        counted(this, Number.POSITIVE_INFINITY);
        return getAll.apply(this, query);
      }),
      vi.spyOn(IDBObjectStore.prototype, 'openCursor').mockImplementation(function (this: IDBObjectStore, ...query) {
        counted(this, Number.POSITIVE_INFINITY);
        return openCursor.apply(this, query);
      }),
    ];
    await work();
    for (const spy of spies) spy.mockRestore();
    return read;
  }

  async function filled(): Promise<{ list: WatchList; bench: ReturnType<typeof testBench> }> {
    const bench = testBench();
    const list = await bench.open();
    for (let number = 1; number <= 12; number++) await list.save(sampleCase(item(number)), []);
    return { list, bench };
  }

  it('reads one record, however many there are', async () => {
    const { list } = await filled();
    const { id } = good(await list.rows())[5]!;
    expect(await recordsRead(() => list.setNote(id, 'x', ''))).toBe(1);
    expect(await recordsRead(() => list.setStatus(id, 'asked'))).toBe(1);
    expect(await recordsRead(() => list.remove(id))).toBe(1);
    expect(await recordsRead(() => list.restore(id))).toBe(1);
    expect(await recordsRead(() => list.findByUrl(item(3)))).toBe(1);
    expect(await recordsRead(() => list.save(sampleCase(item(99)), []))).toBe(0);
    expect(await recordsRead(() => list.rows())).toBe(0);
    expect(await recordsRead(() => list.emptyBin())).toBe(0);
  });

  it('reads no record when the list is opened', async () => {
    const { bench } = await filled();
    expect(await recordsRead(() => bench.restart())).toBe(0);
  });

  it('tells which rows it changed', async () => {
    const { bench } = await filled();
    const changes: unknown[] = [];
    const list = good(await openWatchList(bench.ports, (change) => changes.push(change)));
    const { id } = good(await list.rows())[5]!;
    await list.setStatus(id, 'asked');
    expect(changes).toEqual([{ rows: [expect.objectContaining({ id, status: 'asked' })], gone: [] }]);
    list.close();
  });
});
