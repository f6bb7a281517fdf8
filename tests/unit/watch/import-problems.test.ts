import { describe, expect, it } from 'vitest';
import { problem } from '../../../src/problem';
import { problemInEnglish } from '../../said';
import { good, testBench } from './open-for-test';
import { sampleCase, sampleRecord } from './sample-case';

const exported = async (change: (file: Record<string, unknown[]>) => void = () => undefined) => {
  const list = await testBench().open();
  await list.save(sampleCase('https://attic-arcade.example/item/1', 'One'), []);
  const file = JSON.parse(good(await list.exportText()));
  change(file);
  return JSON.stringify(file);
};
const importing = async (text: string) => (await testBench().open()).importText(text);
const refusedBy = async (text: string) => good(await importing(text)).refused.map(problemInEnglish);
const importFile = 'Nothing was changed. Choose a file that the watch list exported.';
const kept = 'The record is kept as it is: export it and report what it says.';
const untilThen = 'Update the extension; until then the record is shown and not changed.';

describe('what an import says of a file that it does not take', () => {
  it.each([
    ['cut off', '{"format":"tellstamp-watch-list","ver', 'import-cut-off', 'the file is cut off: its end is missing'],
    ['no JSON', 'plain words', 'import-not-json', 'the file is not an export of the watch list'],
    [
      'named too late',
      `${' '.repeat(200)}{"format":"tellstamp-watch-list"`,
      'import-not-json',
      'the file is not an export of the watch list',
    ],
    ['another JSON', '{"format":"other"}', 'import-other-format', 'the file is not an export of the watch list'],
    [
      'version nought',
      '{"format":"tellstamp-watch-list","version":0,"exportedAt":"x","records":[]}',
      'import-other-format',
      'the file is not an export of the watch list',
    ],
    [
      'too new',
      '{"format":"tellstamp-watch-list","version":3,"exportedAt":"x","records":[]}',
      'import-newer',
      'the file was written by a newer version of the extension',
    ],
    ['too large', 'x'.repeat(400_000_001), 'import-too-large', 'the file is too large to be an export'],
  ])('%s', async (_what, text, code, what) => {
    const imported = await importing(text);
    expect(imported.ok ? null : problemInEnglish(imported.problem)).toEqual({
      code,
      where: 'import',
      what,
      remedy: importFile,
    });
  });

  it('takes a file of version 1, with no looks and pictures beside its records', async () => {
    const text = '{"format":"tellstamp-watch-list","version":1,"exportedAt":"x","records":[],"more":1}';
    expect(good(await importing(text)).added).toBe(0);
  });

  it('holds at most twenty thousand records', async () => {
    const of = (count: number) =>
      importing(
        JSON.stringify({ format: 'tellstamp-watch-list', version: 2, exportedAt: '', records: Array(count).fill(0) }),
      );
    expect(good(await of(20_000)).refused).toHaveLength(20_000);
    expect(await of(20_001)).toMatchObject({ ok: false, problem: { code: 'import-other-format' } });
  });
});

