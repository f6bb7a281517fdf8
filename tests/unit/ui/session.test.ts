import { describe, expect, it } from 'vitest';
import { correct, lookAt, type NewCorrection, typedCode } from '../../../src/case';
import { builtInMakers, type MakerFile } from '../../../src/maker';
import type { PhotoView } from '../../../src/message/protocol';
import { noAdjustment } from '../../../src/photo/adjustment-types';
import { fail, type Result, succeed } from '../../../src/problem';
import { photoBudget } from '../../../src/ui/panel/photo-budget';
import type { SessionPorts } from '../../../src/ui/panel/session-ports';
import { stageWords } from '../../../src/ui/parts/Progress';
import { photoRead } from '../../photo-read';
import { sampleCase } from '../watch/sample-case';
import { photoLink, viewOf } from './sample-photos';
import {
  bytesOf,
  came,
  captured,
  listingOf,
  listingWith,
  never,
  numbered,
  opened,
  problem,
  sessionWith,
  typed,
} from './session-for-test';

describe('the session of one tab', () => {
  it('goes from page to photos to a case, and says how far it is', async () => {
    const { session, states, last } = sessionWith(2);
    await session.read();
    const stages = states.map(({ stage }) =>
      stage.kind === 'photos' ? `${stage.done} of ${stage.of} done` : stage.kind,
    );
    expect([...new Set(stages)]).toEqual(['page', '0 of 2 done', '1 of 2 done', '2 of 2 done', 'done']);
    expect(last().stage).toEqual({ kind: 'done', read: 2, of: 2, late: 0 });
    expect(last().case?.photos.map(({ photoId }) => photoId)).toEqual(['p1', 'p2']);
  });

  it('fills in as results come: the case stands before the first photo and grows with each', async () => {
    const { session, built } = sessionWith(2);
    await session.read();
    expect(built.map(({ photos }) => photos.length)).toEqual([0, 1, 2]);
  });

  it('judges what was read anew when the maker files changed, and reads no photo again', async () => {
    const files: MakerFile[][] = [[], builtInMakers];
    const { session, built, reads } = sessionWith(2, { makers: async () => files.shift() ?? [] });
    await session.read();
    const before = built.length;
    await session.makersChanged();
    expect(built.slice(before).map(({ makers, photos }) => [makers.length, photos.length])).toEqual([
      [builtInMakers.length, 2],
    ]);
    expect(reads.map(({ id }) => id)).toEqual(['p1', 'p2']);
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
      fetchPhoto: async (_tab, id) => (id === 'p2' ? fail(problem('photo-missing')) : succeed(bytesOf(id))),
    });
    await session.read();
    expect(last().stage).toEqual({ kind: 'done', read: 2, of: 3, late: 0 });
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
    const { session, last, reads } = sessionWith(2, {
      read: (photoId) =>
        reads.length === 1 ? new Promise((resolve) => (letGo = resolve)) : Promise.resolve(succeed(viewOf(photoId))),
    });
    const running = session.read();
    await expect.poll(() => reads.length).toBe(1);
    session.stop();
    letGo(succeed(viewOf('p1')));
    await running;
    expect(last().stage).toEqual({ kind: 'stopped', read: 0, of: 2 });
    expect(last().views).toEqual({});
    await session.goOn();
    expect(last().stage).toEqual({ kind: 'done', read: 2, of: 2, late: 0 });
  });

  it('decodes a typed code once, and takes it back', async () => {
    const { session, last } = sessionWith(0);
    await session.read();
    session.typeCode(null, ' KV0915 ');
    session.typeCode(null, 'KV0915');
    session.typeCode(null, '   ');
    expect(last().case?.corrections).toEqual([typed]);
    session.undo(typed.id);
    expect(last().case?.corrections).toEqual([]);
  });

  it('keeps what it read when the tab moves on, and says whether the new page may be read', async () => {
    const { session, last } = sessionWith(1, { mayRead: async () => false });
    await session.read();
    session.pageLeft();
    await session.pageArrived();
    expect(last()).toMatchObject({ moved: 'lapsed', stage: { kind: 'done' } });
    expect(last().case).not.toBeNull();
  });

  it('reads the page that the tab comes to when it goes on while it is read', async () => {
    const pages = ['old', 'new', 'newest'];
    let left: (() => void) | null = null;
    const { session, last } = sessionWith(0, {
      readPage: async () => {
        const page = pages.shift() ?? 'none';
        if (page !== 'newest') left?.();
        const address = `https://attic-arcade.example/${page}`;
        return page === 'old'
          ? fail(problem('no-answer'))
          : succeed({ listing: { ...listingWith(0), url: address }, incognito: false, picks: [] });
      },
    });
    left = session.pageLeft;
    await session.read();
    expect(last()).toMatchObject({ stage: { kind: 'done' }, moved: 'no' });
    expect(last().listing?.url).toBe('https://attic-arcade.example/newest');
  });

  it('reads a page that goes on without end as it stands, and says that it has changed', async () => {
    let readings = 0;
    let left: (() => void) | null = null;
    const { session, last } = sessionWith(1, {
      readPage: async () => {
        readings += 1;
        left?.();
        return succeed({ listing: listingWith(1), incognito: false, picks: [] });
      },
    });
    left = session.pageLeft;
    await session.read();
    expect(readings).toBe(4);
    expect(last()).toMatchObject({ stage: { kind: 'done', read: 1, of: 1 }, moved: 'readable' });
  });

  it('reads again for a click that came while the page was asked for without the right to it', async () => {
    let granted = false;
    const { session, last } = sessionWith(0, {
      readPage: async () => {
        if (granted) return succeed({ listing: listingWith(0), incognito: false, picks: [] });
        granted = true;
        session.renewed(opened + 10);
        return fail(problem('right-lapsed'));
      },
    });
    await session.read();
    await expect.poll(() => last().stage.kind).toBe('done');
  });

  it('lets its photos go when its tab is gone', async () => {
    const dropped: string[] = [];
    const { session } = sessionWith(2, { dropFile: (address) => dropped.push(address) });
    await session.read();
    session.end();
    expect(dropped.sort()).toEqual(['blob:p1', 'blob:p2']);
  });

  it('builds no case of a page that is no listing', async () => {
    const { session, last, built } = sessionWith(0, {
      readPage: async () => succeed({ listing: listingOf(numbered(3), { kind: 'list' }), incognito: false, picks: [] }),
    });
    await session.read();
    expect(last()).toMatchObject({ stage: { kind: 'done' }, case: null });
    expect(built).toEqual([]);
  });

  it('opens the watch list while the page is read, and closes it whatever the page gives', async () => {
    const { session, lists } = sessionWith(0, {
      async readPage() {
        lists.push('page read');
        return succeed({ listing: listingWith(0), incognito: false, picks: [] });
      },
    });
    await session.read();
    expect(lists).toEqual(['opened', 'page read', 'closed']);
    const refused = sessionWith(0, { readPage: async () => fail(problem('right-lapsed')) });
    await refused.session.read();
    expect(refused.lists).toEqual(['opened', 'closed']);
  });

  it('asks for the look before in an ordinary window, and tells the port of a private one', async () => {
    const asked: boolean[] = [];
    const { session } = sessionWith(0, {
      readPage: async () => succeed({ listing: listingWith(0), incognito: true, picks: [] }),
      earlier: async (_url, incognito) => {
        asked.push(incognito);
        return null;
      },
    });
    await session.read();
    expect(asked).toEqual([true]);
  });
});

