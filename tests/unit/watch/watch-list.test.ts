import { describe, expect, it } from 'vitest';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

const picture = { photoId: 'p1', lineId: null, picture: 'data:image/jpeg;base64,AAAA' };

describe('the watch list', () => {
  it('keeps a saved case over a restart of the browser', async () => {
    const bench = testBench();
    const first = await bench.open();
    const saved = good(await first.save(sampleCase(), [picture]));
    const second = await bench.restart();
    expect(good(await second.rows())).toEqual([{ state: 'readable', record: saved }]);
    expect(saved).toMatchObject({ id: 'case-1', status: 'watching', note: '', title: 'Ondrasse Carryall 30' });
  });

  it('finds the saved case of a listing again, whatever tracks the visitor', async () => {
    const list = await testBench().open();
    const saved = good(await list.save(sampleCase('https://attic-arcade.example/item?id=7'), []));
    const found = await list.findByUrl('https://attic-arcade.example/item?utm_source=mail&id=7');
    expect(good(found)).toEqual(saved);
    expect(good(await list.findByUrl('https://attic-arcade.example/item?id=8'))).toBeNull();
  });

  it('renews the case of a listing that is saved again and keeps its note, status and id', async () => {
    const list = await testBench().open();
    const { id, savedAt } = good(await list.save(sampleCase(), []));
    await list.setNote(id, 'asked about the lining');
    await list.setStatus(id, 'asked');
    const again = good(await list.save(sampleCase(undefined, 'Ondrasse Carryall 30, now cheaper'), [picture]));
    expect(again).toMatchObject({ id, savedAt, note: 'asked about the lining', status: 'asked', pictures: [picture] });
    expect(good(await list.rows())).toHaveLength(1);
  });

  it('keeps two pieces of a single-page shop apart', async () => {
    const list = await testBench().open();
    await list.save(sampleCase('https://attic-arcade.example/app.html#carryall-30'), []);
    await list.save(sampleCase('https://attic-arcade.example/app.html#carryall-25'), []);
    expect(good(await list.rows())).toHaveLength(2);
  });

  it('puts a deleted case back as it was', async () => {
    const list = await testBench().open();
    const saved = good(await list.save(sampleCase(), [picture]));
    await list.remove(saved.id);
    expect(good(await list.findByUrl(saved.case.listing.url))).toBeNull();
    const restored = good(await list.restore(saved.id));
    expect(restored).toEqual({ ...saved, changedAt: restored.changedAt });
  });

  it('empties its bin after 30 days and not before', async () => {
    const bench = testBench();
    const list = await bench.open();
    const { id } = good(await list.save(sampleCase(), []));
    await list.remove(id);
    bench.passDays(29);
    await list.emptyBin();
    expect(good(await list.rows())).toHaveLength(1);
    bench.passDays(2);
    await list.emptyBin();
    expect(good(await list.rows())).toEqual([]);
  });

  it('refuses a note that is too long and changes nothing', async () => {
    const bench = testBench();
    const list = await bench.open();
    const saved = good(await list.save(sampleCase(), []));
    const before = bench.generation();
    const refused = await list.setNote(saved.id, 'x'.repeat(20_001));
    expect(refused).toMatchObject({ ok: false, problem: { code: 'record-refused', where: 'note' } });
    expect(good(await list.rows())).toEqual([{ state: 'readable', record: saved }]);
    expect(bench.generation()).toBe(before);
  });

  it('counts each change outside the database and so notices that the browser wiped it', async () => {
    const bench = testBench();
    const list = await bench.open();
    expect(good(await list.isWiped())).toBe(false);
    const { id } = good(await list.save(sampleCase(), []));
    await list.setNote(id, 'one');
    expect(bench.generation()).toBe(2);
    bench.wipe();
    const after = await bench.open();
    expect(good(await after.isWiped())).toBe(true);
    await after.acceptWipe();
    expect(good(await after.isWiped())).toBe(false);
  });

  it('answers with a problem, not a failure, when the record is gone', async () => {
    const list = await testBench().open();
    expect(await list.setNote('nothing', 'x')).toMatchObject({ ok: false, problem: { code: 'record-damaged' } });
  });
});
