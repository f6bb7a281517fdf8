import * as z from 'zod';
import { datesOfModel, evidenceId } from '../evidence';
import { spanSchema } from '../span/types';
import { askFor } from './asks';
import { datedSchema } from './fact/date';
import { defineCheck, fromMakerFile, makerFileSource } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';

export const modelMadeThen = defineCheck({
  id: 'model-made-then',
  family: 'time',
  kinds: ['doubt', 'agreement'],
  source: makerFileSource,
  data: z.strictObject({
    maker: z.string(),
    model: z.string(),
    made: spanSchema,
    again: z.array(spanSchema).optional(),
    dated: datedSchema,
  }),
  needs: { maker: ['models'], pairs: true, perhaps: ['model'], facts: ['date'] },
  run(facts) {
    const { maker, fact } = facts;
    const dated = fact.date;
    const named = 'is' in fact.model && fact.model.is.claims.length > 0 ? fact.model.is : null;
    const made = named && datesOfModel(named.model);
    const [first, ...again] = made?.spans ?? [];
    if (!named || !made || !first) return { notApplicable: because('no-dated-model', {}) };
    const evidence = [evidenceId.model(named.claims[0] ?? ''), dated.id] as const;
    const kind = pairKind(facts.pairOf('model-date', ...evidence));
    if (!kind) return [];
    return [
      {
        kind,
        data: {
          maker: maker.name,
          model: named.model.name,
          made: first,
          ...(again.length > 0 && { again }),
          dated: dated.said,
        },
        claims: [...named.claims, ...dated.claims],
        photos: dated.photos,
        evidence: [...evidence],
        source: fromMakerFile(maker.name, { of: 'years', name: named.model.name }, made.sources),
        asks: [askFor('model', {})],
      },
    ];
  },
});
