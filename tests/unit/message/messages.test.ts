import { beforeEach, describe, expect, expectTypeOf, it, vi } from 'vitest';

type Listener = (value: unknown, sender: object, reply: (answer: unknown) => void) => true | undefined;
const listeners = vi.hoisted(() => new Set<Listener>());
vi.mock('../../../src/browser/api', () => ({
  browser: {
    runtime: {
      id: 'tellstamp',
      getURL: (path: string) => `chrome-extension://tellstamp/${path}`,
      onMessage: {
        addListener: (listener: Listener) => listeners.add(listener),
        removeListener: (listener: Listener) => listeners.delete(listener),
      },
    },
  },
}));

import { answer, type Handlers } from '../../../src/message/answer';
import { answerInPage } from '../../../src/message/answer-in-page';
import type { OutputOf } from '../../../src/message/protocol';
import { receive } from '../../../src/message/receive';
import { type MessageName, type Part, routes } from '../../../src/message/routes';
import type { send, sendToPage } from '../../../src/message/send';
import { partOf, type SendingPart } from '../../../src/message/sender';
import { type Result, succeed } from '../../../src/problem';

const own = 'chrome-extension://tellstamp/';
const shop = 'https://attic-arcade.example/item/7';
const tab = { id: 3 } as chrome.tabs.Tab;
const senders = {
  panel: { id: 'tellstamp', url: `${own}sidepanel.html?tab=3` },
  'full-page': { id: 'tellstamp', url: `${own}watchlist.html#photo`, tab },
  reader: { id: 'tellstamp', url: `${own}reader.html` },
  background: { id: 'tellstamp', url: `${own}background.js` },
  page: { id: 'tellstamp', url: shop, tab },
} as const satisfies Record<SendingPart, object>;

/** What the listeners answer to a message; null when none takes it. */
function deliver(to: string, name: string, input: unknown, sender: object): Promise<unknown> {
  return new Promise((resolve) => {
    const taken = [...listeners].map((listen) => listen({ tellstamp: 1, to, name, input }, sender, resolve));
    if (!taken.includes(true)) resolve(null);
  });
}

beforeEach(() => listeners.clear());

const done = async () => succeed({});
const page: Handlers<'page'> = {
  'listing.read': async () => succeed({} as OutputOf<'listing.read'>),
  'page.stands': async () => succeed({ stands: true }),
  'photo.fetchInPage': async () => succeed({ base64: '', mediaType: '' }),
};
const pointing: Handlers<'pointing'> = { 'field.pick': async () => succeed(null), 'field.endPick': done };
const reader: Handlers<'reader'> = {
  'photo.glance': async () => succeed({ likelihood: 0.5 }),
  'photo.read': async () => succeed({} as OutputOf<'photo.read'>),
  'reader.renew': done,
};
const signal = new AbortController().signal;

describe('a part answers exactly its own messages, or does not compile', () => {
  it('each set of handlers has these names and no others', () => {
    expectTypeOf<keyof Handlers<'background'>>().toEqualTypeOf<
      'page.read' | 'page.mayRead' | 'photo.fetch' | 'reader.open'
    >();
    expectTypeOf<keyof Handlers<'panel'>>().toEqualTypeOf<'tab.granted'>();
    expectTypeOf<keyof Handlers<'reader'>>().toEqualTypeOf<'photo.glance' | 'photo.read' | 'reader.renew'>();
    expectTypeOf<keyof Handlers<'page'>>().toEqualTypeOf<'listing.read' | 'page.stands' | 'photo.fetchInPage'>();
    expectTypeOf<keyof Handlers<'pointing'>>().toEqualTypeOf<'field.pick' | 'field.endPick'>();
    expectTypeOf<keyof Handlers<'shown-photo'>>().toEqualTypeOf<'photo.show' | 'photo.stands' | 'photo.unshow'>();
  });

  it('a missing, misspelt or foreign handler is an error of types, in the page as elsewhere', () => {
    const { 'field.endPick': endPick, ...withoutEnd } = pointing;
    // @ts-expect-error: the script for pointing has to end a pick as well
    answerInPage('pointing', withoutEnd, signal);
    // @ts-expect-error: the name is misspelt
    answerInPage('pointing', { ...withoutEnd, 'field.endPik': endPick }, signal);
    // @ts-expect-error: another script shows photos
    answerInPage('page', { ...page, 'photo.show': pointing['field.endPick'] }, signal);
    // @ts-expect-error: nothing is answered
    receive('background', {});
    // @ts-expect-error: the panel has a message of its own
    receive('panel', { 'tab.grantd': done });
    const { 'photo.glance': _glance, ...withoutGlance } = reader;
    // @ts-expect-error: the reader has to glance as well
    receive('reader', withoutGlance);
    // @ts-expect-error: a page's script carries no schemas
    receive('page', page);
    expect(listeners.size).toBe(7);
  });

  it('what a handler is given and gives is the message’s own', () => {
    expectTypeOf<Parameters<Handlers<'pointing'>['field.pick']>[0]['invite']>().toEqualTypeOf<string>();
    expectTypeOf<ReturnType<Handlers<'reader'>['photo.glance']>>().toEqualTypeOf<
      Promise<Result<{ likelihood: number }>>
    >();
    // @ts-expect-error: a glance gives a likelihood
    const wrong: Handlers<'reader'>['photo.glance'] = async () => succeed({ likely: 1 });
    expect(wrong).toBeTypeOf('function');
  });

  it('a message to a page names its tab, any other none', () => {
    expectTypeOf<'listing.read'>().not.toExtend<Parameters<typeof send>[0]>();
    expectTypeOf<'photo.show'>().toExtend<Parameters<typeof sendToPage>[1]>();
    expectTypeOf<'photo.read'>().not.toExtend<Parameters<typeof sendToPage>[1]>();
    expectTypeOf<'photo.read'>().toExtend<Parameters<typeof send>[0]>();
  });
});

