import { describe, expect, it } from 'vitest';
import type { PhotoView } from '../../../src/bridge/protocol';
import { fail, type Result, succeed } from '../../../src/problem';
import { createSession, photoBudget, type SessionPorts } from '../../../src/ui/panel/session';
import type { PanelState } from '../../../src/ui/panel/state';
import { sampleCase } from '../watch/sample-case';

const problem = (code: string) => ({ code, where: 'test', what: `${code} happened`, remedy: 'Nothing.' });

function listingWith(photos: number) {
  const { listing } = sampleCase();
  return {
    ...listing,
    photos: Array.from({ length: photos }, (_, index) => ({
      id: `p${index + 1}`,
      url: `https://attic-arcade.example/${index + 1}.jpg`,
      alternatives: [],
      width: null,
      height: null,
      alt: '',
      origins: [],
    })),
  };
}

const viewOf = (photoId: string): PhotoView => ({
  read: { state: 'read', photoId, width: 9, height: 9, lines: [], printed: [], hash: '0'.repeat(16), tooWeak: false },
  thumbnail: null,
  crops: [],
});

const came = { way: 'page', fullSize: true } as const;

/** When the sessions of these tests read, milliseconds since 1970. */
const opened = Date.parse('2026-03-01T10:00:00.000Z');

/** A session whose ports answer at once unless the test replaces one; every published state is kept. */
function sessionWith(photos: number, replaced: Partial<SessionPorts> = {}) {
  const states: PanelState[] = [];
  const built: Parameters<SessionPorts['buildCase']>[0][] = [];
  const ports: SessionPorts = {
    readPage: async () => succeed({ listing: listingWith(photos), incognito: false, picks: [] }),
    fetchPhoto: async (_tab, id) => succeed({ base64: id, mediaType: 'image/jpeg', came }),
    reader: { read: async (photoId) => succeed(viewOf(photoId)), renew: async () => undefined },
    makers: async () => [],
    buildCase: (facts) => {
      built.push(facts);
      return { ...sampleCase(), photos: facts.photos, typedCodes: facts.typedCodes };
    },
    previousLook: async () => null,
    mayRead: async () => true,
    now: () => new Date(opened).toISOString(),
    keepFile: ({ base64 }) => `blob:${base64}`,
    dropFile: () => undefined,
    ...replaced,
  };
  const session = createSession(1, ports, (state) => states.push(state));
  return { session, states, built, last: () => states.at(-1) as PanelState };
}

