import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { because } from './reasons';
import { namedSides, namedWidthCm, statedSide } from './sizes';

/** How far the width of a piece lies from the number in its name, at most. Common practice, no source. */
const nearMm = 30;

export const namedWidth = defineCheck({
  id: 'named-width',
  family: 'size',
  kinds: ['doubt', 'agreement'],
  source: practice,
  data: z.strictObject({ name: z.string(), mm: z.number(), number: z.number() }),
  limits: { nearMm },
  needs: { onePiece: true, claims: ['model', 'measure'], listing: ['model', 'measures'], models: true },
  run({ claims, listing, models }) {
    const names = [...claims.model.map(({ model }) => model), ...listing.model.slice(0, 1).map(({ value }) => value)];
    const name = names.find((one) => namedWidthCm(one) !== null);
    const width = name ? namedWidthCm(name) : null;
    if (!name || width === null) return { notApplicable: because('no-numbered-model', {}) };
    if (models.some((model) => model.size && name.toLowerCase().includes(model.name.toLowerCase())))
      return { notApplicable: because('model-size-in-file', {}) };
    const measures = namedSides(
      listing.measures.map(({ value }) => value),
      claims.measure.map(({ measure }) => measure),
      { width: width * 10 },
    );
    const stated = statedSide(measures, 'width');
    if (!stated) return { cannotTell: because('not-stated', { field: 'width' }) };
    const off = Math.abs(stated.mm - width * 10) - stated.precisionMm;
    const data = { name, mm: stated.mm, number: width };
    const ids = [...claims.model, ...claims.measure].map(({ id }) => id);
    return off <= nearMm
      ? [{ kind: 'agreement', data, claims: ids }]
      : [{ kind: 'doubt', data, claims: ids, asks: [askFor('measures', {})] }];
  },
});
