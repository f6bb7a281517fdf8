import type { ClaimOf } from '../claim/types';
import type { Listing } from '../listing/types';
import { fromMakerFile, makerFileSource } from './frame';
import { largestShare, priceWords, ratesSource } from './money';
import { commonAsks, saying } from './wording';
import { defineWritten } from './written';

/** A new piece offered under this share of the maker's smallest new price is implausible. Common practice, no source. */
const implausibleShare = 1 / 3;

export const newPricePlausible = defineWritten({
  id: 'new-price-plausible',
  family: 'price',
  title: 'The price fits a new piece',
  failureTitle: 'The price is implausible for a new piece of this maker',
  kinds: ['doubt'],
  basis: 'A new or unused piece is rarely offered for less than a third of the maker’s smallest new price.',
  innocent: 'The piece may be a gift that the seller wants gone, or not as new as the seller thinks.',
  settles: 'The receipt, and photos of corners, handles and inside.',
  source: makerFileSource,
  needs: { maker: ['trade'], claims: ['condition', 'made'], listing: ['condition'], stated: ['price'] },
  run(facts) {
    const said = newWords(facts);
    if (!said) return { notApplicable: 'the listing does not call the piece new or unused' };
    const floors = facts.maker.trade.newPriceFloor ?? [];
    if (floors.length === 0) return { notApplicable: `the maker file of ${facts.maker.name} gives no price` };
    const price = facts.stated.price.value;
    const shares = floorsThen(floors, price.currency, facts.claims.made[0]?.span.to ?? null).map((floor) => ({
      floor,
      share: largestShare(price, floor),
    }));
    const best = shares.filter(({ share }) => share !== null).sort((a, b) => (b.share ?? 0) - (a.share ?? 0))[0];
    if (!best || best.share === null)
      return { cannotTell: `${priceWords(price)} cannot be compared with the maker file's prices` };
    if (best.share >= implausibleShare) return [];
    const { floor } = best;
    const statement = `${saying(said.words, said.inData)} at ${priceWords(price)}; ${facts.maker.name}'s smallest new piece was ${floor.currency} ${floor.amount} in ${floor.year}.`;
    const source = fromMakerFile(facts.maker.name, `smallest new price of ${floor.year}`, facts.maker.trade.source);
    const rates = price.currency === floor.currency ? [] : [ratesSource];
    const share = `${priceWords(price)} is at most ${Math.round(best.share * 100)}% of ${floor.currency} ${floor.amount}`;
    return [
      {
        kind: 'doubt',
        statement,
        basis: [share, ...rates],
        claims: said.claims,
        source,
        asks: [commonAsks.purchase],
      },
    ];
  },
});

/** The prices in the same currency where there are any, of the latest year that is not after the piece was made; of the latest year when that is not said. */
export function floorsThen<F extends { year: number; currency: string }>(
  all: F[],
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

type Condition = { words: string; inData: boolean; claims: string[] };
function newWords(facts: {
  claims: { condition: ClaimOf<'condition'>[] };
  listing: Pick<Listing, 'condition'>;
}): Condition | null {
  const isNew = (condition: string) => condition === 'new' || condition === 'unused';
  const claim = facts.claims.condition.find(({ condition }) => isNew(condition));
  if (claim) return { words: claim.words, inData: claim.at.field === 'data', claims: [claim.id] };
  const field = facts.listing.condition[0];
  if (!field || !isNew(field.value)) return null;
  return {
    words: field.words ?? field.value,
    inData: field.words === undefined || field.origin !== 'visible',
    claims: [],
  };
}
