import * as z from 'zod';
import { addDays, monthSpan } from '../span';
import { type Span, spanSchema } from '../span/types';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';

/**
 * Common practice, no source. A short record says nothing against a seller: it is an open point; only a low rating by
 * enough buyers is unusual.
 */
const fewRatings = 10;
/** 85 in 100 good ones, or 4.25 of 5 stars: lower than either scale usually stands. */
const weakShare = 0.85;
const newAccountDays = 90;

const toldSchema = z.discriminatedUnion('of', [
  z.strictObject({ of: z.literal('since'), since: spanSchema }),
  /** The page's words; `count` is null where they say it themselves or nobody does. */
  z.strictObject({ of: z.literal('rating'), words: z.string(), count: z.number().nullable() }),
  z.strictObject({ of: z.literal('sales'), count: z.number() }),
]);
type Told = z.infer<typeof toldSchema>;

export const sellerRecord = defineCheck({
  id: 'seller-record',
  family: 'seller',
  kinds: ['doubt', 'gap', 'agreement'],
  source: practice,
  data: z.strictObject({
    /** What the finding goes by; empty where the page shows nothing. */
    told: z.array(toldSchema),
    /** The share of the best rating that this one is under; null where that is not the finding. */
    least: z.number().nullable(),
  }),
  limits: { fewRatings, weakShare, newAccountDays },
  needs: { listing: ['seller'], now: true },
  run({ listing: { seller }, now }) {
    const rating = seller.rating[0]?.value;
    const sales = seller.salesCount[0]?.value;
    const since = seller.memberSince[0]?.value;
    const asks = [askFor('seller', {})];
    const short: Told[] = [];
    const good: Told[] = [];
    const newFrom = addDays(now.slice(0, 10), -newAccountDays);
    if (since?.from) (since.from > newFrom ? short : good).push({ of: 'since', since: startOf(since, since.from) });
    if (rating) {
      const { count, share } = rating;
      const said = ratingTold(rating);
      if (count !== null && count >= fewRatings && share < weakShare)
        return [{ kind: 'doubt', data: { told: [said], least: weakShare }, asks }];
      const few = count === null ? share < weakShare : count < fewRatings;
      (few ? short : good).push(said);
    }
    if (sales !== undefined) (sales < fewRatings ? short : good).push({ of: 'sales', count: sales });
    return short.length > 0 || good.length === 0
      ? [{ kind: 'gap', data: { told: short, least: null }, asks }]
      : [{ kind: 'agreement', data: { told: good, least: null } }];
  },
});

/** When somebody joined, as coarse as the page says it; of a longer span its first month. */
const startOf = (since: Span, from: string): Span =>
  since.to !== null && ['day', 'month', 'year'].includes(since.precision)
    ? since
    : monthSpan(Number(from.slice(0, 4)), Number(from.slice(5, 7)));

function ratingTold({ words, count }: { words: string; count: number | null }): Told {
  const numbers = words.match(/\d+(?:[.,]\d+)*/g) ?? [];
  const told = count === null || numbers.some((number) => number.replace(/[.,]/g, '') === String(count));
  return { of: 'rating', words, count: told ? null : count };
}
