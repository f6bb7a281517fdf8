import { describe, expect, it } from 'vitest';
import type { WatchList } from '../../../src/watch';
import { good, recordsOf, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

const item = (number: number) => `https://attic-arcade.example/item/${number}`;

async function saveItems(list: WatchList, first: number, last: number): Promise<void> {
  for (let number = first; number <= last; number++) good(await list.save(sampleCase(item(number)), []));
}

describe('a lost list', () => {
  it('is said, also after the next save, until the user takes note of it', async () => {
    const bench = testBench();
    const list = await bench.open();
    expect(list.loss()).toBeNull();
    await saveItems(list, 1, 5);
    bench.wipe();
    // The panel opens the list for one save and closes it again.
    const panel = await bench.open();
    await saveItems(panel, 9, 9);
    const after = await bench.restart();
    expect(await recordsOf(after)).toHaveLength(1);
    expect(after.loss()).toMatchObject({ kind: 'gone', before: 5 });
    await saveItems(after, 10, 30);
    expect((await bench.restart()).loss()).toMatchObject({ kind: 'gone', before: 5 });

    const known = await bench.restart();
    good(await known.takeNoteOfLoss());
    expect(known.loss()).toBeNull();
    await saveItems(known, 40, 40);
    expect((await bench.restart()).loss()).toBeNull();
  });

  it('is noticed when an older copy stands in its place, however often it is changed afterwards', async () => {
    const bench = testBench();
    await saveItems(await bench.open(), 1, 2);
    const copy = await bench.copy();
    await saveItems(await bench.restart(), 3, 4);
    await bench.putBack(copy);
    const panel = await bench.open();
    await saveItems(panel, 5, 9);
    expect((await bench.restart()).loss()).toMatchObject({ kind: 'older', before: 4 });
  });

  it('is noticed when records are missing and nothing else is', async () => {
    const bench = testBench();
    await saveItems(await bench.open(), 1, 3);
    const copy = await bench.copy();
    await bench.putBack({ ...copy, cases: copy.cases.slice(1) });
    expect((await bench.open()).loss()).toMatchObject({ kind: 'older', before: 3 });
  });

  it('is noticed by the counter of a former build', async () => {
    const bench = testBench();
    bench.storeMark(7);
    expect((await bench.open()).loss()).toMatchObject({ kind: 'gone', before: null });
  });

  it('keeps the bin as it is, for what is in it may be all that is left', async () => {
    const bench = testBench();
    const list = await bench.open();
    await saveItems(list, 1, 2);
    const [first] = await recordsOf(list);
    await list.remove(first!.id);
    const copy = await bench.copy();
    await saveItems(list, 3, 3);
    await bench.putBack(copy);
    bench.passDays(40);
    const after = await bench.open();
    await after.emptyBin();
    expect(await recordsOf(after)).toHaveLength(2);
  });
});

describe('what is no loss', () => {
  it('is a list whose last change was not written down outside', async () => {
    const bench = testBench();
    const list = await bench.open();
    await saveItems(list, 1, 2);
    const mark = bench.mark();
    await saveItems(list, 3, 3);
    const [first] = await recordsOf(list);
    await list.remove(first!.id);
    bench.passDays(40);
    await list.emptyBin();
    bench.storeMark(mark);
    expect((await bench.restart()).loss()).toBeNull();
  });

  it('is a storage that knows nothing of the list', async () => {
    const bench = testBench();
    await saveItems(await bench.open(), 1, 2);
    bench.storeMark(undefined);
    expect((await bench.restart()).loss()).toBeNull();
    expect(bench.mark()).toMatchObject({ generation: 2, records: 2 });
  });

  it('is a second window that writes its mark later than its change', async () => {
    const bench = testBench();
    const list = await bench.open();
    await saveItems(list, 1, 1);
    const held: (() => void)[] = [];
    const { changeMark } = bench.ports;
    bench.ports.changeMark = async (change) => {
      await new Promise<void>((go) => held.push(go));
      return changeMark(change);
    };
    const slow = list.save(sampleCase(item(2)), []);
    const slower = list.save(sampleCase(item(3)), []);
    await expect.poll(() => held.length).toBe(2);
    held[1]!();
    await slower;
    held[0]!();
    await slow;
    bench.ports.changeMark = changeMark;
    expect(bench.mark()).toMatchObject({ generation: 3, records: 3 });
    expect((await bench.restart()).loss()).toBeNull();
  });
});
