import { groundKind, isCopy } from '../check';
import { isSentPhoto } from '../listing/sent-photo-types';
import { type PhotoRead, valueIn } from '../photo';
import type { Case } from './types';

/** Photos by their ids that share something. */
interface Group<T> {
  of: T;
  photos: string[];
}

/** What is noticed of how a listing's photos were made. Facts: none of them speaks against a piece. */
export interface PhotoNotes {
  /** Sizes in pixels, the longer side first, most photos first; empty where all of the page's photos are alike. */
  sizes: Group<readonly [longer: number, shorter: number]>[];
  /** Photos of the page with an even margin, where others have none. */
  margins: string[];
  /** Photos of the page on the even, light ground of a studio or a cut-out, where others stand on a lit one. */
  evenGrounds: string[];
  /** Each camera that files name, and each day on which they say that they were taken, the earliest first. */
  cameras: Group<string>[];
  days: Group<string>[];
}

type Read = Extract<PhotoRead, { state: 'read' }>;

/** What is noticed of the photos; null where nothing is. Only what was read as the page has it is compared. */
export function photoNotes({ listing, photos }: Pick<Case, 'listing' | 'photos'>): PhotoNotes | null {
  const read = listing.photos.flatMap((link): { photo: Read; sent: boolean }[] => {
    const photo = photos.find(({ photoId }) => photoId === link.id);
    return photo?.state === 'read' && !isCopy(photo) ? [{ photo, sent: isSentPhoto(link) }] : [];
  });
  const all = read.map(({ photo }) => photo);
  const ofPage = read.filter(({ sent }) => !sent).map(({ photo }) => photo);
  const sizes = grouped(ofPage, ({ width, height }) => [Math.max(width, height), Math.min(width, height)] as const);
  const margined = ofPage.filter((photo) => valueIn(photo, 'margin') !== null).map(({ photoId }) => photoId);
  const grounds = grouped(ofPage, groundKind);
  const notes: PhotoNotes = {
    sizes: sizes.length > 1 ? sizes.sort((a, b) => b.photos.length - a.photos.length || b.of[0] - a.of[0]) : [],
    margins: margined.length < ofPage.length ? margined : [],
    evenGrounds: grounds.some(({ of }) => of === 'lit') ? (grounds.find(({ of }) => of === 'even')?.photos ?? []) : [],
    cameras: grouped(all, (photo) => textIn(photo, 'camera')),
    days: grouped(all, (photo) => textIn(photo, 'taken-at')?.slice(0, 10) ?? null).sort((a, b) =>
      a.of < b.of ? -1 : 1,
    ),
  };
  return Object.values(notes).some((one) => one.length > 0) ? notes : null;
}

const textIn = (photo: Read, what: string): string | null => {
  const value = valueIn(photo, what);
  return typeof value === 'string' ? value : null;
};

function grouped<T>(photos: readonly Read[], of: (photo: Read) => T | null): Group<T>[] {
  const groups = new Map<string, Group<T>>();
  for (const photo of photos) {
    const shared = of(photo);
    if (shared === null) continue;
    const name = JSON.stringify(shared);
    const group = groups.get(name) ?? { of: shared, photos: [] };
    groups.set(name, group);
    group.photos.push(photo.photoId);
  }
  return [...groups.values()];
}
