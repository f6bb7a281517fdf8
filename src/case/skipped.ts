import { possibleMakerName } from '../claim';
import type { Listing } from '../listing/types';
import type { PhotoRead } from '../photo/read-types';
import type { Problem } from '../problem';

/** Every photo that the page offers: those without a reading count as unread, so that no check takes them for fine. */
export function allPhotos(listing: Listing, photos: readonly PhotoRead[]): PhotoRead[] {
  const known = new Set(photos.map(({ photoId }) => photoId));
  const missing = listing.photos
    .filter(({ id }) => !known.has(id))
    .map(
      ({ id }): PhotoRead => ({
        state: 'unread',
        photoId: id,
        problem: {
          code: 'photo-not-fetched',
          where: id,
          what: 'the photo was not fetched',
          remedy: 'Read the listing again, or give the photo as a file.',
        },
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
  const reasons = [...new Set(unread.map(({ what }) => what.replace(/\.$/, '')))].join('; ');
  return [
    {
      code: 'photos-not-read',
      where: unread.map(({ where }) => where).join(', '),
      what: `${unread.length} of ${photos.length} photos not read: ${reasons}`,
      remedy: unread[0]?.remedy ?? 'Read the listing again.',
    },
  ];
}

function noMaker(listing: Listing, names: readonly string[]): Problem {
  return {
    code: 'no-maker-file',
    where: 'maker',
    what: whyNone(listing, names.map(quoted)),
    remedy: 'Import a maker file, or point at the maker on the page. Until then no maker’s rules judge the piece.',
  };
}

const quoted = (name: string) => `“${name.slice(0, 80)}”`;

function whyNone(listing: Listing, [name, ...others]: string[]): string {
  if (name !== undefined && others.length > 0)
    return `the listing names several makers: ${[name, ...others].join(', ')}`;
  if (name !== undefined) return `no maker file fits ${name}`;
  const possible = possibleMakerName(listing);
  return possible ? `no maker on file is named; it may be ${quoted(possible)}` : 'the listing names no maker';
}
