import type { Candidate, Listing } from '../listing/types';
import demo from './demo-listing.json' with { type: 'json' };
import { blankListing, photoLink } from './loose-listing';

const said = <T>(value: T): Candidate<T>[] => [{ value, origin: 'visible', where: 'demo', confidence: 1 }];

/**
 * A listing made up to play with, by an invented maker on the invented marketplace: what a page of it would give. Its
 * photos are files that come with the extension, named as here. All is read as of any other.
 */
export const demoListing = (readAt: string): Listing => ({
  ...blankListing(demo.page, readAt),
  language: 'en',
  text: `${demo.title}\n${demo.description}`,
  title: said(demo.title),
  description: said(demo.description),
  maker: said(demo.maker),
  price: said({
    kind: 'sale',
    minor: demo.priceMinor,
    exponent: 2,
    currency: demo.currency,
    currencies: [demo.currency],
  }),
  condition: said('used'),
  availability: said('offered'),
  seller: { ...blankListing(demo.page, readAt).seller, name: said(demo.seller) },
  photos: demo.photos.map((name) => photoLink(name, `${demo.photosAt}${name}.jpg`)),
});
