import * as z from 'zod';
import {
  type Evidence,
  evidenceId,
  familyShare,
  mistakenUnit,
  roomMm,
  type StatedSide,
  sizedModels,
} from '../evidence';
import { askFor } from './asks';
import { defineCheck, fromMakerFile, makerFileSource } from './frame';
import { type PairOf, pairKind } from './pairs';
import { because } from './reasons';
import { sidedSchema } from './sizes';

/** All sides wrong by one factor, which a unit taken for another explains. */
const unitSchema = z.strictObject({
  fault: z.literal('unit'),
  model: z.string(),
  sides: z.array(sidedSchema),
  factor: z.number(),
  mistaken: z.enum(['inches-as-cm', 'cm-as-inches', 'cm-as-mm', 'mm-as-cm']),
});
/** Two sides in a proportion that no size of the model has. */
const shapeSchema = z.strictObject({
  fault: z.literal('shape'),
  one: sidedSchema,
  other: sidedSchema,
  models: z.array(z.string()),
  /** The proportions that the models have. */
  least: z.number(),
  most: z.number(),
});

export const measuresProportion = defineCheck({
  id: 'measures-proportion',
  family: 'size',
  kinds: ['doubt'],
  source: makerFileSource,
  data: z.discriminatedUnion('fault', [unitSchema, shapeSchema]),
  limits: { tapeMm: roomMm.tape, familyShare },
  needs: {
    onePiece: true,
    maker: ['models'],
    claims: ['model', 'measure'],
    listing: ['model', 'title'],
    evidence: true,
    pairs: true,
    facts: ['sides'],
    perhaps: ['model'],
  },
  run({ listing, claims, maker, evidence, pairOf, fact }) {
    const said = { model: claims.model, fields: [listing.model, listing.title] };
    const { own, relatives } = sizedModels(maker.models, said);
    if (!own && relatives.length === 0) return { notApplicable: because('no-sized-relative', {}) };
    if (fact.sides.length < 2) return { cannotTell: because('fewer-than-two-sides', {}) };
    const found = own ? confusedUnit(own.name, fact.sides, evidence) : otherShape(evidence, pairOf);
    if (found === null) return [];
    const named = own ? [own] : relatives;
    return [
      {
        kind: 'doubt',
        ...found,
        claims: [...('is' in fact.model ? fact.model.is.claims : []), ...claims.measure.map(({ id }) => id)],
        source: fromMakerFile(maker.name, { of: 'sizes', names: named.map(({ name }) => name) }),
        asks: [askFor('measures', {})],
      },
    ];
  },
});

/** Says which unit would explain all sides at once; null when the sides fit, or no unit explains them. */
function confusedUnit(model: string, stated: readonly StatedSide[], evidence: readonly Evidence[]) {
  const confusion = mistakenUnit(evidence);
  if (!confusion) return null;
  const own = stated.filter(({ id }) => confusion.sides.includes(id));
  const { factor, mistaken } = confusion;
  const data: z.infer<typeof unitSchema> = {
    fault: 'unit',
    model,
    sides: own.map(({ side, mm }) => ({ side, mm })),
    factor,
    mistaken,
  };
  return { data, evidence: own.flatMap(({ id, side }) => [id, evidenceId.modelSize(side)]) };
}

/** Says which two sides stand in a proportion that no size of the model has; null when all could. */
function otherShape(evidence: readonly Evidence[], pairOf: PairOf) {
  const known = new Map(evidence.map(({ id, says }) => [id, says]));
  for (const { id, says } of evidence) {
    if (says.kind !== 'proportion') continue;
    const family = evidenceId.familyProportion(`${says.one.side}:${says.other.side}`);
    const has = known.get(family);
    if (has?.kind !== 'family-proportion' || pairKind(pairOf('proportion-family', id, family)) !== 'doubt') continue;
    const { models, least, most } = has;
    const data: z.infer<typeof shapeSchema> = { fault: 'shape', one: says.one, other: says.other, models, least, most };
    return { data, evidence: [id, family] };
  }
  return null;
}
