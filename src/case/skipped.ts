import { likelyMakerName } from '../claim';
import type { Listing } from '../listing/types';
import type { PhotoRead } from '../photo/read-types';
import { type Problem, problem, within } from '../problem';

/** Every photo that the page offers: those without a reading count as unread, so that no check takes them for fine. */
export function allPhotos(listing: Listing, photos: readonly PhotoRead[]): PhotoRead[] {
  const known = new Set(photos.map(({ photoId }) => photoId));
  const missing = listing.photos
    .filter(({ id }) => !known.has(id))
    .map(
      ({ id }): PhotoRead => ({
        state: 'unread',
        photoId: id,
        problem: problem('photo-not-fetched', id),
      }),
    );
  return [...photos, ...missing];
}

interface Done {
  listing: Listing;
  photos: readonly PhotoRead[];
  maker: string | null;
  makerNames: readonly string[];
}

/** What was not read or not done, each with its reason and what the user can do. */
export function skippedOf({ listing, photos, maker, makerNames }: Done): Problem[] {
  return [...listing.problems, ...unreadPhotos(photos), ...(maker === null ? [noMaker(listing, makerNames)] : [])];
}

function unreadPhotos(photos: readonly PhotoRead[]): Problem[] {
  const unread = photos.flatMap((photo) => (photo.state === 'unread' ? [photo.problem] : []));
  if (unread.length === 0) return [];
  const reasons = new Map(unread.map((one) => [JSON.stringify(within(one)), within(one)]));
  const where = unread.map(({ where }) => where).join(', ');
  const data = { unread: unread.length, of: photos.length, reasons: [...reasons.values()] };
  return [problem('photos-not-read', where, data)];
}

/** The names that the listing has for its maker; where it has none, what may be one. */
const noMaker = (listing: Listing, names: readonly string[]): Problem =>
  problem('no-maker-file', 'maker', {
    names: names.map((name) => name.slice(0, 80)),
    possible: names.length > 0 ? null : (likelyMakerName(listing)?.slice(0, 80) ?? null),
  });
