import type { Adjustment, OutputOf, PhotoBytes, PhotoView } from '../../bridge/protocol';
import { noAdjustment } from '../../bridge/protocol';
import type { Reader } from '../../bridge/reader';
import type { Case } from '../../case';
import type { PreviousLook } from '../../check/types';
import type { PhotoLink } from '../../listing/types';
import type { MakerFile } from '../../maker/types';
import type { Problem, Result } from '../../problem';
import type { Came, PhotoRead } from '../../stamp/types';
import { blankState, isBusy, type PanelState, type TypedCode } from './state';

/** More photos than this are named as not read. */
export const photoBudget = 24;

export interface SessionPorts {
  readPage(tabId: number): Promise<Result<OutputOf<'page.read'>>>;
  fetchPhoto(tabId: number, photoId: string): Promise<Result<PhotoBytes>>;
  reader: Reader;
  makers(): Promise<MakerFile[]>;
  buildCase(facts: {
    listing: NonNullable<PanelState['listing']>;
    photos: PhotoRead[];
    typedCodes: TypedCode[];
    makers: MakerFile[];
    now: string;
    previous?: PreviousLook | undefined;
  }): Case;
  /** The saved look at a listing before this one; null when there is none, or nothing may be stored. */
  previousLook(url: string, incognito: boolean): Promise<PreviousLook | null>;
  /** Whether the tab's present page may be read. */
  mayRead(tabId: number): Promise<boolean>;
  now(): string;
  /** An address for bytes inside this document, and its end. */
  keepFile(bytes: PhotoBytes): string;
  dropFile(address: string): void;
}

/**
 * Drives one tab from page to case. It holds the state and publishes each change whole; the screen only shows it.
 * Starting again ends the run before: every result of an older run is dropped.
 */
