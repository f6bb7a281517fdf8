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
  /** `like`: the floor is that of pieces in this condition, not of new ones. */
  data: z.strictObject({ price: priceSchema, maker: z.string(), floor: floorSchema, like: z.literal(true).optional() }),
  limits: { implausibleShare: shares.ofUsed, implausibleShareOfLike: shares.ofLike },
  needs: {
    onePiece: true,
    maker: ['prices'],
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
    const like = evidence.some(({ says }) => says.kind === 'floor-like');
    if (!like && !evidence.some(({ says }) => says.kind === 'floor' || says.kind === 'floor-then'))
      return { notApplicable: because('maker-file-without-price', { maker: maker.name }) };
    const price = stated.price.value;
    const asked = evidence.find(({ says }) => says.kind === 'asked-used');
    const best = kindestFloor(asked, like ? 'like-price' : 'used-price', evidence, pairOf);
    if (!asked || !best) return { cannotTell: because('price-without-like', { price }) };
    if (pairKind(best.pair) !== 'doubt' || price.kind !== 'sale') return [];
    const { floor, sources } = best;
    return [
      {
        kind: 'doubt',
        data: { price, maker: maker.name, floor, ...(like && { like }) },
        evidence: [asked.id, best.id],
        source: fromMakerFile(maker.name, { of: like ? 'price' : 'new-price', year: floor.year }, sources),
        asks: [askFor('purchase', {})],
      },
    ];
  },
});