describe('who sent a message', () => {
  it.each([
    ['panel', senders.panel],
    ['panel', { ...senders.panel, tab }],
    ['reader', senders.reader],
    ['background', senders.background],
    ['background', { id: 'tellstamp' }],
    ['background', { id: 'tellstamp', origin: own.slice(0, -1) }],
    ['background', { id: 'tellstamp', url: `${own}_generated_background_page.html` }],
    ['page', senders.page],
    ['page', { id: 'tellstamp', url: 'about:blank', tab }],
    ['page', { id: 'tellstamp', tab }],
    ['page', { id: 'tellstamp', url: `${own.slice(0, -1)}.attic-arcade.example/sidepanel.html`, tab }],
    [null, { id: 'another', url: senders.panel.url }],
    [null, { url: senders.panel.url }],
    [null, { id: 'tellstamp', url: shop }],
    ['full-page', senders['full-page']],
    [null, { id: 'tellstamp', url: `${own}elsewhere/watchlist.html`, tab }],
    [null, { id: 'tellstamp', url: `${own}background.js`, tab }],
    [null, { id: 'tellstamp', url: `${own}elsewhere/sidepanel.html` }],
  ] as const)('%s: %j', (part, sender) => {
    expect(partOf(sender)).toBe(part);
  });
});

describe('every message is taken from those who may send it, and refused from all others', () => {
  it.each(Object.keys(routes) as MessageName[])('%s', async (name) => {
    const { handledBy, sentBy } = routes[name];
    const handle = vi.fn(done);
    const handlers = { [name]: handle } as unknown as Handlers<Part>;
    const end = answer(handledBy as Part, handlers, (_, input) => succeed(input));
    for (const [from, sender] of Object.entries(senders)) {
      handle.mockClear();
      const reply = await deliver(handledBy, name, { given: from }, sender);
      if ((sentBy as readonly string[]).includes(from)) {
        expect(reply).toEqual({ ok: true, value: {} });
        expect(handle.mock.calls).toEqual([[{ given: from }]]);
      } else {
        expect(reply).toMatchObject({ ok: false, problem: { code: 'message-refused', where: name } });
        expect(handle).not.toHaveBeenCalled();
      }
    }
    end();
    expect(await deliver(handledBy, name, {}, senders.panel)).toBeNull();
  });

  it('says whose message it is and who sent it', async () => {
    receive('reader', reader);
    expect(await deliver('reader', 'reader.renew', {}, senders.page)).toEqual({
      ok: false,
      problem: {
        code: 'message-refused',
        where: 'reader.renew',
        data: { why: 'not-from', said: 'page: panel, full-page' },
      },
    });
    expect(await deliver('reader', 'reader.renew', {}, { id: 'another' })).toMatchObject({
      problem: { data: { why: 'from-nowhere', said: 'panel, full-page' } },
    });
  });
});

describe('a message that does not fit', () => {
  it('is left alone when it is for another part, refused when no one knows it or its content is malformed', async () => {
    receive('reader', reader);
    expect(await deliver('panel', 'tab.granted', { tabId: 1, at: 0 }, senders.background)).toBeNull();
    for (const name of ['photo.red', 'page.read', 'toString'])
      expect(await deliver('reader', name, {}, senders.panel)).toMatchObject({
        problem: { code: 'message-refused', where: name, data: { why: 'no-handler', said: 'reader' } },
      });
    expect(
      await deliver('reader', 'photo.glance', { photoId: 7, file: 'blob:one', closer: false }, senders.panel),
    ).toMatchObject({
      problem: { code: 'message-refused', where: 'photo.glance' },
    });
    expect(
      await deliver('reader', 'photo.glance', { photoId: 'p1', file: 'blob:one', closer: false }, senders.panel),
    ).toEqual(succeed({ likelihood: 0.5 }));
  });

  it('whose handler throws is answered with what happened', async () => {
    const said = vi.spyOn(console, 'error').mockImplementation(() => {});
    answerInPage('pointing', { ...pointing, 'field.endPick': () => Promise.reject(new Error('no page')) }, signal);
    expect(await deliver('pointing', 'field.endPick', {}, senders.panel)).toMatchObject({
      ok: false,
      problem: { code: 'unforeseen', where: 'field.endPick', data: { said: 'no page' } },
    });
    expect(said).toHaveBeenCalledOnce();
  });

  it('is heard no more in a page whose script was replaced', async () => {
    const running = new AbortController();
    answerInPage('pointing', pointing, running.signal);
    expect(await deliver('pointing', 'field.pick', { field: 'price', invite: '' }, senders.panel)).toEqual(
      succeed(null),
    );
    running.abort();
    expect(await deliver('pointing', 'field.pick', { field: 'price', invite: '' }, senders.panel)).toBeNull();
  });
});
