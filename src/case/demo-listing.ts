import { type Listing, listingSchema } from '../listing/types';
import demo from './demo-listing.json' with { type: 'json' };

const read: Listing = listingSchema.parse(demo);

/**
 * A listing made up to play with, by an invented maker: what the reader reads of its page on the invented marketplace,
 * as a test holds. Its photos are files that come with the extension, named as here, and are read as any others.
 */
export const demoListing = (readAt: string): Listing => ({ ...read, readAt });
