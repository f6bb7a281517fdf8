import { practice } from './frame';
import { amountOf, priceWords } from './money';
import { commonAsks } from './wording';
import { defineWritten } from './written';

/** A price cut beyond this share is more lure than sale. Common practice, no source. */
const implausibleCut = 0.7;

export const priceCutPlausible = defineWritten({
  id: 'price-cut-plausible',
  family: 'price',
  title: 'The price cut is of a usual size',
  failureTitle: 'The price is said to be cut by more than is usual',
  kinds: ['doubt'],
  basis: 'A “was” price far above the price asked is often invented.',
  innocent: 'The higher price may be what the piece cost new in a shop.',
  settles: 'Where the higher price comes from.',
  source: practice,
  needs: { stated: ['price'], listing: ['price'], claims: ['price'] },
  run({ listing, claims }) {
    const prices = [...listing.price.map(({ value }) => value), ...claims.price.map(({ price }) => price)];
    const sale = prices.find(({ kind }) => kind === 'sale');
    const was = prices.find(({ kind }) => kind === 'was');
    if (!sale || !was) return { notApplicable: 'the listing states no earlier price' };
    if (sale.currency !== was.currency) return { cannotTell: 'the two prices are in different currencies' };
    const cut = 1 - amountOf(sale) / amountOf(was);
    if (!(cut > implausibleCut)) return [];
    const statement = `The price was cut from ${priceWords(was)} to ${priceWords(sale)}, by ${Math.round(cut * 100)}%.`;
    return [{ kind: 'doubt', statement, asks: [commonAsks.purchase] }];
  },
});
