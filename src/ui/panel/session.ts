import { type Correction, type Reply, type SentPhoto, withSentPhotos } from '../../case';
import type { PreviousLook } from '../../check/types';
import type { PhotoLink } from '../../listing/types';
import type { MakerFile } from '../../maker/types';
import type { PhotoView } from '../../message/protocol';
import type { Adjustment } from '../../photo/adjustment-types';
import { type Result, succeed } from '../../problem';
import { listingKey } from '../../watch';
import { correctingAt, wantedOf } from './correcting';
import { holdPhotos } from './held-photos';
import { cameBy, keepPhotos, noPhotos, type Photos, unreadView } from './keep-photos';
import { readListingPhotos } from './listing-photos';
import { overBudget, photoBudget } from './photo-budget';
import { bytesOfKept, sendingAt, viewsOfSent } from './sent-photos';
import type { SessionPorts } from './session-ports';
import { blankState, isBusy, type PanelState, photosRead } from './state';

/** A page that goes on for ever is read as it stands after so many times more. */
const mostRestarts = 3;

/** What the user's own work hangs on: while it is the same listing, nothing of it is lost. */
interface Sitting extends Photos {
  key: string;
  links: readonly PhotoLink[];
  corrections: Correction[];
  sent: readonly SentPhoto[];
  removedSent: readonly string[];
}

/**
 * Drives one tab from page to case. It holds the state and publishes each change whole; the screen only shows it.
 * Starting again ends the run before: every result of an older run is dropped. What was read and typed of the same
 * listing before stays: only what is new, or was not had, is fetched and read.
 */
