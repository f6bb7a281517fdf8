import type { PhotoLink } from '../../listing/types';
import type { PhotoBytes, PhotoView } from '../../message/protocol';
import type { Came } from '../../photo/read-types';
import type { Problem } from '../../problem';

/** A photo that was fetched: its bytes, and their address inside this document. */
export interface HeldPhoto {
  bytes: PhotoBytes;
  file: string;
}

/** What is known of a listing's photos, each by its id. */
export interface Photos {
  views: Record<string, PhotoView>;
  held: Record<string, HeldPhoto>;
}
export const noPhotos: Photos = { views: {}, held: {} };

export const unreadView = (photoId: string, problem: Problem): PhotoView => ({
  read: { state: 'unread', photoId, problem },
  thumbnail: null,
  crops: [],
});

/** Whether something else stands for the photo: a picture of the page, or a smaller version of it. */
const isStandIn = ({ came }: PhotoBytes): boolean => came.way === 'capture' || !came.fullSize;

/** A reading with the way that its photo came; a failed reading judges nothing, however it came. */
export const cameBy = (view: PhotoView, came: Came): PhotoView =>
  view.read.state === 'read' ? { ...view, read: { ...view.read, came } } : view;

/**
 * What of an earlier reading holds for the listing's photos now: those of the same address are neither fetched nor read
 * again, whatever number they have got. `standIns: 'again'` gives up what stood in for a photo: it may be had now.
 */
export function keepPhotos(
  before: Photos & { links: readonly PhotoLink[] },
  links: readonly PhotoLink[],
  standIns: 'keep' | 'again',
): Photos {
  const earlier = new Map(before.links.map(({ url, id }) => [url, id]));
  const kept: Photos = { views: {}, held: {} };
  for (const { id, url } of links) {
    const was = earlier.get(url);
    if (was === undefined) continue;
    const held = before.held[was];
    if (!held || (standIns === 'again' && isStandIn(held.bytes))) continue;
    kept.held[id] = held;
    const view = before.views[was];
    if (view?.read.state === 'read') kept.views[id] = underName(view, id);
  }
  return kept;
}

/** The earlier reading of the same bytes, whatever address they came from: a page may make its addresses anew each time. */
export function sameBytes(before: Photos, id: string, bytes: PhotoBytes): PhotoView | null {
  for (const [was, held] of Object.entries(before.held)) {
    const view = before.views[was];
    if (view?.read.state !== 'read' || held.bytes.base64 !== bytes.base64) continue;
    return cameBy(underName(view, id), bytes.came);
  }
  return null;
}

/** A reading under the photo's present id, which its observations carry in theirs. */
function underName(view: PhotoView, id: string): PhotoView {
  const { read } = view;
  if (read.photoId === id || read.state === 'unread') return view;
  const renamed = (name: string) => (name.startsWith(read.photoId) ? id + name.slice(read.photoId.length) : name);
  return {
    ...view,
    read: {
      ...read,
      photoId: id,
      observations: read.observations.map((seen) => ({ ...seen, id: renamed(seen.id) })),
    },
    crops: view.crops.map((crop) => ({ ...crop, lineId: renamed(crop.lineId) })),
  };
}
