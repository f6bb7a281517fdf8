import * as z from 'zod';
import type { ClaimOf } from '../claim/types';
import { type Listing, priceSchema } from '../listing/types';
import { askFor } from './asks';
import { defineCheck, fromMakerFile, makerFileSource } from './frame';
import { floorSchema, largestShare } from './money';
import { because } from './reasons';
import { saidSchema } from './types';

/** A new piece offered under this share of the maker's smallest new price is implausible. Common practice, no source. */
const implausibleShare = 1 / 3;

export const newPricePlausible = defineCheck({
  id: 'new-price-plausible',
  family: 'price',
  kinds: ['doubt'],
  source: makerFileSource,
  data: z.strictObject({
    said: saidSchema,
    price: priceSchema,
    maker: z.string(),
    floor: floorSchema,
    share: z.number(),
  }),
  limits: { implausibleShare },
  needs: { onePiece: true, maker: ['trade'], claims: ['condition', 'made'], listing: ['condition'], stated: ['price'] },
  run(facts) {
    const said = newWords(facts);
    if (!said) return { notApplicable: because('not-called-new', {}) };
    const floors = facts.maker.trade.newPriceFloor ?? [];
    if (floors.length === 0) return { notApplicable: because('maker-file-without-price', { maker: facts.maker.name }) };
    const price = facts.stated.price.value;
    const shares = floorsThen(floors, price.currency, facts.claims.made[0]?.span.to ?? null).map((floor) => ({
      floor,
      share: largestShare(price, floor),
    }));
    const best = shares.filter(({ share }) => share !== null).sort((a, b) => (b.share ?? 0) - (a.share ?? 0))[0];
    if (!best || best.share === null) return { cannotTell: because('price-without-like', { price }) };
    if (best.share >= implausibleShare) return [];
    const { floor } = best;
    const source = fromMakerFile(facts.maker.name, `smallest new price of ${floor.year}`, facts.maker.trade.source);
    const { words, inData } = said;
    const data = { said: { words, inData }, price, maker: facts.maker.name, floor, share: best.share };
    return [
      {
        kind: 'doubt',
        data,
        claims: said.claims,
        source,
        asks: [askFor('purchase', {})],
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
