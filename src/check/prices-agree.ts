import * as z from 'zod';
import { originSchema, priceSchema } from '../listing/types';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';

export const pricesAgree = defineCheck({
  id: 'prices-agree',
  family: 'price',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ shown: priceSchema, data: priceSchema, origin: originSchema }),
  needs: { stated: ['price'], listing: ['price'] },
  run({ listing }) {
    const sales = listing.price.filter(({ value, caveats }) => value.kind === 'sale' && !caveats?.includes('stale'));
    const shown = sales.find(({ origin }) => origin === 'visible');
    const other = sales.find(
      ({ origin, value }) =>
        origin !== 'visible' &&
        origin !== 'user-pick' &&
        shown &&
        !value.otherMinor?.length &&
        !shown.value.otherMinor?.length &&
        value.currency === shown.value.currency &&
        value.minor * 10 ** (shown.value.exponent - value.exponent) !== shown.value.minor,
    );
    if (!shown || !other) return [];
    const data = { shown: shown.value, data: other.value, origin: other.origin };
    return [{ kind: 'doubt', data, asks: [askFor('price', {})] }];
  },
});
