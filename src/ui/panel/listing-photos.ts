import { ofPage, tagsOf } from '../../case';
import type { PhotoView } from '../../message/protocol';
import { stampAsPart } from '../../photo/read-types';
import { type Result, succeed } from '../../problem';
import type { HeldPhotos } from './held-photos';
import { type Photos, sameBytes, unreadView } from './keep-photos';
import { readPhotos } from './read-photos';
import type { SessionPorts } from './session-ports';
import { type BeingRead, type PanelState, photosRead, type Stage } from './state';

interface Desk {
  tabId: number;
  ports: SessionPorts;
  photos: HeldPhotos;
  state(): PanelState;
  change(part: Partial<PanelState>): void;
  /** Shows what was read of photos, with the case made anew. */
  show(views: PanelState['views']): void;
  /** Reads a photo that is at hand as the buyer set it. */
  read(id: string): Promise<Result<PhotoView>>;
}

/** Reads the listing's own photos that were not read yet, and tells how far it is; `before` is what was read earlier of it. */
export async function readListingPhotos(desk: Desk, before: Photos, signal: AbortSignal): Promise<void> {
  const { tabId, ports, photos, state, change, show } = desk;
  const { listing } = state();
  const links = listing ? ofPage(listing).photos : [];
  const ids = links.flatMap(({ id }) => (state().views[id] ? [] : [id]));
  const placeOf = (id: string) => links.findIndex((link) => link.id === id) + 1;
  let beingRead: BeingRead | null = null;
  const stage = (): Stage => ({
    kind: 'photos',
    done: Object.keys(state().views).length,
    of: photosRead(state()).of,
    now: beingRead,
  });
  const tell = (now: BeingRead | null) => {
    beingRead = now;
    if (state().stage.kind === 'photos') change({ stage: stage() });
  };
  if (ids.length > 0) change({ stage: stage() });
  await readPhotos(
    ids,
    {
      atOnce: ports.reader.atOnce,
      isHere: photos.has,
      fetch: (id) => ports.fetchPhoto(tabId, id),
      arrived(id, bytes) {
        photos.hold(id, bytes);
        return sameBytes(before, id, bytes);
      },
      // What the buyer says shows the stamp is the likeliest, whatever a glance sees.
      glance: async (id, closer) =>
        isStampByHand(state(), id) ? succeed(1) : ports.reader.glance(id, photos.fileOf(id), closer),
      begins: (id, likely) => tell({ photo: placeOf(id), likely }),
      read: desk.read,
      renew: () => ports.reader.renew(),
      done(id, outcome) {
        show({ [id]: outcome.ok ? outcome.value : unreadView(id, outcome.problem) });
        tell(beingRead?.photo === placeOf(id) ? null : beingRead);
      },
      rests: (late) => change({ stage: { kind: 'done', ...photosRead(state()), late } }),
    },
    ports.clock,
    signal,
  );
  if (!signal.aborted) change({ stage: { kind: 'done', ...photosRead(state()), late: 0 } });
}

const isStampByHand = (state: PanelState, id: string): boolean =>
  state.case !== null && tagsOf(state.case, id).some(({ part }) => part === stampAsPart);
