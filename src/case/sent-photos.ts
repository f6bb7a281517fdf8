import { isSentPhoto, sentPhotoLink } from '../listing/sent-photo-types';
import type { Listing } from '../listing/types';
import type { SentPhoto } from './types';

/** A listing with these photos after the page's own, and no others that were sent. */
export const withSentPhotos = <L extends Pick<Listing, 'photos'>>(listing: L, sent: readonly SentPhoto[]): L => {
  const own = ofPage(listing);
  return sent.length === 0 && own === listing
    ? listing
    : { ...own, photos: [...own.photos, ...sent.map(({ id }) => sentPhotoLink(id))] };
};

/** A listing as its page showed it. */
export const ofPage = <L extends Pick<Listing, 'photos'>>(listing: L): L =>
  listing.photos.some(isSentPhoto)
    ? { ...listing, photos: listing.photos.filter((link) => !isSentPhoto(link)) }
    : listing;