export function createSession(tabId: number, ports: SessionPorts, publish: (state: PanelState) => void) {
  let state = blankState;
  let makers: MakerFile[] = [];
  let previous: PreviousLook | undefined;
  let run = new AbortController();
  /** When the last reading from the start began, milliseconds since 1970. */
  let begun = 0;
  const bytes = new Map<string, string>();

  const change = (part: Partial<PanelState>) => {
    state = { ...state, ...part };
    publish(state);
  };
  const recompute = () => {
    if (state.listing?.kind !== 'listing') return;
    const { listing, typedCodes, views } = state;
    const photos = listing.photos.flatMap(({ id }) => (views[id] ? [views[id].read] : []));
    change({ case: ports.buildCase({ listing, photos, typedCodes, makers, now: ports.now(), previous }) });
  };
  const unread = (photoId: string, problem: Problem): PhotoView => ({
    read: { state: 'unread', photoId, problem },
    thumbnail: null,
    crops: [],
  });

  async function readPhoto(link: PhotoLink, fetched: Result<PhotoBytes>): Promise<PhotoView> {
    if (!fetched.ok) return unread(link.id, fetched.problem);
    bytes.set(link.id, fetched.value.base64);
    change({ files: { ...state.files, [link.id]: ports.keepFile(fetched.value) } });
    const view = await ports.reader.read(link.id, fetched.value.base64, noAdjustment);
    return view.ok ? cameBy(view.value, fetched.value.came) : unread(link.id, view.problem);
  }

  async function readPhotos(signal: AbortSignal): Promise<void> {
    const links = state.listing?.photos ?? [];
    const within = links.slice(0, photoBudget).filter(({ id }) => !state.views[id]);
    const of = links.length;
    let ahead = within[0] ? ports.fetchPhoto(tabId, within[0].id) : null;
    for (const [index, link] of within.entries()) {
      change({ stage: { kind: 'photos', at: links.indexOf(link) + 1, of } });
      const fetched = await (ahead as Promise<Result<PhotoBytes>>);
      if (signal.aborted) return;
      const following = within[index + 1];
      // The next photo travels while this one is read.
      ahead = following ? ports.fetchPhoto(tabId, following.id) : null;
      const view = await readPhoto(link, fetched);
      if (signal.aborted) return;
      change({ views: { ...state.views, [link.id]: view } });
      recompute();
    }
    for (const link of links.slice(photoBudget)) {
      change({ views: { ...state.views, [link.id]: unread(link.id, overBudget(link.id)) } });
    }
    recompute();
    change({ stage: { kind: 'done', read: countRead(), of } });
  }

  const countRead = () => Object.values(state.views).filter(({ read }) => read.state === 'read').length;

  /** Reads the tab's page and its photos from the start. */
  async function read(): Promise<void> {
    run.abort();
    run = new AbortController();
    begun = Date.parse(ports.now());
    const { signal } = run;
    for (const address of Object.values(state.files)) ports.dropFile(address);
    bytes.clear();
    state = blankState;
    change({ stage: { kind: 'page' } });
    const [page, files] = await Promise.all([ports.readPage(tabId), ports.makers(), ports.reader.renew()]);
    if (signal.aborted) return;
    makers = files;
    if (!page.ok) {
      const { problem } = page;
      change({ stage: problem.code === 'right-lapsed' ? { kind: 'lapsed' } : { kind: 'trouble', problem } });
      return;
    }
    const { listing, incognito, picks } = page.value;
    change({ listing, incognito, picks });
    previous = (await ports.previousLook(listing.url, incognito)) ?? undefined;
    if (signal.aborted) return;
    if (listing.kind !== 'listing') {
      change({ stage: { kind: 'done', read: 0, of: 0 } });
      return;
    }
    recompute();
    await readPhotos(signal);
  }

  function stop(): void {
    run.abort();
    change({ stage: { kind: 'stopped', read: countRead(), of: state.listing?.photos.length ?? 0 } });
  }

  return {
    read,
    stop,

    /** Goes on after a stop with the photos that were not read. */
    async goOn(): Promise<void> {
      run = new AbortController();
      await readPhotos(run.signal);
    },

    /** Reads one photo again as the user turned, inverted or cut it. */
    async readAgain(photoId: string, adjustment: Adjustment): Promise<Result<PhotoView> | null> {
      const base64 = bytes.get(photoId);
      if (base64 === undefined) return null;
      const view = await ports.reader.read(photoId, base64, adjustment);
      if (view.ok && view.value.read.state === 'read') {
        const before = state.views[photoId];
        const thumbnail = before?.thumbnail ?? view.value.thumbnail;
        const came = before?.read.state === 'read' ? before.read.came : undefined;
        change({ views: { ...state.views, [photoId]: { ...cameBy(view.value, came), thumbnail } } });
        recompute();
      }
      return view;
    },

    typeCode(photoId: string | null, text: string): void {
      const code = text.trim().slice(0, 200);
      if (code === '' || state.typedCodes.some((typed) => typed.code === code)) return;
      change({ typedCodes: [...state.typedCodes, { photoId, code }] });
      recompute();
    },

    removeTyped(code: string): void {
      change({ typedCodes: state.typedCodes.filter((typed) => typed.code !== code) });
      recompute();
    },

    /**
     * The toolbar was clicked, at this time in milliseconds since 1970: read, unless that is just what happens, or has
     * happened since. The news of the click that opened a panel reaches it late.
     */
    renewed(at: number): void {
      const isNews = state.moved !== 'no' || state.stage.kind === 'lapsed';
      if (isNews || (!isBusy(state.stage) && at >= begun)) read();
    },

    /** The tab goes to another page: what was read stays on the screen, and says so. */
    pageLeft(): void {
      if (isBusy(state.stage)) stop();
      change({ moved: 'readable' });
    },

    /** The tab shows its new page. */
    async pageArrived(): Promise<void> {
      if (state.moved === 'no') return;
      const left = run;
      const readable = await ports.mayRead(tabId);
      // Read again in the meantime: the answer is about a page that is gone.
      if (left === run) change({ moved: readable ? 'readable' : 'lapsed' });
    },
  };
}
export type Session = ReturnType<typeof createSession>;

/** A reading with the way that its photo came; a failed reading judges nothing, however it came. */
const cameBy = (view: PhotoView, came: Came | undefined): PhotoView =>
  view.read.state === 'read' && came ? { ...view, read: { ...view.read, came } } : view;

const overBudget = (photoId: string): Problem => ({
  code: 'over-budget',
  where: `photo ${photoId}`,
  what: `only the first ${photoBudget} photos are read`,
  remedy: 'Type the code by hand if the stamp is in a later photo.',
});
