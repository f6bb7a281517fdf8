import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { buildCase, type Case } from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import { packing } from '../../../src/store/packing';
import { caseOf, type SavedCase } from '../../../src/watch';
import { bringForward } from '../../../src/watch/migrations';
import { liftFinding } from '../../../src/watch/migrations/older-finding';
import { notYet, rowOf } from '../../../src/watch/rows';
import { latestLookOf } from '../../../src/watch/saved-case';
import { blankListing } from '../blank-listing';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

const at = '2026-03-01T10:00:00.000Z';
const photo = (id: string) => ({
  id,
  url: `https://attic-arcade.example/${id}.jpg`,
  alternatives: [],
  width: null,
  height: null,
  alt: '',
  origins: ['visible' as const],
});
const seen = <T>(value: T) => ({ value, origin: 'visible' as const, where: 'p', confidence: 0.9 });
const finding = (check: string, kind: string) => ({ check, kind, data: { about: check } });
const outcome = (...findings: unknown[]) => ({ outcome: 'speaks', check: 'x', findings });

/** A record of version 2 with these conclusions, brought forward. */
async function brought(change: Partial<Record<keyof Case, unknown>>, pictures: object[] = []) {
  const kase = { ...sampleCase(), ...change };
  const record = { id: 'a', title: 'T', savedAt: at, changedAt: at, status: 'asked', note: '', otherNotes: [] };
  const raw = { ...record, version: 2, case: kase, pictures, earlier: [], removedAt: null };
  const opened = await bringForward(raw, packing);
  if (opened.state !== 'readable') throw new Error(JSON.stringify(opened.problem));
  return opened;
}
const headOf = async (change: Parameters<typeof brought>[0]) => (await brought(change)).record.shown.head;

describe('what a list shows of a record of version 2', () => {
  const silent = { photos: [], failed: [], withoutFile: null, reasons: [] };

  it('is the first contradiction, else the first doubt', async () => {
    const outcomes = [
      outcome(finding('g', 'gap'), finding('d', 'doubt')),
      outcome(finding('c', 'contradiction'), finding('e', 'contradiction')),
    ];
    expect(await headOf({ outcomes })).toEqual({
      against: [finding('c', 'contradiction')],
      open: [],
      aside: false,
      notLookedAt: silent,
    });
    expect(await headOf({ outcomes: outcomes.slice(0, 1) })).toEqual({
      against: [finding('d', 'doubt')],
      open: [],
      aside: false,
      notLookedAt: silent,
    });
  });

  it('is the first gap where nothing speaks against the piece', async () => {
    const outcomes = [outcome(finding('a', 'agreement')), outcome(finding('g', 'gap'), finding('h', 'gap'))];
    expect(await headOf({ outcomes })).toEqual({
      against: [],
      open: [finding('g', 'gap')],
      aside: false,
      notLookedAt: silent,
    });
  });

  it('is what was not looked at where nothing was found', async () => {
    const listing = {
      ...sampleCase().listing,
      photos: [photo('p1'), photo('p2'), photo('p3')],
      maker: [seen('Ondrasse')],
    };
    const unread = { code: 'photo-not-read', where: 'p1', what: 'x', remedy: 'y' };
    const photos = [
      { state: 'unread', photoId: 'p1', problem: unread },
      { state: 'read', photoId: 'p2', width: 1, height: 1, observations: [] },
    ];
    expect((await headOf({ listing, photos })).notLookedAt).toEqual({
      photos: [1, 3],
      failed: [],
      withoutFile: 'Ondrasse',
      reasons: [],
    });
    expect((await headOf({ listing, photos, maker: 'Ondrasse' })).notLookedAt.withoutFile).toBeNull();
    expect((await headOf({ listing: sampleCase().listing })).notLookedAt.withoutFile).toBe('');
    expect((await headOf({ listing, photos, outcomes: [outcome(finding('g', 'gap'))] })).notLookedAt).toEqual(silent);
  });

  it('has the price and the face of its latest look, whose judges it says', async () => {
    const price = { kind: 'sale', minor: 5, exponent: 2, currency: 'EUR', currencies: ['EUR'] };
    const listing = { ...sampleCase().listing, price: [seen(price), seen({ ...price, minor: 6 })] };
    const picture = (lineId: string | null, base64: string) => ({
      photoId: 'p1',
      lineId,
      picture: `data:image/png;base64,${base64}`,
    });
    const { record, parts } = await brought({ listing, maker: 'Ondrasse', judgedAt: '2026-03-02T10:00:00.000Z' }, [
      picture('l1', 'AAAA'),
      picture(null, 'BBBB'),
      picture(null, 'CCCC'),
    ]);
    expect(record.shown.price).toEqual(price);
    expect(record.shown.face).toBe(parts.pictures[1]?.hash);
    expect(record.looks[0]).toMatchObject({ readAt: at, judgedAt: '2026-03-02T10:00:00.000Z' });
    expect(JSON.parse(await packing.unpack(parts.looks[0]!.packed)).judged).toEqual({
      at: '2026-03-02T10:00:00.000Z',
      rules: null,
      maker: { name: 'Ondrasse', file: null },
      found: [],
    });
    expect((await brought({})).record.shown).toMatchObject({ price: null, face: null });
  });

  it('leaves a change out that says nothing', () => {
    const data = { near: { code: 'K', change: '' } };
    expect(liftFinding({ check: 'x', kind: 'doubt', data })).toEqual({
      check: 'x',
      kind: 'doubt',
      data: { near: { code: 'K', differences: [] } },
    });
    expect(liftFinding('words')).toBe('words');
    expect(liftFinding({ data: 7 })).toEqual({ data: 7 });
    expect(liftFinding({ data: { near: { code: 'K' } } })).toEqual({ data: { near: { code: 'K' } } });
  });
});

