import * as z from 'zod';
import { shares } from '../evidence';
import { priceSchema } from '../listing/types';
import { askFor } from './asks';
import { kindestFloor } from './floors';
import { defineCheck, fromMakerFile, makerFileSource } from './frame';
import { floorSchema } from './money';
import { pairKind } from './pairs';
import { because } from './reasons';

export const usedPricePlausible = defineCheck({
  id: 'used-price-plausible',
  family: 'price',
  kinds: ['doubt'],
  source: makerFileSource,
  data: z.strictObject({ price: priceSchema, maker: z.string(), floor: floorSchema }),
  limits: { implausibleShare: shares.ofUsed },
  needs: {
    onePiece: true,
    maker: ['trade'],
    claims: ['condition'],
    listing: ['condition'],
    stated: ['price'],
    evidence: true,
    pairs: true,
  },
  run({ maker, claims, listing, stated, evidence, pairOf }) {
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
    const asked = evidence.find(({ says }) => says.kind === 'asked-used');
    const best = kindestFloor(asked, 'used-price', evidence, pairOf);
    if (!asked || !best) return { cannotTell: because('price-without-like', { price }) };
    if (pairKind(best.pair) !== 'doubt' || price.kind !== 'sale') return [];
    const { floor } = best;
    return [
      {
        kind: 'doubt',
        data: { price, maker: maker.name, floor },
        evidence: [asked.id, best.id],
        source: fromMakerFile(maker.name, { of: 'new-price', year: floor.year }, maker.trade.source),
        asks: [askFor('purchase', {})],
      },
    ];
  },
});
