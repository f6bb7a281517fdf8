import { expect, it } from 'vitest';
import { openWatchList } from '../../../src/watch';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

const url = 'https://attic-arcade.example/item/7';
const bin = async (list: Awaited<ReturnType<ReturnType<typeof testBench>['open']>>, id: string) =>
  good(await list.remove(id));

it('finds of a listing’s records the one that was changed last, and takes one out of the bin where no other is', async () => {
  const bench = testBench();
  const list = await bench.open();
  const saved = good(await list.save(sampleCase(url), []));
  const text = JSON.parse(good(await list.exportText()));
  expect(good(await list.findByUrl(url))?.id).toBe(saved.id);
  await bin(list, saved.id);
  expect(good(await list.findByUrl(url))).toBeNull();
  // The same listing three times, as an older build could leave it: two outside the bin, one within.
  const [record] = text.records;
  const copy = await bench.copy();
  const at = (day: number) => `2026-03-0${day}T10:00:00.000Z`;
  const cases = [
    { ...record, id: 'older', changedAt: at(2) },
    { ...record, id: 'latest', changedAt: at(5) },
    { ...record, id: 'middle', changedAt: at(3) },
    { ...record, id: 'binned', changedAt: at(8), removedAt: at(8) },
  ];
  await bench.putBack({ ...copy, cases, rows: [] });
  const again = await bench.open();
  expect(good(await again.rows()).map(({ id }) => id)).toEqual(['binned', 'latest', 'middle', 'older']);
  expect(good(await again.findByUrl(`${url}?utm_source=x`))?.id).toBe('latest');
  expect(good(await again.save(sampleCase(url, 'T', '2026-03-09T10:00:00.000Z'), [])).id).toBe('latest');
  for (const id of ['latest', 'middle', 'older']) await bin(again, id);
  expect(good(await again.findByUrl(url))).toBeNull();
  expect(good(await again.save(sampleCase(url, 'T', '2026-03-10T10:00:00.000Z'), [])).id).toBe('binned');
});

it('tells of a record that was joined with another one which row is new, which is gone, and how many are left', async () => {
  const bench = testBench();
  const list = await bench.open();
  await list.save(sampleCase(url), []);
  await list.save(sampleCase('https://attic-arcade.example/item/8'), []);
  const copy = await bench.copy();
  const [first, other] = copy.cases;
  const binned = { ...first, id: 'binned', removedAt: '2026-03-01T12:00:00.000Z', note: 'theirs' };
  await bench.putBack({ ...copy, cases: [first, other, binned] as typeof copy.cases, rows: [] });
  const told: unknown[] = [];
  const again = good(await openWatchList(bench.ports, ({ rows, gone }) => told.push([rows.map(({ id }) => id), gone])));
  const generation = bench.generation();
  good(await again.restore('binned'));
  expect(told).toEqual([[[first?.id], ['binned']]]);
  expect(bench.mark()).toMatchObject({ records: 2, generation: generation + 1, loss: null });
  expect(good(await again.get(first?.id ?? '')).record.note).toBe('theirs');
  good(await again.setNote(first?.id ?? '', 'theirs', 'theirs'));
  expect(told[1]).toEqual([[], []]);
  expect(bench.generation()).toBe(generation + 1);
  again.close();
});

it('changes nothing of a listing whose record cannot be read', async () => {
  const bench = testBench();
  const list = await bench.open();
  const { id } = good(await list.save(sampleCase(url), []));
  const copy = await bench.copy();
  await bench.putBack({ ...copy, cases: copy.cases.map((one) => ({ ...one, note: 7 })) });
  const again = await bench.open();
  const damaged = { ok: false, problem: { code: 'record-damaged', data: { place: 'note' } } };
  expect(await again.save(sampleCase(url, 'T', '2026-03-09T10:00:00.000Z'), [])).toMatchObject(damaged);
  expect(await again.earlier(url)).toMatchObject(damaged);
  expect(await again.findByUrl(url)).toMatchObject(damaged);
  expect(await again.restore(id)).toMatchObject(damaged);
  expect(await again.setNote(id, 'a', '')).toMatchObject(damaged);
  expect((await bench.copy()).cases).toEqual(copy.cases.map((one) => ({ ...one, note: 7 })));
});
