import * as z from 'zod';
import { originSchema, priceSchema } from '../listing/types';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { pairKind } from './pairs';

export const pricesAgree = defineCheck({
  id: 'prices-agree',
  family: 'price',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ shown: priceSchema, data: priceSchema, origin: originSchema }),
  needs: { stated: ['price'], listing: ['price'], evidence: true, pairs: true },
  run({ listing, evidence, pairOf }) {
    const shown = evidence.find(({ says }) => says.kind === 'price-shown');
    const other = evidence.find(
      ({ id, says }) =>
        shown && says.kind === 'price-in-data' && pairKind(pairOf('price-data', shown.id, id)) === 'doubt',
    );
    if (shown?.says.kind !== 'price-shown' || other?.says.kind !== 'price-in-data') return [];
    const { price } = other.says;
    const origin = listing.price.find(({ value }) => value === price)?.origin ?? 'meta';
    const data = { shown: shown.says.price, data: price, origin };
    return [{ kind: 'doubt', data, evidence: [shown.id, other.id], asks: [askFor('price', {})] }];
  },
});
