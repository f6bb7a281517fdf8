// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { buildCase, lookAt, type SentPhoto } from '../../../src/case';
import { noAdjustment } from '../../../src/photo/adjustment-types';
import { fail, succeed } from '../../../src/problem';
import { mostPhotoBytes } from '../../../src/reader/photo/photo-limits';
import { type GivenPhoto, keptOfView } from '../../../src/ui/panel/sent-photos';
import type { SessionPorts } from '../../../src/ui/panel/session-ports';
import { AddSent } from '../../../src/ui/sent/AddSent';
import { givenPhoto, today } from '../../../src/ui/sent/given-photo';
import { readGiven } from '../../../src/ui/sent/read-given';
import { SentPhotos } from '../../../src/ui/sent/SentPhotos';
import { chooseLanguage } from '../../../src/words';
import { sampleCase } from '../watch/sample-case';
import { viewOf } from './sample-photos';
import { bytesOf, listingWith, never, pageOf, problem, sessionWith } from './session-for-test';

const chat: SentPhoto = { id: `sent-${'a'.repeat(32)}`, from: 'seller-chat', on: '2026-02-27' };
const given: GivenPhoto = { photo: chat, bytes: bytesOf('of the chat') };
const reallyBuilt: SessionPorts['buildCase'] = (facts) => buildCase(facts);

afterEach(() => {
  render(null, document.body);
  chooseLanguage('en');
});

describe('a photo that is given to an open case', () => {
  it('is read after the listing’s own and stands beside them, with its bytes for the bench', async () => {
    const { session, last, reads } = sessionWith(2, { buildCase: reallyBuilt });
    await session.read();
    await session.addSent([given]);
    expect(reads.map(({ id }) => id)).toEqual(['p1', 'p2', chat.id]);
    expect(last()).toMatchObject({ stage: { kind: 'done', read: 3, of: 3 }, sent: [chat] });
    expect(last().case?.listing.photos.map(({ id }) => id)).toEqual(['p1', 'p2', chat.id]);
    expect(last().files[chat.id]).toBe('blob:of the chat');
  });

  it('stays when the page is read again, is fetched from nowhere and read no second time', async () => {
    const { session, last, reads, fetched } = sessionWith(1, { buildCase: reallyBuilt });
    await session.read();
    await session.addSent([given]);
    await session.read();
    expect(last().case?.photos.map(({ photoId }) => photoId)).toEqual(['p1', chat.id]);
    expect(reads.filter(({ id }) => id === chat.id)).toHaveLength(1);
    expect(fetched).not.toContain(chat.id);
  });

  it('is read while a photo of the listing does not answer', async () => {
    const { session, last } = sessionWith(1, { fetchPhoto: () => never });
    session.read();
    await expect.poll(() => last().stage.kind).toBe('photos');
    await session.addSent([given]);
    expect(last().views[chat.id]?.read.state).toBe('read');
  });

  it('is tried once more where the reader itself failed, and then says why it is not read', async () => {
    const { session, last, reads } = sessionWith(0, { read: async () => fail(problem('reader-stopped')) });
    await session.read();
    await session.addSent([given]);
    expect(reads).toHaveLength(2);
    expect(last().views[chat.id]?.read).toMatchObject({ state: 'unread', problem: { code: 'reader-stopped' } });
  });

  it('is taken out again with all that was read of it', async () => {
    const { session, last } = sessionWith(1, { buildCase: reallyBuilt });
    await session.read();
    await session.addSent([given]);
    session.removeSent(chat.id);
    expect(last().sent).toEqual([]);
    expect(last().case?.photos.map(({ photoId }) => photoId)).toEqual(['p1']);
    expect(last().files[chat.id]).toBeUndefined();
    expect(last().removedSent).toEqual([chat.id]);
    await session.addSent([given]);
    expect(last()).toMatchObject({ sent: [chat], removedSent: [] });
  });

  it('does not follow to the page of another piece', async () => {
    const pages = [listingWith(1), { ...listingWith(1), url: 'https://attic-arcade.example/item/8' }];
    const { session, last } = sessionWith(1, {
      buildCase: reallyBuilt,
      readPage: () => pageOf(pages.shift() ?? listingWith(1))(),
    });
    await session.read();
    await session.addSent([given]);
    await session.read();
    expect(last().sent).toEqual([]);
    expect(last().case?.listing.photos.map(({ id }) => id)).toEqual(['p1']);
  });

  it('that is kept whole comes back with its bytes, for the bench', async () => {
    const kept = {
      ...keptOfView(chat, succeed(viewOf(chat.id, ['KV0915']))),
      file: { type: 'image/jpeg', bytes: new Uint8Array([1, 2]) },
    };
    const earlier = async () => ({ look: lookAt(sampleCase()), corrections: [], sent: [kept] });
    const { session, last, reads } = sessionWith(1, { buildCase: reallyBuilt, earlier });
    await session.read();
    expect(last().files[chat.id]).toBe('blob:AQI=');
    expect(reads.map(({ id }) => id)).toEqual(['p1']);
  });

  it('comes back with a kept case as it was read, without its bytes where they were not kept', async () => {
    const kept = keptOfView(
      chat,
      succeed({ ...viewOf(chat.id, ['KV0915']), thumbnail: 'data:image/webp;base64,AAAA' }),
    );
    const earlier = async () => ({ look: lookAt(sampleCase()), corrections: [], sent: [kept] });
    const { session, last, reads } = sessionWith(1, { buildCase: reallyBuilt, earlier });
    await session.read();
    expect(reads.map(({ id }) => id)).toEqual(['p1']);
    expect(last().views[chat.id]).toMatchObject({
      thumbnail: 'data:image/webp;base64,AAAA',
      crops: [{ lineId: `${chat.id}-line-1` }],
    });
    expect(last().case?.sent).toEqual([chat]);
    await session.addSent([given]);
    expect(last().files[chat.id]).toBe('blob:of the chat');
  });
});

