import { expect, it } from 'vitest';
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