describe('what a list shows of a case that is saved', () => {
  const ondrasse = builtInMakers.find(({ maker }) => maker === 'Ondrasse') as MakerFile;
  const latest = async (text: string, makers: MakerFile[]) => {
    const listing = {
      ...blankListing,
      url: 'https://attic-arcade.example/item/7',
      readAt: at,
      title: [seen(text)],
      text,
    };
    const kase = buildCase({ listing, photos: [], corrections: [], makers, now: at });
    const made = await latestLookOf(kase, [], { rules: 't', makers }, packing);
    if (!made.ok) throw new Error(JSON.stringify(made.problem));
    return made.value.latest;
  };

  it('is one line against the piece and none that is open, or one that is open', async () => {
    const against = await latest('Ondrasse Carryall 30, made in 1975, code KV0915.', [ondrasse]);
    expect(against.shown.head.against).toHaveLength(1);
    expect(against.shown.head.open).toEqual([]);
    expect(Object.keys(against.shown.head.against[0] ?? {})).toEqual(['check', 'kind', 'data']);
    const open = await latest('Ondrasse Carryall 30', [ondrasse]);
    expect(open.shown.head.against).toEqual([]);
    expect(open.shown.head.open).toHaveLength(1);
    for (const { shown } of [against, open])
      expect(shown.head.notLookedAt).toEqual({ photos: [], failed: [], withoutFile: null, reasons: [] });
  });

  it('is called by its address where the page gives no title, and by five hundred characters of a long one', async () => {
    expect((await latest('', [])).title).toBe('https://attic-arcade.example/item/7');
    expect((await latest('t'.repeat(501), [])).title).toBe('t'.repeat(500));
  });
});

describe('looks of a record', () => {
  it('are compared with the one before that can be read, and judged as of their own day', async () => {
    const bench = testBench();
    const list = await bench.open();
    for (const day of [1, 2, 3])
      await list.save(sampleCase(undefined, `Bag ${day}`, `2026-03-0${day}T10:00:00.000Z`), []);
    const saved = good(await list.get('id-2'));
    expect(
      saved.looks.map((look) => [look.state, look.readAt.slice(0, 10), look.state === 'readable' && look.makerFile]),
    ).toEqual([
      ['readable', '2026-03-03', 'unknown'],
      ['readable', '2026-03-02', 'unknown'],
      ['readable', '2026-03-01', 'unknown'],
    ]);
    const spoilt: SavedCase = {
      ...saved,
      looks: saved.looks.map((look, place) =>
        place === 1 ? { ...look, state: 'damaged', problem: notYet } : look,
      ) as SavedCase['looks'],
    };
    expect(caseOf(saved)?.previous?.readAt).toBe('2026-03-02T10:00:00.000Z');
    expect(caseOf(spoilt)?.previous?.readAt).toBe('2026-03-01T10:00:00.000Z');
    expect(caseOf(saved, 2)?.previous).toBeUndefined();
    expect(caseOf(spoilt, 1)).toBeNull();
    expect(caseOf(saved, 3)).toBeNull();
    expect(caseOf(saved, 1)?.judgedAt ?? caseOf(saved, 1)?.listing.readAt).toBe('2026-03-02T10:00:00.000Z');
    const earlier = good(await list.earlier('https://attic-arcade.example/item/7'));
    expect(earlier?.look.readAt).toBe('2026-03-03T10:00:00.000Z');
    expect(good(await list.earlier('https://attic-arcade.example/item/8'))).toBeNull();
  });

  it('carry their pictures through a file', async () => {
    const list = await testBench().open();
    const kept = { photoId: 'p1', lineId: null, picture: 'data:image/jpeg;base64,AAAA' };
    const { id } = good(
      await list.save(sampleCase(), [kept, { ...kept, lineId: 'l1', picture: 'data:image/png;base64,BBBB' }]),
    );
    const text = good(await list.exportText());
    expect(JSON.parse(text)).toMatchObject({
      format: 'tellstamp-watch-list',
      version: 2,
      looks: [{}],
      pictures: [{}, {}],
    });
    expect(text.endsWith('}\n')).toBe(true);
    const other = await testBench().open();
    expect(good(await other.importText(text)).added).toBe(1);
    const [look] = good(await other.get(id)).looks;
    expect(look?.state === 'readable' && look.pictures).toEqual([
      kept,
      { ...kept, lineId: 'l1', picture: 'data:image/png;base64,BBBB' },
    ]);
    expect(good(await other.face(id))).toBe(kept.picture);
    expect(good(await other.face('none'))).toBeNull();
  });
});

it('shows a record of an older build as one that is not read yet', () => {
  const file = JSON.parse(readFileSync(new URL('exports/version-3.json', import.meta.url), 'utf8'));
  expect(rowOf(file.records[0])).toMatchObject({ state: 'damaged', problem: notYet });
});
