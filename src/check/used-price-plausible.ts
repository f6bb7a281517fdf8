import { fromMakerFile, makerFileSource } from './frame';
import { largestShare, priceWords, ratesSource } from './money';
import { commonAsks } from './wording';
import { defineWritten } from './written';

/** A used piece in order is rarely offered under this share of the smallest new price. Common practice, no source. */
const implausibleShare = 1 / 15;

const rule = 'Even used, a piece rarely goes for less than a fifteenth of the maker’s smallest new price.';

export const usedPricePlausible = defineWritten({
  id: 'used-price-plausible',
  family: 'price',
  title: 'The price fits a used piece of this maker',
  failureTitle: 'The price is very low even for a used piece of this maker',
  kinds: ['doubt'],
  basis: rule,
  innocent: 'The piece may be damaged, a small accessory, or the seller may not know the maker.',
  settles: 'Photos of all parts, and why the price is low.',
  source: makerFileSource,
  needs: { maker: ['trade'], claims: ['condition'], listing: ['condition'], stated: ['price'] },
  run({ maker, claims, listing, stated }) {
    const conditions = [
      ...claims.condition.map(({ condition }) => condition),
      ...listing.condition.map(({ value }) => value),
    ];
    if (conditions.some((one) => one === 'new' || one === 'unused'))
      return { notApplicable: 'the piece is called new' };
    if (conditions.some((one) => one === 'damaged' || one === 'worn')) return [];
    const floors = maker.trade.newPriceFloor ?? [];
    if (floors.length === 0) return { notApplicable: `the maker file of ${maker.name} gives no price` };
    const price = stated.price.value;
    const shares = floors.flatMap((floor) => {
      const share = largestShare(price, floor);
      return share === null ? [] : [{ floor, share }];
    });
    const best = shares.sort((a, b) => b.share - a.share)[0];
    if (!best) return { cannotTell: `${priceWords(price)} cannot be compared with the maker file's prices` };
    if (best.share >= implausibleShare || price.kind !== 'sale') return [];
    const { floor } = best;
    return [
      {
        kind: 'doubt',
        statement: `${priceWords(price)} is less than a fifteenth of ${maker.name}'s smallest new price (${floor.currency} ${floor.amount} in ${floor.year}), and the listing names no damage.`,
        basis: price.currency === floor.currency ? [rule] : [rule, ratesSource],
        source: fromMakerFile(maker.name, `smallest new price of ${floor.year}`, maker.trade.source),
        asks: [commonAsks.purchase],
      },
    ];
  },
});
