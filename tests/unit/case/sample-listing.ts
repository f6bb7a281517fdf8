import type { Listing } from '../../../src/listing/types';
import { emptyListing, stated, withPhotos } from '../check/sample';

/** A plain listing as the reader would give it: title and description, photos, returns, a seller with a record. */
export function listingOf(title: string, description: string, photoCount = 6, rest: Partial<Listing> = {}): Listing {
  return withPhotos(photoCount, {
    title: stated(title),
    description: stated(description),
    text: `${title}\n${description}`,
    returns: stated({ accepted: true, days: 14, words: '14 day returns' }),
    seller: {
      ...emptyListing.seller,
      name: stated('Mina'),
      rating: stated({ share: 0.99, count: 214, words: '99% (214)' }),
      trader: stated('private' as const),
    },
    ...rest,
  });
}
