import { isSentPhoto, sentPhotoLink } from '../listing/sent-photo-types';
import type { Listing } from '../listing/types';
import { mostSentPhotos, type SentPhoto } from './types';

/** A listing with these photos after the page's own, and no others that were sent. */
export const withSentPhotos = <L extends Pick<Listing, 'photos'>>(listing: L, sent: readonly SentPhoto[]): L => {
  const own = ofPage(listing);
  return sent.length === 0 && own === listing
    ? listing
    : { ...own, photos: [...own.photos, ...sent.map(({ id }) => sentPhotoLink(id))] };
};

/** Photos that were sent and more of them, each once and as it is said now; as many as a case holds. */
export function withMoreSent(sent: readonly SentPhoto[], more: readonly SentPhoto[]): SentPhoto[] {
  const said = new Map(more.map((photo) => [photo.id, photo]));
  return [...sent.filter(({ id }) => !said.has(id)), ...said.values()].slice(0, mostSentPhotos);
}

/** A listing as its page showed it. */
export const ofPage = <L extends Pick<Listing, 'photos'>>(listing: L): L =>
  listing.photos.some(isSentPhoto)
    ? { ...listing, photos: listing.photos.filter((link) => !isSentPhoto(link)) }
    : listing;
