import * as z from 'zod';
import { evidenceId, hasSize, numberedName, roomMm } from '../evidence';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';

export const namedWidth = defineCheck({
  id: 'named-width',
  family: 'size',
  kinds: ['doubt', 'agreement'],
  source: practice,
  data: z.strictObject({ name: z.string(), mm: z.number(), number: z.number() }),
  /** How far the width of a piece lies from the number in its name, at most. */
  limits: { nearMm: roomMm.named + roomMm.tape },
  needs: {
    onePiece: true,
    claims: ['model', 'measure'],
    listing: ['model'],
    models: true,
    pairs: true,
    facts: ['sides'],
  },
  run({ claims, listing, models, fact, pairOf }) {
    const named = numberedName(claims.model, listing.model);
    if (!named) return { notApplicable: because('no-numbered-model', {}) };
    if (hasSize(named.name, models)) return { notApplicable: because('model-size-in-file', {}) };
    const width = fact.sides.find(({ side }) => side === 'width');
    if (!width) return { cannotTell: because('not-stated', { field: 'width' }) };
    const evidence = [width.id, evidenceId.namedWidth] as const;
    const kind = pairKind(pairOf('size-name', ...evidence));
    if (!kind) return [];
    const data = { name: named.name, mm: width.mm, number: named.number };
    const ids = [...claims.model, ...claims.measure].map(({ id }) => id);
    return [{ kind, data, claims: ids, evidence: [...evidence], asks: [askFor('measures', {})] }];
  },
});
