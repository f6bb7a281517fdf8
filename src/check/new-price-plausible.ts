import * as z from 'zod';
import type { ClaimOf } from '../claim/types';
import { shares } from '../evidence';
import { type Listing, priceSchema } from '../listing/types';
import { askFor } from './asks';
import { kindestFloor } from './floors';
import { defineCheck, fromMakerFile, makerFileSource } from './frame';
import { floorSchema } from './money';
import { pairKind } from './pairs';
import { because } from './reasons';
import { saidSchema } from './types';

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
  limits: { implausibleShare: shares.ofNew },
  needs: {
    onePiece: true,
    maker: ['prices'],
    claims: ['condition'],
    listing: ['condition'],
    stated: ['price'],
    evidence: true,
    pairs: true,
  },
  run(facts) {
    const said = newWords(facts);
    if (!said) return { notApplicable: because('not-called-new', {}) };
    if (!facts.evidence.some(({ says }) => says.kind === 'floor' || says.kind === 'floor-then'))
      return { notApplicable: because('maker-file-without-price', { maker: facts.maker.name }) };
    const price = facts.stated.price.value;
    const asked = facts.evidence.find(({ says }) => says.kind === 'asked-new');
    const best = kindestFloor(asked, 'new-price', facts.evidence, facts.pairOf);
    if (!asked || !best) return { cannotTell: because('price-without-like', { price }) };
    if (pairKind(best.pair) !== 'doubt') return [];
    const { floor, sources } = best;
    const source = fromMakerFile(facts.maker.name, { of: 'new-price', year: floor.year }, sources);
    const { words, inData } = said;
    const data = { said: { words, inData }, price, maker: facts.maker.name, floor, share: best.pair.share ?? 0 };
    return [
      {
        kind: 'doubt',
        data,
        claims: said.claims,
        evidence: [asked.id, best.id],
        source,
        asks: [askFor('purchase', {})],
      },
    ];
  },
});

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
