import { describe, expect, it } from 'vitest';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

async function savedExport() {
  const bench = testBench();
  const list = await bench.open();
  await list.save(sampleCase('https://attic-arcade.example/item/1', 'One'), []);
  await list.save(sampleCase('https://attic-arcade.example/item/2', 'Two'), []);
  return { bench, list, text: good(await list.exportText()) };
}

describe('export and import', () => {
  it('carries the whole list to another browser', async () => {
    const { list, text } = await savedExport();
    const rows = good(await list.rows());
    const elsewhere = await testBench().open();
    expect(good(await elsewhere.importText(text))).toEqual({ added: 2, renewed: 0, kept: 0, refused: [] });
    expect(good(await elsewhere.rows())).toEqual(rows);
  });

  it('keeps the later change of a record that stands in both places', async () => {
    const { list, text } = await savedExport();
    const [newest] = good(await list.rows());
    if (newest?.state !== 'readable') throw new Error('the newest record is not readable');
    await list.setNote(newest.record.id, 'written after the export');
    expect(good(await list.importText(text))).toEqual({ added: 0, renewed: 0, kept: 2, refused: [] });
    expect(good(await list.rows())[0]).toMatchObject({ record: { note: 'written after the export' } });
  });

  it.each([
    ['a file that is cut off', (text: string) => text.slice(0, text.length / 2), 'import-cut-off'],
    ['an empty file', () => '', 'import-not-json'],
    ['a picture', () => '\u0089PNG\r\n', 'import-not-json'],
    ['another JSON file', () => '{"bookmarks": []}', 'import-other-format'],
    ['a list in place of an object', () => '[]', 'import-other-format'],
    ['a file of a newer version', (text: string) => text.replace('"version":1', '"version":7'), 'import-newer'],
  ])('refuses %s with a clear message and loses nothing', async (_what, make, code) => {
    const { bench, list, text } = await savedExport();
    const before = good(await list.rows());
    const generation = bench.generation();
    expect(await list.importText(make(text))).toMatchObject({ ok: false, problem: { code } });
    expect(good(await list.rows())).toEqual(before);
    expect(bench.generation()).toBe(generation);
  });

  it('takes in the good records of a file and names the bad ones', async () => {
    const { text } = await savedExport();
    const file = JSON.parse(text);
    file.records[0].status = 'stolen';
    const elsewhere = await testBench().open();
    const imported = good(await elsewhere.importText(JSON.stringify(file)));
    expect(imported).toMatchObject({ added: 1, refused: [{ code: 'record-damaged', where: 'record 1' }] });
    expect(good(await elsewhere.rows())).toHaveLength(1);
  });

  it('does not let a file change what every object inherits', async () => {
    const { list } = await savedExport();
    await list.importText(
      '{"format":"tellstamp-watch-list","version":1,"exportedAt":"","records":[{"__proto__":{"x":1}}]}',
    );
    expect(({} as { x?: number }).x).toBeUndefined();
  });
});
