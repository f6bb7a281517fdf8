import { typedCode } from '../../../src/case';
import type { PhotoLink } from '../../../src/listing/types';
import type { PhotoBytes } from '../../../src/message/protocol';
import type { Adjustment } from '../../../src/photo/adjustment-types';
import { succeed } from '../../../src/problem';
import { createSession } from '../../../src/ui/panel/session';
import type { SessionPorts } from '../../../src/ui/panel/session-ports';
import type { PanelState } from '../../../src/ui/panel/state';
import { sampleCase } from '../watch/sample-case';
import { HandClock } from './hand-clock';
import { photoLink, viewOf } from './sample-photos';

export const problem = (code: string) => ({ code, where: 'test', what: `${code} happened`, remedy: 'Nothing.' });
export const never = new Promise<never>(() => {});

export const numbered = (photos: number) =>
  Array.from({ length: photos }, (_, index) => photoLink(`p${index + 1}`, `${index + 1}`));
export const listingOf = (photos: PhotoLink[], part: Partial<ReturnType<typeof sampleCase>['listing']> = {}) => ({
  ...sampleCase().listing,
  photos,
  ...part,
});
export const listingWith = (photos: number) => listingOf(numbered(photos));
export const pageOf = (listing: ReturnType<typeof listingOf>) => async () =>
  succeed({ listing, incognito: false, picks: [] });
export const came = { way: 'page', fullSize: true } as const;
export const captured = { way: 'capture', fullSize: false, part: false, largest: null } as const;
export const bytesOf = (base64: string, by: PhotoBytes['came'] = came): PhotoBytes => ({
  base64,
  mediaType: 'image/jpeg',
  came: by,
});

export const typed = { ...typedCode('KV0915'), id: 'hand-1' };

/** When the sessions of these tests read, milliseconds since 1970. */
export const opened = Date.parse('2026-03-01T10:00:00.000Z');

interface Replaced extends Partial<Omit<SessionPorts, 'reader' | 'lookBack'>> {
  earlier?: ReturnType<SessionPorts['lookBack']>['at'];
  read?: SessionPorts['reader']['read'];
  /** How likely each photo is taken to show a stamp; 0 where it is left out. */
  likelihoods?: Record<string, number>;
  /** The same at the closer look, where it sees something else. */
  closerLooks?: Record<string, number>;
  /** How many photos the reader takes at once. */
  atOnce?: number;
}

/** A session whose ports answer at once unless the test replaces one; every published state is kept. */
export function sessionWith(
  photos: number,
  { read, likelihoods = {}, closerLooks = {}, atOnce = 1, earlier = async () => null, ...replaced }: Replaced = {},
) {
  const states: PanelState[] = [];
  const built: Parameters<SessionPorts['buildCase']>[0][] = [];
  const clock = new HandClock();
  const fetched: string[] = [];
  const reads: { id: string; adjustment: Adjustment }[] = [];
  const renewed = { times: 0 };
  const lists: string[] = [];
  const { fetchPhoto = async (_tab: number, id: string) => succeed(bytesOf(id)), ...others } = replaced;
  const ports: SessionPorts = {
    readPage: pageOf(listingWith(photos)),
    fetchPhoto: (tab, id) => {
      fetched.push(id);
      return fetchPhoto(tab, id);
    },
    reader: {
      atOnce,
      read: (id, file, adjustment) => {
        reads.push({ id, adjustment });
        return read ? read(id, file, adjustment) : Promise.resolve(succeed(viewOf(id)));
      },
      glance: async (id, _, closer) => succeed((closer ? closerLooks[id] : undefined) ?? likelihoods[id] ?? 0),
      renew: async () => {
        renewed.times++;
      },
    },
    makers: async () => [],
    buildCase: (facts) => {
      built.push(facts);
      return { ...sampleCase(), listing: facts.listing, photos: facts.photos, corrections: facts.corrections };
    },
    lookBack() {
      lists.push('opened');
      const end = () => lists.push('closed');
      return {
        at: (url, incognito) => earlier(url, incognito).finally(end),
        end,
      };
    },
    mayRead: async () => true,
    now: () => new Date(opened).toISOString(),
    clock,
    keepFile: ({ base64 }) => `blob:${base64}`,
    dropFile: () => undefined,
    ...others,
  };
  const session = createSession(1, ports, (state) => states.push(state));
  return { session, states, built, clock, fetched, reads, renewed, lists, last: () => states.at(-1) as PanelState };
}
