import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, fromMakerFile, makerFileSource } from './frame';
import { because } from './reasons';
import { modelMm, sidedSchema, sides, statedSide } from './sizes';

/** Sellers measure a soft body with a loose tape. Common practice, no source. */
const tapeMm = 5;

/** A side that is off: the words that state it, and the model's length. */
const offSchema = sidedSchema.extend({ words: z.string(), expectedMm: z.number() });

export const sizeAgainstModel = defineCheck({
  id: 'size-against-model',
  family: 'size',
  kinds: ['doubt', 'agreement'],
  source: makerFileSource,
  data: z.strictObject({
    model: z.string(),
    off: z.array(offSchema),
    /** The sides that fit. */
    fits: z.array(sidedSchema),
  }),
  limits: { tapeMm },
  needs: { maker: ['models'], claims: ['measure'], facts: ['model', 'sides'] },
  run(facts) {
    const { claims, maker, fact } = facts;
    const { model } = fact.model;
    if (!model.size) return { notApplicable: because('model-without-size', { model: model.name }) };
    const expected = modelMm(model.size);
    const off: z.infer<typeof offSchema>[] = [];
    const fits: z.infer<typeof sidedSchema>[] = [];
    for (const side of sides) {
      const mm = expected.mm[side];
      const stated = statedSide(fact.sides, side);
      if (mm === undefined || !stated) continue;
      const allowed = expected.toleranceMm + stated.precisionMm + tapeMm;
      if (Math.abs(stated.mm - mm) <= allowed) fits.push({ side, mm: stated.mm });
      else off.push({ side, mm: stated.mm, words: stated.words, expectedMm: mm });
    }
    if (off.length + fits.length === 0) return { cannotTell: because('no-sides-stated', {}) };
    const ids = [...fact.model.claims, ...claims.measure.map(({ id }) => id)];
    const source = fromMakerFile(maker.name, `size of ${model.name}`, model.source);
    const common = { data: { model: model.name, off, fits }, claims: ids, source };
    return off.length > 0
      ? [{ kind: 'doubt', ...common, asks: [askFor('measures', {})] }]
      : [{ kind: 'agreement', ...common }];
  },
});
