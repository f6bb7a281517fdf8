import * as z from 'zod';
import { priceSchema } from '../listing/types';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { amountOf } from './money';
import { because } from './reasons';

/** A price cut beyond this share is more lure than sale. Common practice, no source. */
const implausibleCut = 0.7;

export const priceCutPlausible = defineCheck({
  id: 'price-cut-plausible',
  family: 'price',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ was: priceSchema, sale: priceSchema, cut: z.number() }),
  limits: { implausibleCut },
  needs: { stated: ['price'], listing: ['price'], claims: ['price'] },
  run({ listing, claims }) {
    const prices = [...listing.price.map(({ value }) => value), ...claims.price.map(({ price }) => price)];
    const sale = prices.find(({ kind }) => kind === 'sale');
    const was = prices.find(({ kind }) => kind === 'was');
    if (!sale || !was) return { notApplicable: because('no-earlier-price', {}) };
    if (sale.currency !== was.currency) return { cannotTell: because('prices-in-two-currencies', {}) };
    const cut = 1 - amountOf(sale) / amountOf(was);
    if (!(cut > implausibleCut)) return [];
    return [{ kind: 'doubt', data: { was, sale, cut }, asks: [askFor('purchase', {})] }];
  },
});
