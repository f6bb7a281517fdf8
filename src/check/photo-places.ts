import type { Listing } from '../listing/types';
import type { PhotoRead } from '../photo/read-types';
import { within } from '../problem';
import { because } from './reasons';
import type { Reason } from './types';

/** A photo's place on the page, from 1; null for one that the page does not list. */
export function photoNumber({ photos }: Pick<Listing, 'photos'>, photoId: string): number | null {
  const at = photos.findIndex(({ id }) => id === photoId);
  return at < 0 ? null : at + 1;
}

/** The same for many photos of one listing. */
export function photoNumberer(listing: Listing): (photoId: string) => number | null {
  const places = new Map(listing.photos.map((photo, index) => [photo.id, index + 1]));
  return (photoId) => places.get(photoId) ?? null;
}

/** That none, or which, of the photos were not read, with the first reason. */
export function whyUnread(photos: PhotoRead[]): Reason {
  if (photos.length === 0) return because('no-photos', {});
  const unread = photos.filter((photo) => photo.state === 'unread');
  const cause = unread[0] ? within(unread[0].problem) : null;
  return because('photos-not-read', { unread: unread.length, of: photos.length, cause });
}
