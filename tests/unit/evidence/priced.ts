import type { Claim } from '../../../src/claim/types';
import { fromPrices, type PricedListing } from '../../../src/evidence/from-prices';
import type { Listing } from '../../../src/listing/types';
import type { MakerFile } from '../../../src/maker/types';

/** Pages with a price, and what it says beside those of a file. */
export const plain = { about: 'price', spans: [], places: [], strength: 'soft' } as const;

export const page = (price: Listing['price'], condition: Listing['condition'] = []): PricedListing => ({
  price,
  condition,
});
export const of = (listing: PricedListing, maker: MakerFile | null = null, claims: Claim[] = [], model?: string) =>
  fromPrices(claims, listing, maker, model);
export const kinds = (...given: Parameters<typeof of>) => of(...given).map(({ id, says }) => `${id} ${says.kind}`);
export const amount = (of: string, sum: number) => ({ of: 'price', unit: of, least: sum, most: sum });