describe('a photo that is given to a kept case', () => {
  it('is read by a fresh reader, and one that is not read is kept with why', async () => {
    const asked: unknown[] = [];
    const reader = {
      renew: async () => asked.push('fresh'),
      read: async (id: string, file: string, adjustment: unknown) => {
        asked.push([id, await (await fetch(file)).bytes(), adjustment]);
        return fail(problem('photo-damaged'));
      },
    };
    // A chat's picture under a wrong name: its bytes are those of a GIF of 2 by 1 pixels.
    const gif = new Uint8Array([...new TextEncoder().encode('GIF89a'), 2, 0, 1, 0]);
    const bytes = { ...bytesOf(btoa(String.fromCharCode(...gif))), mediaType: 'image/jpeg' };
    expect(await readGiven([{ photo: chat, bytes }], reader)).toMatchObject([
      {
        photo: chat,
        file: { type: 'image/gif', bytes: gif },
        read: { state: 'unread', photoId: chat.id, problem: { code: 'photo-damaged' } },
        pictures: [],
      },
    ]);
    expect(asked).toEqual(['fresh', [chat.id, gif, noAdjustment]]);
  });
});

describe('a file', () => {
  const said = { from: 'own', on: '2026-03-01' } as const;
  const file = (bytes: number[]) => new File([new Uint8Array(bytes)], 'a name.jpg', { type: 'image/jpeg' });

  it('is one photo however often it is given, and another one where a byte differs', async () => {
    const names = await Promise.all(
      [
        [1, 2],
        [1, 2],
        [1, 3],
      ].map(async (bytes) => await givenPhoto(file(bytes), said)),
    );
    const [a, b, c] = names.map((one) => (one.ok ? one.value.photo.id : one.problem.code));
    expect(a).toMatch(/^sent-[0-9a-f]{32}$/);
    expect([b === a, c === a]).toEqual([true, false]);
  });

  it('that is too large is refused under its name', async () => {
    const large = Object.defineProperty(file([1]), 'size', { value: mostPhotoBytes + 1 });
    expect(await givenPhoto(large, said)).toMatchObject({ problem: { code: 'photo-too-large', where: 'a name.jpg' } });
  });

  it('came on a day of the buyer’s own calendar', () => {
    expect(today(new Date(2026, 2, 1, 0, 30))).toBe('2026-03-01');
  });
});

describe('where photos are given', () => {
  it('a dropped photo goes with where it came from and when, as it was chosen', async () => {
    const taken: (readonly GivenPhoto[])[] = [];
    let came = 0;
    const add = <AddSent onGiven={async (photos) => void taken.push(photos)} onCame={() => void came++} />;
    act(() => render(add, document.body));
    const [from, on] = [document.querySelector('select')!, document.querySelector<HTMLInputElement>('[type=date]')!];
    act(() => {
      from.value = 'seller-mail';
      from.dispatchEvent(new Event('change', { bubbles: true }));
      on.value = '2026-01-31';
      on.dispatchEvent(new Event('input', { bubbles: true }));
    });
    const files = [new File([new Uint8Array([1])], 'a.jpg', { type: 'image/jpeg' })];
    document.dispatchEvent(Object.assign(new Event('drop'), { dataTransfer: { files } }));
    await expect.poll(() => taken.length).toBe(1);
    expect(taken[0]?.map(({ photo }) => [photo.from, photo.on])).toEqual([['seller-mail', '2026-01-31']]);
    expect(came).toBe(1);
  });

  it('each stands with its number, where it came from and when, in either language', () => {
    const sent = [{ sent: chat, photo: 3, picture: null }];
    render(<SentPhotos sent={sent} onRemove={() => {}} />, document.body);
    expect(document.body.textContent).toContain('Photo 3: sent by the seller in a chat, 27 February 2026');
    chooseLanguage('de');
    render(<SentPhotos sent={sent} />, document.body);
    expect(document.body.textContent).toContain('Foto 3: vom Verkäufer im Chat geschickt, 27. Februar 2026');
  });
});
