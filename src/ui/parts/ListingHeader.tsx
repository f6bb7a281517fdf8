import type { Listing } from '../../listing/types';
import { priceWords } from '../claim-words';

/** Which piece this is about: title, price, seller. */
export function ListingHeader({ listing }: { listing: Listing }) {
  const price = listing.price.find(({ value }) => value.kind === 'sale') ?? listing.price[0];
  const seller = listing.seller.name[0]?.value;
  return (
    <header class="listing-header">
      <p class="listing-title">{listing.title[0]?.value ?? listing.url}</p>
      <p class="muted">{[price && priceWords(price.value), seller, hostOf(listing.url)].filter(Boolean).join(' · ')}</p>
    </header>
  );
}

const hostOf = (url: string): string => (URL.canParse(url) ? new URL(url).hostname : '');
