import type { Listing } from '../listing/types';

/** Title, description and visible text of a listing; the description is not repeated. */
export function listingText(listing: Pick<Listing, 'title' | 'description' | 'text'>): string {
  const description = listing.description[0]?.value ?? '';
  const held = listing.text.includes(description);
  const parts = [listing.title[0]?.value ?? '', held ? '' : description, listing.text];
  return parts.filter((part) => part !== '').join('\n');
}
