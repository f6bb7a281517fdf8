import { describe, expect, it } from 'vitest';
import type { BroughtPhoto, WatchList } from '../../../src/watch';
import { photoRead } from '../../photo-read';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

const picture = 'data:image/webp;base64,AAAA';
const photo = (letter: string): BroughtPhoto => {
  const id = `sent-${letter.repeat(32)}`;
  return {
    photo: { id, from: 'seller-chat', on: '2026-02-27' },
    read: photoRead(id, { hash: 'f0e1d2c3b4a59687' }),
    pictures: [{ photoId: id, lineId: null, picture }],
    file: { type: 'image/jpeg', bytes: new Uint8Array([0xff, 0xd8, 0xff, letter.charCodeAt(0)]) },
  };
};

/** One case on two machines, which both go on from the same look. */
async function twoMachines() {
  const first = await testBench().open();
  const { id } = good(await first.save(sampleCase(), []));
  good(await first.addSent(id, [photo('a')]));
  const second = await testBench().open();
  good(await second.importText(good(await first.exportText())));
  return { first, second, id };
}

async function latest(list: WatchList, id: string) {
  const { looks } = good(await list.get(id));
  const [look] = looks;
  if (look?.state !== 'readable') throw new Error('the look cannot be read');
  return { looks: looks.length, ...look };
}

it.each(['the list', 'the file'])(
  'a photo and a reply that only one of two machines has stand in the case, whether %s was judged last',
  async (last) => {
    const { first, second, id } = await twoMachines();
    const [early, late] = last === 'the list' ? [second, first] : [first, second];
    good(await early.addSent(id, [photo('b')]));
    good(await early.addReply(id, 'Seen by one.'));
    good(await late.addSent(id, [photo('c')]));
    good(await late.addReply(id, 'Seen by the other.'));
    good(await first.importText(good(await second.exportText())));
    const { look, looks, pictures, files } = await latest(first, id);
    expect(looks).toBe(1);
    expect(look.sent.map((one) => one.id.at(-1)).sort()).toEqual(['a', 'b', 'c']);
    expect(look.photos.map(({ photoId }) => photoId.at(-1)).sort()).toEqual(['a', 'b', 'c']);
    expect(pictures.map(({ photoId }) => photoId.at(-1)).sort()).toEqual(['a', 'b', 'c']);
    expect(look.replies.map(({ text }) => text).sort()).toEqual(['Seen by one.', 'Seen by the other.']);
    const bytes = await Promise.all(files.map(async ({ file }) => good(await first.file(file))?.bytes[3]));
    expect(bytes.sort()).toEqual(['a', 'b', 'c'].map((letter) => letter.charCodeAt(0)));
  },
);

it('a file of before the last photo changes nothing of the look', async () => {
  const { first, id } = await twoMachines();
  const before = good(await first.exportText());
  good(await first.addSent(id, [photo('b')]));
  const { look } = await latest(first, id);
  expect(good(await first.importText(before)).same).toBe(1);
  expect((await latest(first, id)).look).toEqual(look);
});

it('of more replies than are kept the first ones stand, in their order', async () => {
  const { first, second, id } = await twoMachines();
  for (let reply = 1; reply <= 49; reply++) good(await first.addReply(id, `Reply ${reply}.`));
  for (const words of ['One more.', 'Two more.', 'Three more.']) good(await second.addReply(id, words));
  good(await first.importText(good(await second.exportText())));
  const { look } = await latest(first, id);
  expect(look.replies).toHaveLength(50);
  const times = look.replies.map(({ at }) => Date.parse(at));
  expect(times).toEqual([...times].sort((a, b) => a - b));
});

it('a case that stays in the bin stays as it is', async () => {
  const { first, second, id } = await twoMachines();
  good(await second.addSent(id, [photo('b')]));
  const file = good(await second.exportText());
  good(await first.addReply(id, 'Seen by one.'));
  good(await first.remove(id));
  const { record } = good(await first.get(id));
  const later = JSON.parse(file);
  later.records[0].changedAt = record.savedAt;
  expect(good(await first.importText(JSON.stringify(later))).stayDeleted).toBe(1);
  expect(good(await first.get(id)).record).toEqual(record);
});

