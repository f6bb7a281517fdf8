import * as z from 'zod';
import { priceSchema } from '../listing/types';
import { askFor } from './asks';
import { defineCheck, fromMakerFile, makerFileSource } from './frame';
import { floorSchema, largestShare } from './money';
import { because } from './reasons';

/** A used piece in order is rarely offered under this share of the smallest new price. Common practice, no source. */
const implausibleShare = 1 / 15;

export const usedPricePlausible = defineCheck({
  id: 'used-price-plausible',
  family: 'price',
  kinds: ['doubt'],
  source: makerFileSource,
  data: z.strictObject({ price: priceSchema, maker: z.string(), floor: floorSchema }),
  limits: { implausibleShare },
  needs: { onePiece: true, maker: ['trade'], claims: ['condition'], listing: ['condition'], stated: ['price'] },
  run({ maker, claims, listing, stated }) {
    const conditions = [
      ...claims.condition.map(({ condition }) => condition),
      ...listing.condition.map(({ value }) => value),
    ];
    if (conditions.some((one) => one === 'new' || one === 'unused'))
      return { notApplicable: because('called-new', {}) };
    if (conditions.some((one) => one === 'damaged' || one === 'worn')) return [];
    const floors = maker.trade.newPriceFloor ?? [];
    if (floors.length === 0) return { notApplicable: because('maker-file-without-price', { maker: maker.name }) };
    const price = stated.price.value;
    const shares = floors.flatMap((floor) => {
      const share = largestShare(price, floor);
      return share === null ? [] : [{ floor, share }];
    });
    const best = shares.sort((a, b) => b.share - a.share)[0];
    if (!best) return { cannotTell: because('price-without-like', { price }) };
    if (best.share >= implausibleShare || price.kind !== 'sale') return [];
    const { floor } = best;
    return [
      {
        kind: 'doubt',
        data: { price, maker: maker.name, floor },
        source: fromMakerFile(maker.name, `smallest new price of ${floor.year}`, maker.trade.source),
        asks: [askFor('purchase', {})],
      },
    ];
  },
});
