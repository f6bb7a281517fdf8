import type { PriceHints } from '../../text/currency';
import type { Price } from '../types';
import { offerPrices } from './data-price';
import { type Item, itemsOf } from './item';
import { offersOf } from './offer-facts';

/** The group whose variant an item is, null when it is none. */
export function groupOf(item: Item): Item | null {
  if (item.holder?.property === 'hasvariant') return item.holder.item;
  return itemsOf(item, 'isVariantOf')[0] ?? null;
}

/** A group's variants, at most a hundred. */
export const variantsOf = (group: Item): Item[] => itemsOf(group, 'hasVariant').slice(0, 100);

/** The range over all variants' prices, where they share a currency and differ; null otherwise. */
export function variantRange(group: Item, hints: PriceHints): Price | null {
  const prices = variantsOf(group)
    .flatMap(offersOf)
    .flatMap((offer) => offerPrices(offer, hints))
    .map(({ price }) => price)
    .filter((price) => price.kind === 'sale');
  const [first] = prices;
  if (!first || prices.some((price) => price.currency !== first.currency)) return null;
  const minors = prices.map((price) => price.minor);
  const [minor, minorTo] = [Math.min(...minors), Math.max(...minors)];
  return minor === minorTo ? { ...first, minor } : { ...first, kind: 'range', minor, minorTo };
}
