import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { buildCase, type SentPhoto } from '../../../src/case';
import { mostSentPhotos } from '../../../src/case/types';
import { type BroughtPhoto, caseOf, dossierOf, type WatchList } from '../../../src/watch';
import { photoRead } from '../../photo-read';
import { stampLine } from '../check/sample';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

const chat: SentPhoto = { id: `sent-${'a'.repeat(32)}`, from: 'seller-chat', on: '2026-02-27' };
const picture = 'data:image/webp;base64,AAAA';
const brought: BroughtPhoto = {
  photo: chat,
  read: photoRead(chat.id, { hash: 'f0e1d2c3b4a59687' }),
  pictures: [
    { photoId: chat.id, lineId: null, picture },
    { photoId: chat.id, lineId: `${chat.id}-line-9`, picture: 'data:image/webp;base64,BBBB' },
  ],
};

/** The smallest JPEG: its first bytes tell what it is. */
const photo = (await sharp({ create: { width: 40, height: 30, channels: 3, background: 'tan' } })
  .jpeg()
  .toBuffer()) as Uint8Array;
const whole: BroughtPhoto = { ...brought, file: { type: 'image/jpeg', bytes: new Uint8Array(photo) } };
const filesOf = async (list: WatchList, id: string) => {
  const [look] = good(await list.get(id)).looks;
  return look?.state === 'readable' ? look.files : [];
};

const opened = async () => {
  const list = await testBench().open();
  const { id } = good(await list.save(sampleCase(), []));
  return { list, id };
};
const dossier = async (list: WatchList, id: string) => {
  const saved = good(await list.get(id));
  const [look] = saved.looks;
  const pictures = look?.state === 'readable' ? look.pictures : [];
  return { saved, ...dossierOf({ record: saved.record, case: caseOf(saved)!, pictures }) };
};