export function createSession(tabId: number, ports: SessionPorts, publish: (state: PanelState) => void) {
  let state = blankState;
  let makers: MakerFile[] = [];
  let previous: PreviousLook | undefined;
  let replies: Reply[] = [];
  let run = new AbortController();
  /** When the last reading from the start began, milliseconds since 1970. */
  let begun = 0;
  /** Whether the tab went on while its page was being read. */
  let leftMeanwhile = false;
  /** The last listing, also while the screen shows none. */
  let sitting: Sitting | null = null;

  const change = (part: Partial<PanelState>) => {
    state = { ...state, ...part };
    publish(state);
  };
  const recompute = () => {
    if (state.listing?.kind !== 'listing') return;
    const { listing, corrections, views, sent } = state;
    const reads = listing.photos.flatMap(({ id }) => (views[id] ? [views[id].read] : []));
    change({
      case: ports.buildCase({ listing, photos: reads, corrections, makers, replies, sent, now: ports.now(), previous }),
    });
  };
  const changeAndJudge = (part: Partial<PanelState>) => {
    change(part);
    recompute();
  };
  const show = (views: PanelState['views']) => changeAndJudge({ views: { ...state.views, ...views } });
  const photos = holdPhotos(ports, (files) => change({ files }));
  const readNow = async (id: string, adjustment: Adjustment): Promise<Result<PhotoView>> => {
    const photo = photos.all()[id];
    const view = await ports.reader.read(id, photos.fileOf(id), adjustment);
    return view.ok && photo ? succeed(cameBy(view.value, photo.bytes.came)) : view;
  };

  const readAsSet = async (id: string): Promise<Result<PhotoView>> => {
    const first = wantedOf(state, id);
    const view = await readNow(id, first);
    const then = view.ok ? wantedOf(state, id, view.value) : first;
    return JSON.stringify(then) === JSON.stringify(first) ? view : readNow(id, then);
  };

  function remember(): void {
    const { listing, views, corrections, sent, removedSent } = state;
    if (listing?.kind !== 'listing') return;
    const key = listingKey(listing.url);
    sitting = { key, links: listing.photos, views, held: photos.all(), corrections, sent, removedSent };
  }

  const readPhotosNow = (before: Photos, signal: AbortSignal): Promise<void> =>
    readListingPhotos({ tabId, ports, photos, state: () => state, change, show, read: readAsSet }, before, signal);

  /** Reads the tab's page, and the photos that are new or were not had. */
  async function read(standIns: 'keep' | 'again', restarts = 0): Promise<void> {
    leftMeanwhile = false;
    run.abort();
    run = new AbortController();
    begun = Date.parse(ports.now());
    const { signal } = run;
    remember();
    // The same page stays on the screen until it is read anew; another one's facts must not stand beside it.
    change({ ...(state.moved === 'no' ? {} : blankState), moved: 'no', stage: { kind: 'page' } });
    const back = ports.lookBack();
    const [page, files] = await Promise.all([ports.readPage(tabId), ports.makers()]);
    if (signal.aborted) return back.end();
    // A tab that was just opened, or goes on while it is read: what counts is the page that it comes to.
    const goesOn = () => leftMeanwhile && restarts < mostRestarts;
    if (goesOn()) {
      back.end();
      return read(standIns, restarts + 1);
    }
    makers = files;
    if (!page.ok) {
      back.end();
      const { problem } = page;
      remember();
      change({
        ...blankState,
        stage: problem.code === 'right-lapsed' ? { kind: 'lapsed' } : { kind: 'trouble', problem },
      });
      return;
    }
    const { incognito, picks } = page.value;
    const shown = page.value.listing;
    const earlier = await back.at(shown.url, incognito);
    if (signal.aborted) return;
    if (goesOn()) return read(standIns, restarts + 1);
    previous = earlier?.look;
    replies = earlier?.replies ?? [];
    remember();
    const before = sitting?.key === listingKey(shown.url) ? sitting : null;
    const kept = earlier?.sent ?? [];
    const sent = before?.sent ?? kept.map(({ photo }) => photo);
    const listing = withSentPhotos(shown, sent);
    const known = before ? keepPhotos(before, listing.photos, standIns) : noPhotos;
    photos.holdOnly(known.held);
    for (const { photo, file } of kept) {
      if (file && !photos.has(photo.id) && sent.some(({ id }) => id === photo.id))
        photos.hold(photo.id, bytesOfKept(file));
    }
    const over = shown.photos.slice(photoBudget).map(({ id }) => [id, unreadView(id, overBudget(id))] as const);
    change({
      moved: leftMeanwhile ? 'readable' : 'no',
      listing,
      incognito,
      picks,
      case: null,
      views: { ...viewsOfSent(sent, before?.views ?? {}, kept), ...Object.fromEntries(over), ...known.views },
      files: photos.files(),
      corrections: before?.corrections ?? earlier?.corrections ?? [],
      sent,
      removedSent: before?.removedSent ?? [],
    });
    recompute();
    if (listing.kind === 'listing') await Promise.all([readPhotosNow(before ?? noPhotos, signal), sending.readSent()]);
    else change({ stage: { kind: 'done', read: 0, of: 0, late: 0 } });
  }

  const sending = sendingAt({
    state: () => state,
    recompute: changeAndJudge,
    hold: photos.hold,
    letGo: photos.letGo,
    read: readAsSet,
    done(id, outcome) {
      show({ [id]: outcome.ok ? outcome.value : unreadView(id, outcome.problem) });
      const { stage } = state;
      if (stage.kind === 'done' || stage.kind === 'stopped') change({ stage: { ...stage, ...photosRead(state) } });
    },
  });

  function stop(): void {
    run.abort();
    change({ stage: { kind: 'stopped', ...photosRead(state) } });
  }

  async function reread(photoId: string, adjustment: Adjustment): Promise<Result<PhotoView> | null> {
    const photo = photos.all()[photoId];
    if (photo === undefined) return null;
    const view = await readNow(photoId, adjustment);
    if (view.ok && view.value.read.state === 'read' && photos.all()[photoId] === photo) {
      const thumbnail = state.views[photoId]?.thumbnail ?? view.value.thumbnail;
      show({ [photoId]: { ...view.value, thumbnail } });
    }
    return view;
  }

  return {
    read: () => read('again'),
    /** Reads the page again because something else of it is asked for: its photos stand as they are. */
    readFields: () => read('keep'),
    stop,

    /** The user's maker files changed: what was read is judged anew, and no photo is read again. */
    async makersChanged(): Promise<void> {
      makers = await ports.makers();
      recompute();
    },

    /** The tab is gone: nothing more is fetched, and its photos are let go. */
    end(): void {
      run.abort();
      photos.end();
    },

    /** Goes on after a stop with the photos that were not read. */
    async goOn(): Promise<void> {
      run = new AbortController();
      await readPhotosNow(sitting ?? noPhotos, run.signal);
    },

    addSent: sending.addSent,
    removeSent: sending.removeSent,

    ...correctingAt({
      state: () => state,
      recompute: changeAndJudge,
      reread,
    }),

    /**
     * The toolbar was clicked, at this time in milliseconds since 1970: read, unless that is just what happens, or has
     * happened since. The news of the click that opened a panel reaches it late.
     */
    renewed(at: number): void {
      const isNews = state.moved !== 'no' || state.stage.kind === 'lapsed';
      // A page that is just being read may have been asked for before the click gave the right to it.
      const goesOn = isBusy(state.stage) && state.stage.kind !== 'page';
      if (isNews || (!goesOn && at >= begun)) read('again');
    },

    /** The tab goes to another page: what was read stays on the screen, and says so. */
    pageLeft(): void {
      if (state.stage.kind === 'page') {
        leftMeanwhile = true;
        return;
      }
      if (isBusy(state.stage)) stop();
      // Late photos too: they were the other page's.
      run.abort();
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