describe('the session of one tab', () => {
  it('goes from page to photos to a case, and says which photo it reads', async () => {
    const { session, states, last } = sessionWith(2);
    await session.read();
    const stages = states.map(({ stage }) =>
      stage.kind === 'photos' ? `photo ${stage.at} of ${stage.of}` : stage.kind,
    );
    expect([...new Set(stages)]).toEqual(['page', 'photo 1 of 2', 'photo 2 of 2', 'done']);
    expect(last().stage).toEqual({ kind: 'done', read: 2, of: 2 });
    expect(last().case?.photos.map(({ photoId }) => photoId)).toEqual(['p1', 'p2']);
  });

  it('fills in as results come: the case stands before the first photo and grows with each', async () => {
    const { session, built } = sessionWith(2);
    await session.read();
    expect(built.map(({ photos }) => photos.length)).toEqual([0, 1, 2, 2]);
  });

  it('says that the right has lapsed, and reads after the click that renews it', async () => {
    let granted = false;
    const readPage = async (): ReturnType<SessionPorts['readPage']> =>
      granted ? succeed({ listing: listingWith(0), incognito: false, picks: [] }) : fail(problem('right-lapsed'));
    const { session, last } = sessionWith(0, { readPage });
    await session.read();
    expect(last().stage).toEqual({ kind: 'lapsed' });
    granted = true;
    session.renewed(opened - 100);
    await expect.poll(() => last().stage.kind).toBe('done');
  });

  it('reads once for the click that opened it, however late its news, and again for the next', async () => {
    let readings = 0;
    const readPage = async (): ReturnType<SessionPorts['readPage']> => {
      readings++;
      return succeed({ listing: listingWith(0), incognito: false, picks: [] });
    };
    const { session, last } = sessionWith(0, { readPage });
    await session.read();
    session.renewed(opened - 100);
    expect(last().stage.kind).toBe('done');
    expect(readings).toBe(1);
    session.renewed(opened + 5000);
    await expect.poll(() => last().stage.kind).toBe('done');
    expect(readings).toBe(2);
  });

  it('goes on past a photo that did not arrive, and carries the reason into the case', async () => {
    const { session, last } = sessionWith(3, {
      fetchPhoto: async (_tab, id) =>
        id === 'p2' ? fail(problem('photo-missing')) : succeed({ base64: id, mediaType: 'image/jpeg', came }),
    });
    await session.read();
    expect(last().stage).toEqual({ kind: 'done', read: 2, of: 3 });
    expect(last().case?.photos[1]).toEqual({ state: 'unread', photoId: 'p2', problem: problem('photo-missing') });
  });

  it('carries the way that a photo came into the case, also after it was read again by hand', async () => {
    const copy = { way: 'capture', fullSize: false, part: false, largest: { width: 1200, height: 900 } } as const;
    const { session, last } = sessionWith(2, {
      fetchPhoto: async (_tab, id) => succeed({ base64: id, mediaType: 'image/png', came: id === 'p1' ? copy : came }),
    });
    await session.read();
    expect(last().case?.photos).toMatchObject([{ came: copy }, { came }]);
    await session.readAgain('p1', { turn: 90, invert: false, crop: null });
    expect(last().case?.photos).toMatchObject([{ came: copy }, { came }]);
  });

  it('names the photos beyond its budget as not read', async () => {
    const { session, last } = sessionWith(photoBudget + 2);
    await session.read();
    const over = last().case?.photos.filter(({ state }) => state === 'unread') ?? [];
    expect(over.map(({ photoId }) => photoId)).toEqual([`p${photoBudget + 1}`, `p${photoBudget + 2}`]);
  });

  it('stops where the user says so, drops what comes late, and goes on with the rest', async () => {
    let letGo = (_view: Result<PhotoView>) => {};
    let reads = 0;
    const { session, last } = sessionWith(2, {
      reader: {
        renew: async () => undefined,
        read: (photoId) => {
          reads++;
          return reads === 1 ? new Promise((resolve) => (letGo = resolve)) : Promise.resolve(succeed(viewOf(photoId)));
        },
      },
    });
    const running = session.read();
    await expect.poll(() => reads).toBe(1);
    session.stop();
    letGo(succeed(viewOf('p1')));
    await running;
    expect(last().stage).toEqual({ kind: 'stopped', read: 0, of: 2 });
    expect(last().views).toEqual({});
    await session.goOn();
    expect(last().stage).toEqual({ kind: 'done', read: 2, of: 2 });
  });

  it('decodes a typed code once, and takes it back', async () => {
    const { session, last } = sessionWith(0);
    await session.read();
    session.typeCode(null, ' KV0915 ');
    session.typeCode(null, 'KV0915');
    session.typeCode(null, '   ');
    expect(last().case?.typedCodes).toEqual([{ photoId: null, code: 'KV0915' }]);
    session.removeTyped('KV0915');
    expect(last().case?.typedCodes).toEqual([]);
  });

  it('keeps what it read when the tab moves on, and says whether the new page may be read', async () => {
    const { session, last } = sessionWith(1, { mayRead: async () => false });
    await session.read();
    session.pageLeft();
    await session.pageArrived();
    expect(last()).toMatchObject({ moved: 'lapsed', stage: { kind: 'done' } });
    expect(last().case).not.toBeNull();
  });

  it('builds no case of a page that is no listing', async () => {
    const { session, last, built } = sessionWith(0, {
      readPage: async () => succeed({ listing: { ...listingWith(3), kind: 'list' }, incognito: false, picks: [] }),
    });
    await session.read();
    expect(last()).toMatchObject({ stage: { kind: 'done' }, case: null });
    expect(built).toEqual([]);
  });

  it('asks for the look before in an ordinary window, and tells the port of a private one', async () => {
    const asked: boolean[] = [];
    const { session } = sessionWith(0, {
      readPage: async () => succeed({ listing: listingWith(0), incognito: true, picks: [] }),
      previousLook: async (_url, incognito) => {
        asked.push(incognito);
        return null;
      },
    });
    await session.read();
    expect(asked).toEqual([true]);
  });
});