describe('the photos of a listing', () => {
  it('says what is read now and how many come after it, the likeliest photo of the stamp first', async () => {
    const { session, states } = sessionWith(3, { likelihoods: { p2: 0.4 } });
    await session.read();
    const said = states.flatMap(({ stage }) =>
      stage.kind === 'photos' ? [stageWords(stage, { all: 0, small: 0 })] : [],
    );
    expect([...new Set(said)]).toEqual([
      'Looking for the photo of the stamp, 0 of 3 done…',
      'Reading photo 2, the likeliest to show the stamp, then 2 more; 0 of 3 done…',
      'Reading photos, 1 of 3 done…',
      'Reading photo 1, then 1 more; 1 of 3 done…',
      'Reading photos, 2 of 3 done…',
      'Reading photo 3; 2 of 3 done…',
      'Reading photos, 3 of 3 done…',
    ]);
  });

  it('are read in the order that both looks tell together, the closer one at the likelier half', async () => {
    const looks = { likelihoods: { p1: 0.5, p2: 0.6, p3: 0.4 }, closerLooks: { p1: 0.9, p2: 0.3, p3: 1 } };
    const { session, reads } = sessionWith(4, looks);
    await session.read();
    // The third is not of the likelier half: nobody looked at it again.
    expect(reads.map(({ id }) => id)).toEqual(['p1', 'p2', 'p3', 'p4']);
  });

  it('are all glanced at before one is read, and the likeliest is read first', async () => {
    const { session, reads, last } = sessionWith(5, { likelihoods: { p2: 0.4, p4: 0.9 } });
    await session.read();
    expect(reads.map(({ id }) => id)).toEqual(['p4', 'p2', 'p1', 'p3', 'p5']);
    expect(last().case?.photos.map(({ photoId }) => photoId)).toEqual(['p1', 'p2', 'p3', 'p4', 'p5']);
  });

  it('give the same case in whatever order they come', async () => {
    const caseOf = async (order: readonly number[]) => {
      const { session, last, clock } = sessionWith(4, {
        likelihoods: { p3: 0.8 },
        fetchPhoto: (_tab, id) =>
          new Promise((resolve) =>
            clock.wake((order[Number(id.slice(1)) - 1] ?? 0) * 100, () => resolve(succeed(bytesOf(id)))),
          ),
      });
      const running = session.read();
      await clock.pass(2000);
      await running;
      return last().case;
    };
    expect(await caseOf([4, 3, 2, 1])).toEqual(await caseOf([1, 2, 3, 4]));
  });

  it('are read two at once where the reader takes two, each as soon as one of them is done', async () => {
    const takes: Record<string, number> = { p1: 900, p2: 300, p3: 300, p4: 300 };
    const { session, reads, last, clock } = sessionWith(4, {
      atOnce: 2,
      read: (id) => new Promise((resolve) => clock.wake(takes[id] ?? 0, () => resolve(succeed(viewOf(id))))),
    });
    const running = session.read();
    await clock.pass(299);
    expect(reads.map(({ id }) => id)).toEqual(['p1', 'p2']);
    expect(last().stage).toEqual({ kind: 'photos', done: 0, of: 4, now: { photo: 2, likely: false } });
    await clock.pass(1);
    expect(reads.map(({ id }) => id)).toEqual(['p1', 'p2', 'p3']);
    expect(last().stage).toEqual({ kind: 'photos', done: 1, of: 4, now: { photo: 3, likely: false } });
    await clock.pass(599);
    expect(last().stage).toMatchObject({ kind: 'photos', done: 2 });
    await clock.pass(1);
    await running;
    expect(last().stage).toEqual({ kind: 'done', read: 4, of: 4, late: 0 });
    expect(last().case?.photos.map(({ photoId }) => photoId)).toEqual(['p1', 'p2', 'p3', 'p4']);
  });

  it('that the reader failed on are read again alone, when none is at work any more', async () => {
    const times: Record<string, number> = {};
    const made = sessionWith(3, {
      atOnce: 2,
      read: (id) => {
        times[id] = (times[id] ?? 0) + 1;
        const view = id === 'p1' && times[id] === 1 ? fail(problem('reader-stopped')) : succeed(viewOf(id));
        return new Promise((resolve) => made.clock.wake(100, () => resolve(view)));
      },
    });
    const running = made.session.read();
    await made.clock.pass(199);
    expect(made.reads.map(({ id }) => id)).toEqual(['p1', 'p2', 'p3']);
    expect(made.renewed.times).toBe(1);
    await made.clock.pass(1);
    expect(made.reads.map(({ id }) => id)).toEqual(['p1', 'p2', 'p3', 'p1']);
    expect(made.renewed.times).toBe(2);
    await made.clock.pass(100);
    await running;
    expect(made.last().stage).toEqual({ kind: 'done', read: 3, of: 3, late: 0 });
  });

  it('keep the reader at work while what it read is judged', async () => {
    const order: string[] = [];
    const { session } = sessionWith(2, {
      read: async (id) => {
        order.push(`reads ${id}`);
        return succeed(viewOf(id));
      },
      buildCase: (facts) => {
        order.push(`judges ${facts.photos.length}`);
        return { ...sampleCase(), listing: facts.listing, photos: facts.photos };
      },
    });
    await session.read();
    expect(order).toEqual(['judges 0', 'reads p1', 'reads p2', 'judges 1', 'judges 2']);
  });

  it('end in the time of nine where three of twelve never answer, and say that those did not', async () => {
    const silent = new Set(['p1', 'p5', 'p9']);
    /** Each photo takes half a second to read. */
    const timed = (photos: number, answers: (id: string) => boolean) => {
      const made = sessionWith(photos, {
        fetchPhoto: (_tab, id) => (answers(id) ? Promise.resolve(succeed(bytesOf(id))) : never),
        read: (id) => new Promise((resolve) => made.clock.wake(500, () => resolve(succeed(viewOf(id))))),
      });
      return made;
    };
    const nine = timed(9, () => true);
    const twelve = timed(12, (id) => !silent.has(id));
    const running = [nine.session.read(), twelve.session.read()];
    for (const { clock } of [nine, twelve]) await clock.pass(4499);
    expect(nine.last().stage).toMatchObject({ kind: 'photos', done: 8 });
    expect(twelve.last().stage).toMatchObject({ kind: 'photos', done: 8 });
    for (const { clock } of [nine, twelve]) await clock.pass(1);
    expect(nine.last().stage).toEqual({ kind: 'done', read: 9, of: 9, late: 0 });
    expect(twelve.last().stage).toEqual({ kind: 'done', read: 9, of: 12, late: 3 });
    await twelve.clock.pass(60_000);
    await Promise.all(running);
    expect(twelve.last().stage).toEqual({ kind: 'done', read: 9, of: 12, late: 0 });
    const unread = twelve.last().case?.photos.flatMap((photo) => (photo.state === 'unread' ? [photo] : [])) ?? [];
    expect(unread.map(({ photoId, problem: { code, data } }) => [photoId, code, data])).toEqual(
      [...silent].map((id) => [id, 'photo-late', { seconds: 35 }]),
    );
  });

  it('are still taken in when they come late', async () => {
    const { session, last, clock } = sessionWith(2, {
      fetchPhoto: (_tab, id) =>
        id === 'p1'
          ? new Promise((resolve) => clock.wake(9_000, () => resolve(succeed(bytesOf(id)))))
          : Promise.resolve(succeed(bytesOf(id))),
    });
    const running = session.read();
    await clock.pass(8_999);
    expect(last().stage).toEqual({ kind: 'done', read: 1, of: 2, late: 1 });
    await clock.pass(1);
    await running;
    expect(last().stage).toEqual({ kind: 'done', read: 2, of: 2, late: 0 });
  });

  it('have one deadline together: a listing of photos that never answer ends', async () => {
    const { session, last, clock } = sessionWith(photoBudget, { fetchPhoto: () => never });
    const running = session.read();
    await clock.pass(60_000);
    await running;
    expect(last().stage).toEqual({ kind: 'done', read: 0, of: photoBudget, late: 0 });
  });

  it('cost nothing when the reader dies: each is tried again by itself, once, by a fresh one', async () => {
    let deaths = 0;
    const { session, last, reads, renewed } = sessionWith(3, {
      read: async (id) => (id === 'p1' && deaths++ === 0 ? fail(problem('reader-stopped')) : succeed(viewOf(id))),
    });
    await session.read();
    expect(last().stage).toEqual({ kind: 'done', read: 3, of: 3, late: 0 });
    expect(reads.map(({ id }) => id)).toEqual(['p1', 'p2', 'p3', 'p1']);
    expect(renewed.times).toBe(2);
  });

  it('that end the reader every time are given up after the second, and those that are no photo at once', async () => {
    const { session, last, reads } = sessionWith(2, {
      read: async (id) => fail(problem(id === 'p1' ? 'reader-stopped' : 'photo-not-image')),
    });
    await session.read();
    expect(last().stage).toEqual({ kind: 'done', read: 0, of: 2, late: 0 });
    expect(reads.map(({ id }) => id)).toEqual(['p1', 'p2', 'p1']);
  });
});

