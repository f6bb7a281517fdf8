import * as z from 'zod';
import { evidenceId, roomMm, sizedRuns } from '../evidence';
import { spanSchema } from '../span/types';
import { askFor } from './asks';
import { defineCheck, fromMakerFile, makerFileSource } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';
import { sidedSchema } from './sizes';

/** A side that is off: the words that state it, and the model's length. */
const offSchema = sidedSchema.extend({ words: z.string(), expectedMm: z.number() });

export const sizeAgainstModel = defineCheck({
  id: 'size-against-model',
  family: 'size',
  kinds: ['doubt', 'agreement'],
  source: makerFileSource,
  data: z.strictObject({
    model: z.string(),
    /** The years of the size that was looked at, where the file gives them. */
    made: spanSchema.optional(),
    off: z.array(offSchema),
    /** The sides that fit. */
    fits: z.array(sidedSchema),
  }),
  limits: { tapeMm: roomMm.tape },
  needs: { maker: ['models'], claims: ['measure'], evidence: true, pairs: true, facts: ['model', 'sides'] },
  run({ claims, maker, fact, evidence, pairOf }) {
    const { model } = fact.model;
    if (sizedRuns(model).length === 0) return { notApplicable: because('model-without-size', { model: model.name }) };
    const found = fact.sides.flatMap(({ id, side, mm, words }) => {
      const expected = evidence.find((piece) => piece.id === evidenceId.modelSize(side));
      const kind = pairKind(pairOf('size-model', id, evidenceId.modelSize(side)));
      if (!kind || expected?.says.kind !== 'model-size') return [];
      const { mm: expectedMm, made } = expected.says;
      return [{ kind, side, mm, words, expectedMm, made, source: expected.source, evidence: [id, expected.id] }];
    });
    if (found.length === 0) return { cannotTell: because('no-sides-stated', {}) };
    const off = found.filter(({ kind }) => kind === 'doubt');
    const fits = found.filter(({ kind }) => kind === 'agreement');
    const from = found[0]?.source;
    const sources = from?.kind === 'maker-file' ? from.sources : [];
    const source = fromMakerFile(maker.name, { of: 'sizes', names: [model.name] }, sources);
    const common = {
      data: {
        model: model.name,
        ...(found[0]?.made && { made: found[0].made }),
        off: off.map(({ side, mm, words, expectedMm }) => ({ side, mm, words, expectedMm })),
        fits: fits.map(({ side, mm }) => ({ side, mm })),
      },
      claims: [...fact.model.claims, ...claims.measure.map(({ id }) => id)],
      evidence: (off.length > 0 ? off : fits).flatMap((one) => one.evidence),
      source,
    };
    return off.length > 0
      ? [{ kind: 'doubt', ...common, asks: [askFor('measures', {})] }]
      : [{ kind: 'agreement', ...common }];
  },
});
