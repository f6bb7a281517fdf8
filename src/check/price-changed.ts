import * as z from 'zod';
import { amountOf } from '../evidence';
import { priceSchema } from '../listing/types';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { because } from './reasons';

/** A fall by more than this share between two looks. Common practice, no source. */
const steepFall = 0.4;

export const priceChanged = defineCheck({
  id: 'price-changed',
  family: 'changes',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ before: priceSchema, now: priceSchema, readAt: z.string(), fall: z.number() }),
  limits: { steepFall },
  needs: { previous: true, stated: ['price'] },
  run({ previous, stated }) {
    const now = stated.price.value;
    const before = previous.price;
    if (!before || before.currency !== now.currency || now.currency === null)
      return { cannotTell: because('price-not-comparable', {}) };
    const fall = 1 - amountOf(now) / amountOf(before);
    if (!(fall > steepFall)) return [];
    const data = { before, now, readAt: previous.readAt, fall };
    return [{ kind: 'doubt', data, asks: [askFor('lower-price', {})] }];
  },
});