describe('what an import says of a record that it does not take', () => {
  it.each<[string, unknown, string, string, string]>([
    ['words', 'words', '2', 'it is no record of a watch list', 'record-none'],
    ['nothing', null, '2', 'it is no record of a watch list', 'record-none'],
    ['a list', [], '2', 'it is no record of a watch list', 'record-none'],
    [
      'no number for a version',
      { version: '4', title: 'Two' },
      '2 (Two)',
      'it is no record of a watch list',
      'record-none',
    ],
    ['half a version', { version: 1.5, title: '' }, '2', 'it is no record of a watch list', 'record-none'],
    ['a version below nought', { version: -1, title: 7 }, '2', 'it is no record of a watch list', 'record-none'],
    [
      'a long title',
      { version: 'x', title: 't'.repeat(81) },
      `2 (${'t'.repeat(80)})`,
      'it is no record of a watch list',
      'record-none',
    ],
    [
      'a field of another kind',
      { ...sampleRecord(), note: 7 },
      '2 (Ondrasse Carryall 30)',
      'the record is damaged: “note” is of another kind than it should be',
      'record-damaged',
    ],
    [
      'a status that is none',
      { ...sampleRecord(), status: 'lost' },
      '2 (Ondrasse Carryall 30)',
      'the record is damaged: “status” holds something that is not possible there',
      'record-damaged',
    ],
    [
      'a moment of another form',
      { ...sampleRecord(), savedAt: 'today' },
      '2 (Ondrasse Carryall 30)',
      'the record is damaged: “savedAt” holds something that is not possible there',
      'record-damaged',
    ],
    [
      'a name of a look that is none',
      { ...sampleRecord(), looks: [{ ...sampleRecord().looks[0], look: 'x' }] },
      '2 (Ondrasse Carryall 30)',
      'the record is damaged: “looks.0.look” holds something that is not possible there',
      'record-damaged',
    ],
    [
      'an address that is none',
      { ...sampleRecord(), shown: { ...sampleRecord().shown, address: 'ftp://x' } },
      '2 (Ondrasse Carryall 30)',
      'the record is damaged: “shown.address” holds something that is not possible there',
      'record-damaged',
    ],
    [
      'a look that is missing',
      sampleRecord(),
      '2 (Ondrasse Carryall 30)',
      'a look that the record names is missing',
      'look-missing',
    ],
  ])('%s', async (_what, record, where, what, code) => {
    const text = await exported((file) => file.records?.push(record));
    expect(await refusedBy(text)).toEqual([{ code, where, what, remedy: kept }]);
  });

  it('a newer one without a name to be kept by', async () => {
    const text = await exported((file) => file.records?.push({ version: 10, id: '' }));
    expect(await refusedBy(text)).toEqual([
      {
        code: 'record-newer',
        where: '2',
        what: 'a newer version of the extension wrote it (version 10)',
        remedy: untilThen,
      },
    ]);
  });

  it('a newer one that the list has in another state', async () => {
    const list = await testBench().open();
    const file = (note: string) =>
      JSON.stringify({
        format: 'tellstamp-watch-list',
        version: 2,
        exportedAt: '',
        records: [{ version: 10, id: 'n', note }],
      });
    expect(good(await list.importText(file('a')))).toMatchObject({ newer: 1, refused: [] });
    expect(good(await list.importText(file('a')))).toMatchObject({ newer: 0, same: 1 });
    expect(good(await list.importText(file('b'))).refused.map(problemInEnglish)).toEqual([
      {
        code: 'record-newer',
        where: '1',
        what: 'a newer version wrote it, and the list has another state of it',
        remedy: 'Update the extension and import again.',
      },
    ]);
    expect(good(await list.rows())).toEqual([
      {
        state: 'newer',
        id: 'n',
        key: '',
        title: '',
        uses: [],
        problem: problem('record-newer', 'watch list', { version: 10 }),
      },
    ]);
  });

  it('one whose look is another than its name says, or of a form that is none', async () => {
    const another = await exported((file) => {
      const [look] = file.looks as { look: { listing: { text: string } } }[];
      if (look) look.look.listing.text = 'changed';
    });
    expect(await refusedBy(another)).toEqual([
      {
        code: 'look-spoilt',
        where: '1 (One)',
        what: 'a look of the record is cut off or spoilt',
        remedy: kept,
      },
    ]);
    const broken = await exported((file) => {
      const [look] = file.looks as { look: { listing: unknown } }[];
      if (look) look.look.listing = 7;
    });
    expect(await refusedBy(broken)).toMatchObject([
      { where: '1 (One)', what: 'the record is damaged: “listing” is of another kind than it should be' },
    ]);
  });

  it('one that the list has already, and cannot read there', async () => {
    const bench = testBench();
    const list = await bench.open();
    await list.save(sampleCase('https://attic-arcade.example/item/1', 'One'), []);
    const text = good(await list.exportText());
    const copy = await bench.copy();
    await bench.putBack({ ...copy, cases: copy.cases.map((one) => ({ ...one, note: 7 })) });
    const [refused] = good(await (await bench.open()).importText(text)).refused;
    expect(refused && problemInEnglish(refused).what).toBe(
      'the list has it already, and there the record is damaged: “note” is of another kind than it should be',
    );
  });
});