describe('a listing that is read again', () => {
  const turned = { turn: 90, invert: false, crop: null } as const;

  it('keeps typed codes and what was done by hand, and fetches and reads nothing again', async () => {
    const { session, last, fetched, reads } = sessionWith(2, { read: async (id) => succeed(viewOf(id, ['KV0915'])) });
    await session.read();
    session.typeCode(null, 'KV0915');
    await session.readAgain('p2', turned);
    const [before, fetches, readings] = [last(), fetched.length, reads.length];
    for (const again of [session.read, session.readFields]) {
      await again();
      expect(last().stage).toEqual({ kind: 'done', read: 2, of: 2, late: 0 });
      expect(last().corrections).toEqual([
        typed,
        { id: 'hand-2', of: 'part', photo: { url: numbered(2)[1]?.url, hash: null }, to: turned },
      ]);
      expect(last().views).toEqual(before.views);
      expect(last().files).toEqual(before.files);
    }
    expect([fetched.length, reads.length]).toEqual([fetches, readings]);
  });

  it('finds what was set right in the saved case, and reads a photo again as it was read then', async () => {
    const part = { of: 'part', photo: { url: numbered(2)[1]?.url ?? '', hash: null }, to: turned } as const;
    const corrections = correct(correct([], typedCode('KV0915')), part);
    const look = lookAt(sampleCase());
    const { session, last, reads } = sessionWith(2, { earlier: async () => ({ look, corrections }) });
    await session.read();
    expect(last().case?.corrections).toEqual(corrections);
    expect(reads).toEqual([
      { id: 'p1', adjustment: noAdjustment },
      { id: 'p2', adjustment: turned },
    ]);
    session.undo('hand-1');
    await session.read();
    expect(last().case?.corrections.map(({ id }) => id)).toEqual(['hand-2']);
  });

  it('knows a photo by what it shows where the page made its address anew, and reads its part', async () => {
    const part = {
      of: 'part',
      photo: { url: 'https://attic-arcade.example/old.jpg', hash: 'f0e1d2c3b4a59687' },
      to: turned,
    };
    const { session, reads } = sessionWith(2, {
      earlier: async () => ({ look: lookAt(sampleCase()), corrections: correct([], part as NewCorrection) }),
      read: async (id) =>
        succeed({ ...viewOf(id), read: photoRead(id, { hash: id === 'p2' ? part.photo.hash : '1'.repeat(16) }) }),
    });
    await session.read();
    expect(reads).toEqual([
      { id: 'p1', adjustment: noAdjustment },
      { id: 'p2', adjustment: noAdjustment },
      { id: 'p2', adjustment: turned },
    ]);
  });

  it('reads a photo whole again when its part is taken back', async () => {
    const { session, last, reads } = sessionWith(1);
    await session.read();
    await session.readAgain('p1', turned);
    await session.undo('hand-1');
    expect(last().corrections).toEqual([]);
    expect(reads.map(({ adjustment }) => adjustment)).toEqual([noAdjustment, turned, noAdjustment]);
  });

  it('stays on the screen while the page is read', async () => {
    const { session, states } = sessionWith(1);
    await session.read();
    const from = states.length;
    await session.read();
    expect(states[from]?.stage).toEqual({ kind: 'page' });
    expect(states[from]?.case).not.toBeNull();
  });

  it('fetches and reads what is new, what was not had, and what the page was pictured for', async () => {
    const listings = [numbered(3), [...numbered(3), photoLink('p4', '4')]];
    let answers = 0;
    const { session, last, fetched, reads } = sessionWith(3, {
      readPage: async () => succeed({ listing: listingOf(listings[answers++] ?? []), incognito: false, picks: [] }),
      fetchPhoto: async (_tab, id) => {
        if (id === 'p1') return answers === 1 ? fail(problem('photo-unreachable')) : succeed(bytesOf(id));
        return succeed(id === 'p2' ? bytesOf(`${id} ${answers}`, answers === 1 ? captured : came) : bytesOf(id));
      },
    });
    await session.read();
    await session.readAgain('p2', turned);
    fetched.length = 0;
    reads.length = 0;
    await session.read();
    expect(fetched).toEqual(['p1', 'p2', 'p4']);
    expect(reads).toEqual([
      { id: 'p1', adjustment: { turn: 0, invert: false, crop: null } },
      { id: 'p2', adjustment: turned },
      { id: 'p4', adjustment: { turn: 0, invert: false, crop: null } },
    ]);
    expect(last().stage).toEqual({ kind: 'done', read: 4, of: 4, late: 0 });
  });

  it('reads nothing again where a new address gives the same bytes', async () => {
    let turn = 0;
    const { session, last, fetched, reads } = sessionWith(1, {
      readPage: async () =>
        succeed({ listing: listingOf([photoLink('p1', `made-${turn++}`)]), incognito: false, picks: [] }),
    });
    await session.read();
    await session.read();
    expect(fetched).toEqual(['p1', 'p1']);
    expect(reads.length).toBe(1);
    expect(last().stage).toEqual({ kind: 'done', read: 1, of: 1, late: 0 });
  });

  it('finds typed codes again after the page was reloaded, and after its right had lapsed', async () => {
    let lapsed = false;
    const { session, last, reads } = sessionWith(1, {
      readPage: async () =>
        lapsed ? fail(problem('right-lapsed')) : succeed({ listing: listingWith(1), incognito: false, picks: [] }),
    });
    await session.read();
    session.typeCode(null, 'KV0915');
    session.pageLeft();
    await session.pageArrived();
    lapsed = true;
    await session.read();
    expect(last()).toMatchObject({ stage: { kind: 'lapsed' }, case: null, corrections: [] });
    lapsed = false;
    await session.read();
    expect(last().corrections).toEqual([typed]);
    expect(reads.length).toBe(1);
  });

  it('is another one where the address is another: nothing goes over, and nothing of the first is shown beside it', async () => {
    let page = 0;
    const { session, last, states, reads } = sessionWith(1, {
      readPage: async () =>
        succeed({
          listing: listingOf(numbered(1), { url: `https://attic-arcade.example/piece-${page++}` }),
          incognito: false,
          picks: [],
        }),
    });
    await session.read();
    session.typeCode(null, 'KV0915');
    session.pageLeft();
    const from = states.length;
    await session.read();
    expect(states[from]).toMatchObject({ stage: { kind: 'page' }, case: null, listing: null });
    expect(last().corrections).toEqual([]);
    expect(reads.length).toBe(2);
  });
});
