import { partialDateSpan } from '../../span';
import type { PriceHints } from '../../text/currency';
import type { Draft } from '../draft';
import { propose } from '../draft';
import type { Listing } from '../types';
import { offerPrices } from './data-price';
import { hasType, type Item, isItem, itemsOf, textOf, textsOf, valuesOf, wordsOf } from './item';
import { conditionOf, fromItem, termName } from './terms';

type Availability = Listing['availability'][number]['value'];

/** The offers of a product, an aggregate's own included, at most twenty. */
export function offersOf(product: Item): Item[] {
  const direct = itemsOf(product, 'offers');
  const offers = hasType(product, 'Offer', 'AggregateOffer') ? [product, ...direct] : direct;
  const inner = offers.flatMap((offer) => (hasType(offer, 'AggregateOffer') ? itemsOf(offer, 'offers') : []));
  return [...new Set([...offers, ...inner])].slice(0, 20);
}

/** schema.org ItemAvailability, with or without address, in any case. */
export function availabilityOf(text: string): Availability | null {
  const name = termName(text);
  if (
    /^(instock|limitedavailability|onlineonly|instoreonly|available|preorder|presale|backorder|madetoorder)$/.test(name)
  )
    return 'offered';
  if (/^(outofstock|soldout|sold)$/.test(name)) return 'sold';
  if (/^(discontinued|removed|expired)$/.test(name)) return 'removed';
  return name === 'reserved' ? 'reserved' : null;
}

/** Reads one offer: prices, availability, condition, seller, returns, shipping, payment, date. */
export function readOffer(
  offer: Item,
  product: Item,
  draft: Draft,
  hints: PriceHints,
  strength: number,
  caveats: readonly string[],
): void {
  const from = (path: string, scale = 1) => fromItem(offer, strength * scale, path, [...product.caveats, ...caveats]);
  for (const { price, words, caveats: doubts } of offerPrices(offer, hints)) {
    const scale = price.kind === 'sale' ? 1 : price.kind === 'range' || price.kind === 'from' ? 0.9 : 0.7;
    const own = from('price', scale);
    propose(draft.price, price, { ...own, caveats: [...own.caveats, ...doubts] }, words);
  }
  for (const text of textsOf(offer, 'availability'))
    propose(draft.availability, availabilityOf(text), from('availability'), text);
  for (const text of textsOf(offer, 'itemCondition'))
    propose(draft.condition, conditionOf(text), from('itemCondition'), text);
  propose(draft.itemCode, textOf(offer, 'sku'), from('sku', 0.7));
  for (const seller of valuesOf(offer, 'seller', 'offeredBy')) {
    if (isItem(seller)) readSeller(seller, draft, from('seller'));
    else propose(draft.seller.name, String(seller), from('seller'));
  }
  for (const policy of itemsOf(offer, 'hasMerchantReturnPolicy'))
    readReturns(policy, draft, from('hasMerchantReturnPolicy'));
  for (const detail of itemsOf(offer, 'shippingDetails')) {
    const [rate] = itemsOf(detail, 'shippingRate');
    const amount = rate && textOf(rate, 'value', 'price');
    if (rate && amount)
      propose(
        draft.shipping,
        `${amount} ${wordsOf(rate, 'currency', 'priceCurrency')}`.trim(),
        from('shippingDetails'),
      );
  }
  for (const method of textsOf(offer, 'acceptedPaymentMethod'))
    propose(draft.payment, method.replace(/^.*[/#]/, ''), from('acceptedPaymentMethod'));
  const posted =
    textOf(offer, 'validFrom', 'availabilityStarts') ?? textOf(product, 'datePosted', 'datePublished', 'dateCreated');
  const day = posted && partialDateSpan(posted.slice(0, 10));
  if (day) propose(draft.posted, day, from('validFrom', 0.8), posted);
}

function readSeller(seller: Item, draft: Draft, from: ReturnType<typeof fromItem>): void {
  propose(draft.seller.name, textOf(seller, 'name'), from);
  if (hasType(seller, 'Person'))
    propose(draft.seller.trader, 'private', { ...from, confidence: from.confidence * 0.8 });
  else if (seller.types.some((type) => /Organization|Store|Business|Corporation/i.test(type)))
    propose(draft.seller.trader, 'trader', { ...from, confidence: from.confidence * 0.7 });
  for (const rating of itemsOf(seller, 'aggregateRating')) {
    const value = Number(textOf(rating, 'ratingValue') ?? Number.NaN);
    const best = Number(textOf(rating, 'bestRating') ?? 5);
    const worst = Number(textOf(rating, 'worstRating') ?? (best === 5 ? 1 : 0));
    const count = Number(textOf(rating, 'ratingCount', 'reviewCount') ?? Number.NaN);
    // Nobody can give less than the least: shops write 0 where nobody has rated.
    if (!(value >= worst && best > 0 && value <= best)) continue;
    const share = Math.round((value / best) * 10_000) / 10_000;
    const words = `${value} / ${best}${worst > 1 ? ` (from ${worst})` : ''}`;
    propose(draft.seller.rating, { share, count: Number.isInteger(count) && count >= 0 ? count : null, words }, from);
  }
  for (const address of valuesOf(seller, 'address')) {
    const place = isItem(address)
      ? ['addressLocality', 'addressRegion', 'addressCountry']
          .map((name) => textOf(address, name))
          .filter(Boolean)
          .join(', ')
      : String(address);
    propose(draft.seller.place, place, { ...from, where: `${from.where} > address` });
  }
  const since = textOf(seller, 'memberSince', 'foundingDate', 'dateCreated');
  const span = since && partialDateSpan(since.slice(0, 10));
  if (span) propose(draft.seller.memberSince, span, from, since);
}

function readReturns(policy: Item, draft: Draft, from: ReturnType<typeof fromItem>): void {
  const category = wordsOf(policy, 'returnPolicyCategory').replace(/^.*\//, '');
  const days = Number(textOf(policy, 'merchantReturnDays') ?? Number.NaN);
  const whole = Number.isInteger(days) && days > 0 ? days : null;
  if (/NotPermitted/i.test(category)) propose(draft.returns, { accepted: false, days: null, words: category }, from);
  else if (/Finite|Unlimited/i.test(category) || whole !== null)
    propose(draft.returns, { accepted: true, days: whole, words: category || `${whole} days` }, from);
}