/** The same two machines, one clock on the wall of both. */
async function oneClock() {
  let minutes = 0;
  const now = () => new Date(Date.UTC(2026, 2, 1, 12, minutes++)).toISOString();
  const open = () => {
    const bench = testBench();
    bench.ports.now = now;
    return bench.open();
  };
  const first = await open();
  const { id } = good(await first.save(sampleCase(), []));
  good(await first.addSent(id, [photo('a')]));
  good(await first.addSent(id, [photo('b')]));
  const before = good(await first.exportText());
  const second = await open();
  good(await second.importText(before));
  return { first, second, id, before };
}
const sentIn = async (list: WatchList, id: string) => (await latest(list, id)).look.sent.map((one) => one.id.at(-1));

describe('a photo that was taken out', () => {
  it('stays out when an older file is taken in, of this build or of the one before', async () => {
    const { first, id, before } = await oneClock();
    good(await first.removeSent(id, photo('a').photo.id));
    expect(good(await first.importText(before)).same).toBe(1);
    const older = JSON.parse(before);
    older.records[0].version = 8;
    delete older.records[0].sentChanges;
    expect(good(await first.importText(JSON.stringify(older)))).toMatchObject({ refused: [] });
    const { look, files, pictures } = await latest(first, id);
    expect(look.sent.map((one) => one.id.at(-1))).toEqual(['b']);
    expect([files, pictures, look.photos].map((of) => of.map(({ photoId }) => photoId.at(-1)))).toEqual([
      ['b'],
      ['b'],
      ['b'],
    ]);
  });

  it('elsewhere goes here too, though the look of here was judged last', async () => {
    const { first, second, id } = await oneClock();
    good(await second.removeSent(id, photo('b').photo.id));
    good(await first.addReply(id, 'Said after that.'));
    good(await first.importText(good(await second.exportText())));
    expect(await sentIn(first, id)).toEqual(['a']);
    expect((await latest(first, id)).look.replies).toHaveLength(1);
  });

  it('and brought again later is back, whichever machine it was brought on', async () => {
    const { first, second, id } = await oneClock();
    good(await first.removeSent(id, photo('a').photo.id));
    good(await second.addSent(id, [photo('a')]));
    good(await first.importText(good(await second.exportText())));
    expect((await sentIn(first, id)).sort()).toEqual(['a', 'b']);
    good(await second.importText(good(await first.exportText())));
    expect((await sentIn(second, id)).sort()).toEqual(['a', 'b']);
  });

  it('stays out of a later reading of the page on a machine that still had it', async () => {
    const { first, second, id } = await oneClock();
    const { looks } = good(await second.get(id));
    const [kept] = looks;
    if (kept?.state !== 'readable') throw new Error('the look cannot be read');
    const later = sampleCase();
    const { sent, photos } = kept.look;
    const listing = { ...later.listing, readAt: '2026-03-01T11:00:00.000Z' };
    good(await second.save({ ...later, listing, sent, photos }, kept.pictures));
    good(await first.removeSent(id, photo('a').photo.id));
    good(await first.importText(good(await second.exportText())));
    expect(await latest(first, id)).toMatchObject({ looks: 2, readAt: '2026-03-01T11:00:00.000Z' });
    expect(await sentIn(first, id)).toEqual(['b']);
  });

  it('of a case before it was kept again stays out', async () => {
    const { first, id, before } = await oneClock();
    const [kept] = good(await first.get(id)).looks;
    if (kept?.state !== 'readable') throw new Error('the look cannot be read');
    const { id: removed } = photo('a').photo;
    const sent = kept.look.sent.filter((one) => one.id !== removed);
    const photos = kept.look.photos.filter(({ photoId }) => photoId !== removed);
    const judgedAt = '2026-03-01T12:30:00.000Z';
    good(await first.save({ ...sampleCase(), sent, photos, judgedAt }, [], [], [removed]));
    good(await first.importText(before));
    expect(await sentIn(first, id)).toEqual(['b']);
  });
});
