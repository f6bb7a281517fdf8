import { type Correction, ofPage, type Reply, type SentPhoto, tagsOf, withSentPhotos } from '../../case';
import type { PreviousLook } from '../../check/types';
import type { PhotoLink } from '../../listing/types';
import type { MakerFile } from '../../maker/types';
import type { PhotoBytes, PhotoView } from '../../message/protocol';
import type { Adjustment } from '../../photo/adjustment-types';
import { stampAsPart } from '../../photo/read-types';
import { type Problem, type Result, succeed } from '../../problem';
import { type BroughtPhoto, listingKey } from '../../watch';
import { correctingAt, wantedOf } from './correcting';
import { cameBy, keepPhotos, noPhotos, type Photos, sameBytes } from './keep-photos';
import { overBudget, photoBudget } from './photo-budget';
import { type PhotoWork, readPhotos } from './read-photos';
import { bytesOfKept, sendingAt, viewOfKept } from './sent-photos';
import type { SessionPorts } from './session-ports';
import { type BeingRead, blankState, isBusy, type PanelState, type Stage } from './state';

export { photoBudget };

/** A page that goes on for ever is read as it stands after so many times more. */
const mostRestarts = 3;

/** What the user's own work hangs on: while it is the same listing, nothing of it is lost. */
interface Sitting extends Photos {
  key: string;
  links: readonly PhotoLink[];
  corrections: Correction[];
  sent: readonly SentPhoto[];
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
  let held: Photos['held'] = {};
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
    const photos = listing.photos.flatMap(({ id }) => (views[id] ? [views[id].read] : []));
    change({
      case: ports.buildCase({ listing, photos, corrections, makers, replies, sent, now: ports.now(), previous }),
    });
  };
  const unread = (photoId: string, problem: Problem): PhotoView => ({
    read: { state: 'unread', photoId, problem },
    thumbnail: null,
    crops: [],
  });
  const show = (views: PanelState['views']) => {
    change({ views: { ...state.views, ...views } });
    recompute();
  };
  const hold = (id: string, bytes: PhotoBytes) => {
    held = { ...held, [id]: { bytes, file: ports.keepFile(bytes) } };
    change({ files: filesOf(held) });
  };
  const letGo = (id: string) => {
    const { [id]: gone, ...others } = held;
    if (gone) ports.dropFile(gone.file);
    held = others;
    change({ files: filesOf(held) });
  };
  const countRead = () => Object.values(state.views).filter(({ read }) => read.state === 'read').length;
  const of = () => state.listing?.photos.length ?? 0;
  const readNow = async (id: string, adjustment: Adjustment): Promise<Result<PhotoView>> => {
    const photo = held[id];
    const view = await ports.reader.read(id, photo?.file ?? '', adjustment);
    return view.ok && photo ? succeed(cameBy(view.value, photo.bytes.came)) : view;
  };

  const readAsSet = async (id: string): Promise<Result<PhotoView>> => {
    const first = wantedOf(state, id);
    const view = await readNow(id, first);
    const then = view.ok ? wantedOf(state, id, view.value) : first;
    return JSON.stringify(then) === JSON.stringify(first) ? view : readNow(id, then);
  };

  function remember(): void {
    const { listing, views, corrections, sent } = state;
    if (listing?.kind !== 'listing') return;
    sitting = { key: listingKey(listing.url), links: listing.photos, views, held, corrections, sent };
  }

  const isStampByHand = (id: string): boolean =>
    state.case !== null && tagsOf(state.case, id).some(({ part }) => part === stampAsPart);

  async function readPhotosNow(before: Photos, signal: AbortSignal): Promise<void> {
    const links = state.listing ? ofPage(state.listing).photos : [];
    const ids = links.flatMap(({ id }) => (state.views[id] ? [] : [id]));
    const stage = (now: BeingRead | null = null): Stage => ({
      kind: 'photos',
      done: Object.keys(state.views).length,
      of: of(),
      now,
    });
    if (ids.length > 0) change({ stage: stage() });
    let beingRead: BeingRead | null = null;
    const placeOf = (id: string) => links.findIndex((link) => link.id === id) + 1;
    const work: PhotoWork = {
      atOnce: ports.reader.atOnce,
      isHere: (id) => held[id] !== undefined,
      fetch: (id) => ports.fetchPhoto(tabId, id),
      arrived(id, bytes) {
        hold(id, bytes);
        return sameBytes(before, id, bytes);
      },
      // What the buyer says shows the stamp is the likeliest, whatever a glance sees.
      glance: async (id, closer) =>
        isStampByHand(id) ? succeed(1) : ports.reader.glance(id, held[id]?.file ?? '', closer),
      begins(id, likely) {
        beingRead = { photo: placeOf(id), likely };
        if (state.stage.kind === 'photos') change({ stage: stage(beingRead) });
      },
      read: readAsSet,
      renew: () => ports.reader.renew(),
      done(id, outcome) {
        show({ [id]: outcome.ok ? outcome.value : unread(id, outcome.problem) });
        if (beingRead?.photo === placeOf(id)) beingRead = null;
        if (state.stage.kind === 'photos') change({ stage: stage(beingRead) });
      },
      rests: (late) => change({ stage: { kind: 'done', read: countRead(), of: of(), late } }),
    };
    await readPhotos(ids, work, ports.clock, signal);
    if (!signal.aborted) change({ stage: { kind: 'done', read: countRead(), of: of(), late: 0 } });
  }

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
    for (const file of Object.values(filesOf(sitting?.held ?? {}))) {
      if (!Object.values(known.held).some((photo) => photo.file === file)) ports.dropFile(file);
    }
    held = known.held;
    for (const { photo, file } of kept) {
      if (file && held[photo.id] === undefined && sent.some(({ id }) => id === photo.id))
        hold(photo.id, bytesOfKept(file));
    }
    const over = shown.photos.slice(photoBudget).map(({ id }) => [id, unread(id, overBudget(id))] as const);
    change({
      moved: leftMeanwhile ? 'readable' : 'no',
      listing,
      incognito,
      picks,
      case: null,
      views: { ...sentBefore(before, sent, kept), ...Object.fromEntries(over), ...known.views },
      files: filesOf(held),
      corrections: before?.corrections ?? earlier?.corrections ?? [],
      sent,
    });
    recompute();
    if (listing.kind === 'listing') await Promise.all([readPhotosNow(before ?? noPhotos, signal), sending.readSent()]);
    else change({ stage: { kind: 'done', read: 0, of: 0, late: 0 } });
  }

  const sending = sendingAt({
    state: () => state,
    recompute(part) {
      change(part);
      recompute();
    },
    hold,
    letGo,
    read: readAsSet,
    done(id, outcome) {
      show({ [id]: outcome.ok ? outcome.value : unread(id, outcome.problem) });
      const { stage } = state;
      if (stage.kind === 'done' || stage.kind === 'stopped')
        change({ stage: { ...stage, read: countRead(), of: of() } });
    },
  });

  function stop(): void {
    run.abort();
    change({ stage: { kind: 'stopped', read: countRead(), of: of() } });
  }

  async function reread(photoId: string, adjustment: Adjustment): Promise<Result<PhotoView> | null> {
    const photo = held[photoId];
    if (photo === undefined) return null;
    const view = await readNow(photoId, adjustment);
    if (view.ok && view.value.read.state === 'read' && held[photoId] === photo) {
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
      for (const { file } of Object.values(held)) ports.dropFile(file);
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
      recompute(part) {
        change(part);
        recompute();
      },
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

/** What was read of the photos that came another way: in this sitting, or when the case was kept. */
const sentBefore = (
  before: Sitting | null,
  sent: readonly SentPhoto[],
  kept: readonly BroughtPhoto[],
): PanelState['views'] =>
  Object.fromEntries(
    sent.flatMap(({ id }) => {
      const one = kept.find(({ photo }) => photo.id === id);
      const view = before?.views[id] ?? (one && viewOfKept(one));
      return view ? [[id, view]] : [];
    }),
  );

const filesOf = (held: Photos['held']): Record<string, string> =>
  Object.fromEntries(Object.entries(held).map(([id, { file }]) => [id, file]));
