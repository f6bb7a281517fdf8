import type { PriceHints } from '../../text/currency';
import { withoutEnd } from '../../text/ends';
import { samePage, webAddress } from '../page/address';
import { wordLikeness } from '../page/area';
import type { Slices } from '../page/slices';
import type { Price } from '../types';
import { offerPrices } from './data-price';
import { hasType, type Item, itemsOf, textOf, textsOf, wordsOf } from './item';
import { offersOf } from './offer-facts';
import { isProduct } from './product-facts';
import { groupOf } from './variants';

/** What is seen of the page, for telling which of its products it is about. */
export interface PageFacts {
  url: string;
  base: string;
  /** The seen heading, null when there is none. */
  heading: string | null;
  /** Other names of the page: its title, its title for sharing. */
  titles: readonly string[];
  /** Prices seen, most likely first. */
  seen: readonly Price[];
}

export interface Choice {
  product: Item;
  score: number;
  /** The data names another page or another heading than the one shown: it was left behind by a navigation. */
  stale: boolean;
}

export interface Chosen {
  /** The product, or null when the data names none or cannot tell. */
  choice: Choice | null;
  /** Products that fit as well, the chosen one included, when it is a tie. */
  tie: Choice[];
  products: number;
}

const listHolders =
  /^(itemlistelement|isrelatedto|issimilarto|isaccessoryorsparepartfor|isconsumablefor|itemoffered_list|mentions|hasofferCatalog)$/i;

/** Whether a thing stands in a list of things or is named as related to another product. */
function isAside(item: Item): boolean {
  const seen = new Set<Item>();
  for (let step: Item | null = item; step?.holder && !seen.has(step); step = step.holder.item) {
    seen.add(step);
    if (listHolders.test(step.holder.property)) return true;
    if (hasType(step.holder.item, 'ItemList', 'OfferCatalog', 'Organization')) return true;
  }
  return false;
}

const isMainEntity = (item: Item): boolean =>
  item.holder?.property === 'mainentity' || itemsOf(item, 'mainEntityOfPage').length > 0;

/** Addresses that a product gives as its own. */
function addressesOf(product: Item): string[] {
  const own = [
    product.id ?? '',
    ...textsOf(product, 'url', 'mainEntityOfPage'),
    ...offersOf(product).flatMap((offer) => textsOf(offer, 'url')),
  ];
  return own.filter((address) => address !== '' && !address.startsWith('#') && !address.startsWith('_:'));
}

function urlFit(product: Item, facts: PageFacts): number {
  const addresses = addressesOf(product);
  if (addresses.some((address) => samePage(address, facts.url, facts.base))) return 5;
  const page = webAddress(facts.url, facts.base);
  const pathOf = (address: string) => withoutEnd(new URL(address).pathname, /\//);
  const absolute = addresses
    .map((address) => webAddress(address, facts.base))
    .filter((one): one is string => one !== null);
  if (page && absolute.some((address) => pathOf(address) === pathOf(page) && pathOf(page) !== '')) return 3;
  return codeInAddress(product, facts.url) ? 3 : absolute.length > 0 ? -1 : 0;
}

function codeInAddress(product: Item, url: string): boolean {
  const codes = textsOf(product, 'sku', 'productID', 'mpn').map((code) => code.replace(/^.*:/, ''));
  const path = url.toLowerCase().split(/[^\p{L}\p{N}]+/u);
  return codes.some((code) => code.length >= 3 && path.includes(code.toLowerCase()));
}

function priceFits(product: Item, facts: PageFacts, hints: PriceHints): boolean {
  const prices = offersOf(product).flatMap((offer) => offerPrices(offer, hints));
  const [main] = facts.seen;
  return (
    main !== undefined && prices.some(({ price }) => price.minor === main.minor && price.exponent === main.exponent)
  );
}

function rate(product: Item, facts: PageFacts, hints: PriceHints): Choice {
  const name = wordsOf(product, 'name', 'title');
  const url = urlFit(product, facts);
  const likeness = facts.heading === null || name === '' ? null : wordLikeness(name, facts.heading);
  const inTitle = Math.max(0, ...facts.titles.map((title) => wordLikeness(name, title)));
  const score =
    url +
    (isMainEntity(product) ? 3 : 0) +
    (isAside(product) ? -3 : 0) +
    (likeness ?? 0) * 4 +
    inTitle +
    (priceFits(product, facts, hints) ? 1.5 : 0) +
    (offersOf(product).length > 0 ? 1 : 0) +
    (textOf(product, 'description') === null ? 0 : 0.3);
  return { product, score, stale: isStale(product, facts, hints, likeness, inTitle, url) };
}

/**
 * Data is stale when it names another page or nothing of the seen heading, and its price is not the one seen. A page
 * without heading and price says nothing against its data.
 */
function isStale(
  product: Item,
  facts: PageFacts,
  hints: PriceHints,
  likeness: number | null,
  inTitle: number,
  url: number,
): boolean {
  if (likeness === null || url >= 3) return false;
  const otherName = likeness < 0.34 && inTitle < 0.67;
  const otherPrice = facts.seen.length > 0 && !priceFits(product, facts, hints);
  return otherName && (otherPrice || url < 0);
}

/** Picks the product that the page is about. Products that only stand in a list win only by address or heading. */
export async function chooseProduct(
  items: readonly Item[],
  facts: PageFacts,
  hints: PriceHints,
  slices: Slices,
): Promise<Chosen> {
  const products = distinct(items.filter(isProduct));
  const rated: Choice[] = [];
  for (const product of products) {
    if (slices.due) await slices.rest();
    rated.push(rate(product, facts, hints));
  }
  rated.sort((a, b) => b.score - a.score);
  const [best, second] = rated;
  if (!best) return { choice: null, tie: [], products: 0 };
  if (products.length > 1 && isAside(best.product) && best.score < 2)
    return { choice: null, tie: [], products: products.length };
  const group = groupOf(best.product);
  const [lead, next] = rated.filter((one) => groupOf(one.product) === group);
  if (group && lead && next && lead.score - next.score < 0.6)
    return { choice: { ...best, product: group }, tie: [], products: products.length };
  const tie =
    second && best.score - second.score < 0.6 && !sameThing(best.product, second.product)
      ? rated.filter((one) => best.score - one.score < 0.6)
      : [];
  return { choice: best, tie, products: products.length };
}

/** Mentions of one product in several notations count once for a tie. */
function sameThing(a: Item, b: Item): boolean {
  const [left, right] = [wordsOf(a, 'name'), wordsOf(b, 'name')];
  if (a.origin !== b.origin) return left === right || wordLikeness(left, right) > 0.8;
  return a.properties === b.properties || a.holder?.item === b || b.holder?.item === a;
}

/** Whether an item of another notation describes the chosen product. */
export const describesSame = (item: Item, product: Item): boolean =>
  item.types.some((type) => product.types.includes(type)) &&
  wordLikeness(wordsOf(item, 'name'), wordsOf(product, 'name')) > 0.8;

/** One of those that share their properties after joining by id. */
function distinct(items: Item[]): Item[] {
  const seen = new Set<Item['properties']>();
  return items.filter((item) => {
    if (seen.has(item.properties)) return false;
    seen.add(item.properties);
    return true;
  });
}