describe('a photo that the seller sent', () => {
  it('is kept in the latest look, read, with its picture, and stands in the dossier', async () => {
    const { list, id } = await opened();
    good(await list.addSent(id, [brought]));
    const { saved, sent, photoCount, kase } = await dossier(list, id);
    expect(saved.looks).toHaveLength(1);
    expect(sent).toEqual([{ sent: chat, photo: 1, picture }]);
    expect(kase.photos).toEqual([brought.read]);
    expect(photoCount).toBe(0);
    expect(saved.looks[0]).toMatchObject({ look: { listing: { photos: [] }, sent: [chat] } });
  });

  it('keeps no picture of a line that counts as no code', async () => {
    const { list, id } = await opened();
    good(await list.addSent(id, [brought]));
    expect((await dossier(list, id)).pictures).toEqual([{ photoId: chat.id, lineId: null, picture }]);
  });

  it('keeps the picture of a line that counts as a code, also when more is sent', async () => {
    const { list, id } = await opened();
    const line = stampLine(chat.id, 'KV0915');
    const pictures = [
      ...brought.pictures,
      { photoId: chat.id, lineId: line.id, picture: 'data:image/webp;base64,CCCC' },
    ];
    good(await list.addSent(id, [{ ...brought, read: photoRead(chat.id, { lines: [line] }), pictures }]));
    const kept = [null, line.id];
    expect((await dossier(list, id)).pictures.map(({ lineId }) => lineId)).toEqual(kept);
    good(await list.addReply(id, 'Here it is.'));
    expect((await dossier(list, id)).pictures.map(({ lineId }) => lineId)).toEqual(kept);
  });

  it('is kept whole, and goes with all else of it', async () => {
    const { list, id } = await opened();
    good(await list.addSent(id, [whole]));
    const [file] = await filesOf(list, id);
    expect(file?.photoId).toBe(chat.id);
    expect(good(await list.file(file?.file ?? ''))).toEqual({ type: 'image/jpeg', bytes: new Uint8Array(photo) });
    good(await list.addReply(id, 'Here it is again.'));
    expect(await filesOf(list, id)).toEqual([file]);
    good(await list.removeSent(id, chat.id));
    expect(await filesOf(list, id)).toEqual([]);
    expect(good(await list.file(file?.file ?? ''))).toBeNull();
  });

  it('is kept whole when the listing is kept again where its bytes are not at hand', async () => {
    const { list, id } = await opened();
    good(await list.addSent(id, [whole]));
    const { listing } = sampleCase(undefined, undefined, '2026-03-02T10:00:00.000Z');
    const facts = { listing, photos: [brought.read], sent: [chat], corrections: [], makers: [] };
    good(await list.save(buildCase({ ...facts, now: '2026-03-02T11:00:00.000Z' }), []));
    expect(good(await list.get(id)).looks).toHaveLength(2);
    expect((await filesOf(list, id)).map(({ photoId }) => photoId)).toEqual([chat.id]);
  });

  it.each([
    ['what is no photo', 'image/svg+xml', new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"/>')],
    [
      'a photo larger than what a list can carry',
      'image/jpeg',
      Uint8Array.from([...photo, ...new Uint8Array(6_000_000)]),
    ],
  ])('is not kept whole where it is %s', async (_which, type, bytes) => {
    const { list, id } = await opened();
    good(await list.addSent(id, [{ ...whole, file: { type, bytes } }]));
    expect(await filesOf(list, id)).toEqual([]);
    expect((await dossier(list, id)).sent).toHaveLength(1);
  });

  it('goes whole into a file and out of it', async () => {
    const { list, id } = await opened();
    good(await list.addSent(id, [whole]));
    const other = await testBench().open();
    good(await other.importText(good(await list.exportText())));
    const earlier = good(await other.earlier(sampleCase().listing.url));
    expect(earlier?.sent[0]?.file).toEqual({ type: 'image/jpeg', bytes: new Uint8Array(photo) });
  });

  it('that is given once more stands once, as it is said now', async () => {
    const { list, id } = await opened();
    good(await list.addSent(id, [brought]));
    good(await list.addSent(id, [{ ...brought, photo: { ...chat, from: 'own' } }]));
    const { sent, pictures } = await dossier(list, id);
    expect(sent.map((one) => one.sent.from)).toEqual(['own']);
    expect(pictures).toHaveLength(1);
  });

  it('that is given twice at once stands once', async () => {
    const { list, id } = await opened();
    good(await list.addSent(id, [brought, brought]));
    const { sent, pictures, kase } = await dossier(list, id);
    expect([sent.length, pictures.length, kase.photos, kase.listing.photos.length]).toEqual([1, 1, [brought.read], 1]);
  });

  it('that is one more than a case holds leaves nothing of it there', async () => {
    const { list, id } = await opened();
    const many = Array.from({ length: mostSentPhotos + 1 }, (_, at): BroughtPhoto => {
      const photo: SentPhoto = { ...chat, id: `sent-${String(at).padStart(32, '0')}` };
      return { photo, read: photoRead(photo.id), pictures: [] };
    });
    good(await list.addSent(id, many));
    const { sent, kase } = await dossier(list, id);
    expect([sent.length, kase.photos]).toEqual([mostSentPhotos, many.slice(0, -1).map(({ read }) => read)]);
  });

  it('goes again with all that was kept of it', async () => {
    const { list, id } = await opened();
    good(await list.addSent(id, [brought]));
    good(await list.removeSent(id, chat.id));
    const { sent, pictures, kase } = await dossier(list, id);
    expect([sent, pictures, kase.photos, kase.listing.photos]).toEqual([[], [], [], []]);
  });

  it('goes with the look into a file and out of it, and is given to the next look', async () => {
    const { list, id } = await opened();
    good(await list.addSent(id, [brought]));
    const other = await testBench().open();
    expect(good(await other.importText(good(await list.exportText())))).toMatchObject({ added: 1, refused: [] });
    const earlier = good(await other.earlier(sampleCase().listing.url));
    expect(earlier?.sent).toEqual([{ ...brought, pictures: brought.pictures.slice(0, 1) }]);
  });

  it('stays when the case is kept with it, and with a reply', async () => {
    const { list, id } = await opened();
    const { listing } = sampleCase();
    const facts = { listing, photos: [brought.read], sent: [chat], corrections: [], makers: [] };
    const kase = buildCase({ ...facts, now: '2026-03-01T11:00:00.000Z' });
    good(await list.save(kase, [...brought.pictures.slice(0, 1)]));
    good(await list.addReply(id, 'Here is another photo.'));
    expect((await dossier(list, id)).sent).toEqual([{ sent: chat, photo: 1, picture }]);
  });
});
