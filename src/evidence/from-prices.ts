import type { Claim } from '../claim/types';
import type { Listing, Price } from '../listing/types';
import { plainName } from '../maker';
import type { FilePrice, MakerFile } from '../maker/types';
import type { Source } from '../source';
import { isExcepted } from './exceptions';
import { fileSource } from './file-source';
import { evidenceId } from './ids';
import { amountOf, dollarRange } from './money';
import type { Amount, EvidenceAbout } from './types';

type PriceEvidence = EvidenceAbout<'price'>;
type Said = Exclude<PriceEvidence['says'], { kind: 'floor' | 'floor-then' | 'floor-like' }>;
/** What of a page speaks of money. */
export type PricedListing = Pick<Listing, 'price' | 'condition'>;

const plain: Pick<PriceEvidence, 'about' | 'spans' | 'places' | 'strength'> = {
  about: 'price',
  spans: [],
  places: [],
  strength: 'soft',
};

/** What is asked, on the page, in its data and before, and the least prices of the maker's file, of this model where it says so. */
export function fromPrices(
  claims: readonly Claim[],
  listing: PricedListing,
  maker: MakerFile | null,
  model: string | null = null,
): PriceEvidence[] {
  return [
    ...shownAndInData(listing),
    ...nowAndBefore(claims, listing),
    ...asked(claims, listing),
    ...floors(claims, listing, maker, model),
  ];
}

function priced(kind: Said['kind'], price: Price, at: number, amounts: Amount[]): PriceEvidence {
  const id = evidenceId.price(kind, at);
  const source: Source = { kind: 'listing', field: 'price' };
  return { ...plain, id, from: { kind: 'listing', id }, basis: id, amounts, says: { kind, price }, source };
}

const ownAmount = (amount: number, currency: string | null): Amount => ({
  of: 'price',
  unit: currency ?? 'unknown',
  least: amount,
  most: amount,
});

/** What a sum may have been worth in dollars, for want of the same currency. */
function inDollars(amount: number, currency: string): Amount[] {
  const range = dollarRange(amount, currency);
  return range ? [{ of: 'price', unit: 'dollars', least: range[0], most: range[1] }] : [];
}

const isPlain = ({ otherMinor }: Price): boolean => !otherMinor?.length;

/** The price that the page shows, and what its data give; a sum that can be read in two ways says nothing. */
function shownAndInData({ price }: PricedListing): PriceEvidence[] {
  const sales = price
    .map((one, at) => ({ ...one, at }))
    .filter(({ value, caveats }) => value.kind === 'sale' && !caveats?.includes('stale'));
  const shown = sales.find(({ origin }) => origin === 'visible');
  const given = sales.filter(({ origin }) => origin !== 'visible' && origin !== 'user-pick');
  const saying = (kind: Said['kind'], some: typeof sales) =>
    some
      .filter(({ value }) => isPlain(value))
      .map(({ value, at }) => priced(kind, value, at, [ownAmount(amountOf(value), value.currency)]));
  return [...saying('price-shown', shown ? [shown] : []), ...saying('price-in-data', given)];
}

/** The first price that is asked now, and the first that is said to have been asked before. */
function nowAndBefore(claims: readonly Claim[], { price }: PricedListing): PriceEvidence[] {
  // What the piece cost when it was new is no price that was cut: a used one is worth a part of it.
  const whenNew = price.filter(({ caveats }) => caveats?.includes('when-new')).map(({ value }) => value.minor);
  const prices = [
    ...price.map(({ value }) => value),
    ...claims.flatMap((one) => (one.kind === 'price' ? [one.price] : [])),
  ].filter(({ kind, minor }) => kind !== 'was' || !whenNew.includes(minor));
  return [['price-now', 'sale'] as const, ['price-before', 'was'] as const].flatMap(([kind, of]) => {
    const found = prices.find((one) => one.kind === of);
    return found ? [priced(kind, found, 0, [ownAmount(amountOf(found), found.currency)])] : [];
  });
}

