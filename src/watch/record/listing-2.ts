import * as z from 'zod';
import { span1 } from './forms-1';
import { field1, listing1, price1 } from './listing-1';

export const price2 = price1.extend({
  kind: z.enum([
    'sale',
    'was',
    'from',
    'range',
    'unit',
    'shipping',
    'instalment',
    'start',
    'next-bid',
    'buy-now',
    'estimate',
  ]),
});

/** What a page offered, as looks keep it since its kind is told with evidence and an auction's amounts have names. */
export const listing2 = listing1.extend({
  kind: z.enum(['listing', 'list', 'article', 'cut', 'none']),
  page: z.strictObject({ kind: z.string(), evidence: z.array(z.string()) }).optional(),
  price: field1(price2),
  ends: field1(span1).optional(),
});
