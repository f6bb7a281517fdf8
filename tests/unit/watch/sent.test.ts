import { describe, expect, it } from 'vitest';
import { buildCase, type SentPhoto } from '../../../src/case';
import { mostSentPhotos } from '../../../src/case/types';
import { type BroughtPhoto, caseOf, dossierOf, type WatchList } from '../../../src/watch';
import { photoRead } from '../../photo-read';
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