/** The best price of the page, of a piece that is called new or of any other; in dollars too, for a file in another currency. */
function asked(claims: readonly Claim[], listing: PricedListing): PriceEvidence[] {
  const price = listing.price[0]?.value;
  if (!price || price.currency === null || !isPlain(price)) return [];
  const amounts = [ownAmount(amountOf(price), price.currency), ...inDollars(amountOf(price), price.currency)];
  return [priced(isCalled(claims, listing, isUnused) ? 'asked-new' : 'asked-used', price, 0, amounts)];
}

/** Whether the seller or the page's own field calls the piece so. */
const isCalled = (
  claims: readonly Claim[],
  { condition: [best] }: PricedListing,
  so: (condition: string) => boolean,
): boolean =>
  claims.some((claim) => claim.kind === 'condition' && so(claim.condition)) || (best !== undefined && so(best.value));

/** The conditions that say a piece was never used. */
const isUnused = (condition: string): boolean => condition === 'new' || condition === 'unused';

/** What a file says pieces cost at least: of this model where it says so of it, else of any piece. */
function leastPrices({ prices }: MakerFile, model: string | null, of: (price: FilePrice) => boolean) {
  const named = model === null ? [] : [model];
  const all = prices.flatMap((price) =>
    price.least !== undefined && of(price) && !isExcepted(price, named) ? [{ ...price, least: price.least }] : [],
  );
  const own = all.filter((price) => isOfModel(price.model, model));
  const found = own.length > 0 ? own : all.filter((price) => price.model === undefined);
  return found.map(({ least, currency, year, model: of, sources = [] }) => ({
    floor: { amount: least, currency, year, ...(of === undefined ? {} : { model: of }) },
    currency,
    year,
    sources,
  }));
}

const isOfModel = (one: string | undefined, model: string | null): boolean =>
  one !== undefined && model !== null && plainName(one) === plainName(model);

const againstFloor = (
  { floor }: ReturnType<typeof leastPrices>[number],
  id: string,
  at: number,
): Omit<PriceEvidence, 'says' | 'source'> => ({
  ...plain,
  id,
  from: { kind: 'maker-file', id: String(at) },
  basis: id.replace(/-(?=\d)/, ':'),
  amounts: [ownAmount(floor.amount, floor.currency), ...inDollars(floor.amount, floor.currency)],
});

function floors(
  claims: readonly Claim[],
  listing: PricedListing,
  maker: MakerFile | null,
  model: string | null,
): PriceEvidence[] {
  if (!maker) return [];
  const currency = listing.price[0]?.value.currency ?? null;
  const all = leastPrices(maker, model, (price) => isUnused(price.condition));
  const made = claims.find((claim) => claim.kind === 'made');
  const then = floorsThen(all, currency, made?.span.to ?? null);
  const likes = leastPrices(
    maker,
    model,
    (price) => !isUnused(price.condition) && isCalled(claims, listing, (one) => one === price.condition),
  );
  // What pieces of this condition cost in a year long past says little of today: the latest year counts.
  const like = floorsThen(likes, currency, null);
  return [
    ...all.map((one, at): PriceEvidence => {
      const kind = then.includes(one) ? 'floor-then' : 'floor';
      return {
        ...againstFloor(one, evidenceId.floor(at), at),
        says: { kind, maker: maker.maker, ...one.floor },
        source: fileSource(maker, one.sources),
      };
    }),
    ...like.map(
      (one, at): PriceEvidence => ({
        ...againstFloor(one, evidenceId.likeFloor(at), at),
        says: { kind: 'floor-like', maker: maker.maker, ...one.floor },
        source: fileSource(maker, one.sources),
      }),
    ),
  ];
}

/** The prices in the same currency where there are any, of the latest year that is not after the piece was made; of the latest year when that is not said. */
export function floorsThen<F extends { year: number; currency: string }>(
  all: readonly F[],
  currency: string | null,
  madeBy: string | null,
): F[] {
  const own = all.filter((floor) => floor.currency === currency);
  const floors = own.length > 0 ? own : all;
  const until = madeBy === null ? Number.POSITIVE_INFINITY : Number(madeBy.slice(0, 4));
  const years = floors.map(({ year }) => year);
  const before = years.filter((year) => year <= until);
  const year = before.length > 0 ? Math.max(...before) : Math.min(...years);
  return floors.filter((floor) => floor.year === year);
}
