import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Correction } from '../../../src/case';
import { codesByHand } from '../../../src/case/correction';
import { packing } from '../../../src/store/packing';
import { caseOf, type Imported, type SavedLook, type WatchRecord } from '../../../src/watch';
import type { Look } from '../../../src/watch/types';
import { problemInEnglish } from '../../said';
import { good, recordsOf, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

type Fields = Record<string, unknown>;
const nothing: Imported = {
  added: 0,
  joined: [],
  bothNotes: [],
  same: 0,
  stayDeleted: 0,
  newer: 0,
  leftOut: 0,
  file: null,
  filled: 0,
  refused: [],
};

async function savedExport() {
  const bench = testBench();
  const list = await bench.open();
  await list.save(sampleCase('https://attic-arcade.example/item/1', 'One'), []);
  await list.save(sampleCase('https://attic-arcade.example/item/2', 'Two'), []);
  return { bench, list, text: good(await list.exportText()) };
}

/** The export of another machine, where the listing `One` was saved and noted by someone else. */
async function elsewhere(change: Partial<WatchRecord> = {}, url = 'https://attic-arcade.example/item/1') {
  const list = await testBench().open();
  const kase = sampleCase(url, 'One, reduced', '2026-03-04T10:00:00.000Z');
  const { id } = good(await list.save(kase, []));
  await list.setNote(id, 'their note', '');
  const file = JSON.parse(good(await list.exportText()));
  Object.assign(file.records[0], { id: 'theirs', changedAt: '2026-04-01T10:00:00.000Z', ...change });
  return JSON.stringify(file);
}

describe('export and import', () => {
  it('carries the whole list to another browser', async () => {
    const { list, text } = await savedExport();
    const records = await recordsOf(list);
    const other = await testBench().open();
    expect(good(await other.importText(text))).toEqual({ ...nothing, added: 2 });
    expect(await recordsOf(other)).toEqual(records);
    expect(good(await other.importText(text))).toEqual({ ...nothing, same: 2 });
  });

  it('lets a file of before the last change alter nothing', async () => {
    const { list, text } = await savedExport();
    const { id } = good(await list.rows())[0]!;
    await list.setNote(id, 'written after the export', '');
    const before = await recordsOf(list);
    expect(good(await list.importText(text))).toEqual({ ...nothing, same: 2 });
    expect(await recordsOf(list)).toEqual(before);
  });

  it.each([
    ['a file that is cut off', (text: string) => text.slice(0, text.length / 2), 'import-cut-off'],
    ['an empty file', () => '', 'import-not-json'],
    ['a picture', () => '\u0089PNG\r\n', 'import-not-json'],
    ['another JSON file', () => '{"bookmarks": []}', 'import-other-format'],
    ['a list in place of an object', () => '[]', 'import-other-format'],
    ['a file of a newer version', (text: string) => text.replace('"version":2', '"version":7'), 'import-newer'],
  ])('refuses %s with a clear message and loses nothing', async (_what, make, code) => {
    const { bench, list, text } = await savedExport();
    const before = await recordsOf(list);
    const generation = bench.generation();
    expect(await list.importText(make(text))).toMatchObject({ ok: false, problem: { code } });
    expect(await recordsOf(list)).toEqual(before);
    expect(bench.generation()).toBe(generation);
  });

  it('does not let a file change what every object inherits', async () => {
    const { list } = await savedExport();
    await list.importText(
      '{"format":"tellstamp-watch-list","version":1,"exportedAt":"","records":[{"__proto__":{"x":1}}]}',
    );
    expect(({} as { x?: number }).x).toBeUndefined();
  });
});

describe('the same listing from another machine', () => {
  it.each(['https://attic-arcade.example/item/1', 'http://www.attic-arcade.example/item/1/?utm_campaign=spring'])(
    'becomes one case with both histories: %s',
    async (url) => {
      const { list } = await savedExport();
      expect(good(await list.importText(await elsewhere({}, url)))).toMatchObject({
        added: 0,
        joined: ['One, reduced'],
      });
      const joined = good(await list.findByUrl('https://attic-arcade.example/item/1'));
      expect(await recordsOf(list)).toHaveLength(2);
      expect(joined?.looks.map(({ readAt }) => readAt)).toEqual([
        '2026-03-04T10:00:00.000Z',
        '2026-03-01T10:00:00.000Z',
      ]);
      expect(joined).toMatchObject({ note: 'their note', otherNotes: [] });
    },
  );

  it('never puts its note or status over the buyer’s own, and says where both stand', async () => {
    const { list } = await savedExport();
    const mine = good(await list.findByUrl('https://attic-arcade.example/item/1'))!;
    await list.setNote(mine.id, 'my note', '');
    await list.setStatus(mine.id, 'asked');
    const text = await elsewhere({ status: 'bought' });
    const imported = good(await list.importText(text));
    expect(imported).toEqual({ ...nothing, joined: ['One, reduced'], bothNotes: ['One, reduced'] });
    expect(good(await list.get(mine.id)).record).toMatchObject({
      note: 'my note',
      status: 'asked',
      otherNotes: [{ from: 'import', note: 'their note', status: 'bought' }],
    });
    // A second import of the same file has nothing new to say.
    expect(good(await list.importText(text))).toEqual({ ...nothing, same: 1 });
  });

  it('keeps both notes of one record, too, although the other was changed later', async () => {
    const { list, text } = await savedExport();
    const mine = good(await list.findByUrl('https://attic-arcade.example/item/1'))!;
    await list.setNote(mine.id, 'my note', '');
    const file = JSON.parse(text);
    for (const record of file.records) Object.assign(record, { note: 'theirs', changedAt: '2027-01-01T00:00:00.000Z' });
    const imported = good(await list.importText(JSON.stringify(file)));
    expect(imported).toMatchObject({ joined: ['One', 'Two'], bothNotes: ['One'] });
    expect(good(await list.get(mine.id)).record).toMatchObject({ note: 'my note', otherNotes: [{ note: 'theirs' }] });
  });

  it('stays deleted when it was last changed before the deletion, and comes back when it was changed after', async () => {
    const { list } = await savedExport();
    const mine = good(await list.findByUrl('https://attic-arcade.example/item/1'))!;
    await list.remove(mine.id);
    const before = await elsewhere({ changedAt: '2026-03-01T10:00:00.000Z' });
    expect(good(await list.importText(before))).toEqual({ ...nothing, stayDeleted: 1 });
    expect(good(await list.get(mine.id)).record.removedAt).not.toBeNull();
    expect(good(await list.importText(await elsewhere()))).toMatchObject({ joined: ['One, reduced'] });
    expect(good(await list.get(mine.id)).record.removedAt).toBeNull();
  });

  it('does not mix two listings that bear the same id', async () => {
    const { list } = await savedExport();
    const mine = good(await list.findByUrl('https://attic-arcade.example/item/1'))!;
    const file = await elsewhere({ id: mine.id }, 'https://attic-arcade.example/item/77');
    expect(good(await list.importText(file))).toMatchObject({ added: 1, joined: [] });
    expect(good(await list.get(mine.id)).record).toEqual(mine);
    expect(await recordsOf(list)).toHaveLength(3);
  });
});

describe('records of a newer version', () => {
  it('are exported and imported whole', async () => {
    const { list, text } = await savedExport();
    const file = JSON.parse(text);
    const newer = { version: 10, id: 'from-tomorrow', title: 'Three', corrections: [{ stroke: 1 }] };
    file.records.push(newer);
    expect(good(await list.importText(JSON.stringify(file)))).toEqual({ ...nothing, same: 2, newer: 1 });
    const exported = JSON.parse(good(await list.exportText())).records as unknown[];
    expect(exported).toHaveLength(3);
    expect(exported).toContainEqual(newer);
    expect(good(await list.importText(JSON.stringify({ ...file, records: exported })))).toEqual({
      ...nothing,
      same: 3,
    });
  });

  it('are not written over by another state of themselves', async () => {
    const { list, text } = await savedExport();
    const file = JSON.parse(text);
    file.records = [{ version: 10, id: 'from-tomorrow', title: 'Three', note: 'one' }];
    await list.importText(JSON.stringify(file));
    file.records[0].note = 'two';
    expect(good(await list.importText(JSON.stringify(file)))).toMatchObject({
      newer: 0,
      refused: [{ code: 'record-newer', where: '1 (Three)' }],
    });
    expect(JSON.parse(good(await list.exportText())).records).toContainEqual({ ...file.records[0], note: 'one' });
  });
});

describe('what an import refuses', () => {
  type File = { records: Fields[]; looks: { hash: string; look: Look }[]; pictures: Fields[] };
  /** As somebody would who also gives the look the name that its new content has. */
  const spoilLook = async ({ records, looks }: File, spoil: (look: Look) => void) => {
    const { looks: names } = records[0] as unknown as WatchRecord;
    const carried = looks.find(({ hash }) => hash === names[0]?.look)!;
    spoil(carried.look);
    carried.hash = await packing.digest(JSON.stringify(carried.look));
    Object.assign(names[0]!, { look: carried.hash });
  };
  it.each<[string, (file: File) => void | Promise<void>, string]>([
    [
      'a moment that is none',
      ({ records: [one] }) => void Object.assign(one!, { changedAt: 'zzzz' }),
      '“changedAt” holds something that is not possible there',
    ],
    [
      'a deletion at no time',
      ({ records: [one] }) => void Object.assign(one!, { removedAt: '0' }),
      '“removedAt” holds something that is not possible there',
    ],
    [
      'a script in place of an address',
      ({ records: [one] }) => void Object.assign(one!.shown as Fields, { address: 'javascript:alert(1)' }),
      '“shown.address” holds something that is not possible there',
    ],
    [
      'a script in a look',
      (file) => spoilLook(file, (look) => Object.assign(look.listing, { url: 'data:,x' })),
      '“listing.url” holds something that is not possible there',
    ],
    [
      'a look that is cut off',
      (file) => spoilLook(file, (look) => Object.assign(look, { photos: undefined })),
      '“photos” is missing',
    ],
    [
      'a look that is another one than its name says',
      (file) => void Object.assign(file.looks[0]!.look.listing, { text: 'another' }),
      'a look of the record is cut off or spoilt',
    ],
    ['a look that the file lacks', (file) => void file.looks.shift(), 'a look that the record names is missing'],
    [
      'a status that there is none of',
      ({ records: [one] }) => void Object.assign(one!, { status: 'stolen' }),
      '“status” holds something that is not possible there',
    ],
  ])('%s, with the record, the place and the reason; the others come in', async (_what, spoil, what) => {
    const { text } = await savedExport();
    const file = JSON.parse(text);
    const [first] = file.records[0].looks;
    file.looks.sort((one: { hash: string }) => (one.hash === first.look ? -1 : 1));
    await spoil(file);
    const list = await testBench().open();
    const imported = good(await list.importText(JSON.stringify(file)));
    expect({ ...imported, refused: imported.refused.map(problemInEnglish) }).toEqual({
      ...nothing,
      added: 1,
      refused: [
        expect.objectContaining({ where: `1 (${file.records[0].title})`, what: expect.stringContaining(what) }),
      ],
    });
    expect(await recordsOf(list)).toHaveLength(1);
  });

  it('leaves out a picture that is no picture or another one than its name says, and takes the case', async () => {
    const bench = testBench();
    const list = await bench.open();
    const kept = { photoId: 'p1', lineId: null, picture: 'data:image/jpeg;base64,AAAA' };
    await list.save(sampleCase(), [kept]);
    const file: File = JSON.parse(good(await list.exportText()));
    for (const picture of [svg, 'data:image/jpeg;base64,BBBB']) {
      file.pictures[0]!.picture = picture;
      const other = await testBench().open();
      expect(good(await other.importText(JSON.stringify(file)))).toEqual({ ...nothing, added: 1 });
      const [{ id }] = (await recordsOf(other)) as [WatchRecord];
      expect(good(await other.face(id))).toBeNull();
    }
  });
});

const svg = `data:image/svg+xml;base64,${Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>').toString('base64')}`;

describe('a file of an older build', () => {
  const exported = (): { version: number; records: Older[] } =>
    JSON.parse(readFileSync(new URL('exports/version-2.json', import.meta.url), 'utf8'));
  type Older = Fields & {
    title: string;
    pictures: Fields[];
    earlier: Fields[];
    case: Fields & { listing: Fields };
  };

  it('comes in whole: looks, notes, pictures, corrections, and what was deleted', async () => {
    const file = exported();
    const list = await testBench().open();
    expect(good(await list.importText(JSON.stringify(file)))).toEqual({ ...nothing, added: 3 });
    const saved = await Promise.all(file.records.map(async ({ id }) => good(await list.get(String(id)))));
    for (const [at, { record, looks }] of saved.entries()) {
      const { case: kase, pictures, earlier, version: _, ...rest } = file.records[at]!;
      const { looks: __, shown, version, asked, dated, sentChanges, ...kept } = record;
      expect([kept, version, asked, dated, sentChanges]).toEqual([rest, 9, [], null, []]);
      expect(shown.address).toBe(kase.listing.url);
      expect(looks.map(contentOf)).toEqual(
        [{ case: kase, pictures }, ...earlier].map((look) => {
          const { case: of, pictures: shownThen } = look as unknown as Older;
          return { listing: of.listing, codes: of.typedCodes, judgedAt: of.judgedAt, pictures: shownThen };
        }),
      );
    }
    // The stamp that was read then is read from what was kept of the photo, not from what was concluded.
    const [first] = saved;
    const read = caseOf(first!)?.decodings.filter(({ accepted }) => accepted);
    expect(read?.map(({ readings }) => readings[0]?.text)).toEqual(['KV0915', 'KV0915', 'KV0915']);
    expect(good(await list.importText(JSON.stringify(file)))).toEqual({ ...nothing, same: 2, stayDeleted: 1 });
    // The first case of a process is built slowly on a busy machine.
  }, 30_000);

  const contentOf = (look: SavedLook) =>
    look.state === 'readable'
      ? {
          listing: look.look.listing,
          codes: codesByHand(look.corrections as Correction[]).map(({ code }) => ({ photoId: null, code })),
          judgedAt: look.judgedAt,
          pictures: look.pictures,
        }
      : look.problem;

  it.each<[string, (record: Older) => void, string]>([
    [
      'an SVG picture',
      (one) => one.pictures.push({ photoId: 'p', lineId: null, picture: svg }),
      '“pictures.3.picture” holds something that is not possible there',
    ],
    [
      'a script in place of an address',
      (one) => Object.assign(one.case.listing, { url: 'javascript:alert(1)' }),
      '“case.listing.url” holds something that is not possible there',
    ],
    [
      'a script in an earlier look',
      (one) => Object.assign((one.earlier[0] as unknown as Older).case.listing, { url: 'data:,x' }),
      '“earlier.0.case.listing.url” holds something that is not possible there',
    ],
  ])('is refused %s, and the others come in', async (_what, spoil, what) => {
    const file = exported();
    spoil(file.records[0]!);
    const list = await testBench().open();
    const { added, refused } = good(await list.importText(JSON.stringify(file)));
    expect([added, refused.map((one) => problemInEnglish(one).what)]).toEqual([2, [expect.stringContaining(what)]]);
  });
});
