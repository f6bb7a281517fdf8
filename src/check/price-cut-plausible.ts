import * as z from 'zod';
import { shares } from '../evidence';
import { priceSchema } from '../listing/types';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';

export const priceCutPlausible = defineCheck({
  id: 'price-cut-plausible',
  family: 'price',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ was: priceSchema, sale: priceSchema, cut: z.number() }),
  limits: { implausibleCut: 1 - shares.afterCut },
  needs: { stated: ['price'], evidence: true, pairs: true },
  run({ evidence, pairOf }) {
    const sale = evidence.find(({ says }) => says.kind === 'price-now');
    const was = evidence.find(({ says }) => says.kind === 'price-before');
    if (sale?.says.kind !== 'price-now' || was?.says.kind !== 'price-before')
      return { notApplicable: because('no-earlier-price', {}) };
    const pair = pairOf('price-cut', sale.id, was.id);
    if (!pair) return { cannotTell: because('prices-in-two-currencies', {}) };
    if (pairKind(pair) !== 'doubt') return [];
    const data = { was: was.says.price, sale: sale.says.price, cut: 1 - (pair.share ?? 0) };
    return [{ kind: 'doubt', data, evidence: [sale.id, was.id], asks: [askFor('purchase', {})] }];
  },
});
