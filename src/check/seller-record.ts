import { addDays } from '../span';
import { defineCheck, practice, type Speech } from './frame';
import { askFact, countWords, listWords, quote } from './wording';

/** Common practice, no source. */
const fewRatings = 10;
const weakShare = 0.9;
const newAccountDays = 90;

const ask = askFact('seller', 'Have you sold similar pieces before, here or elsewhere?');

export const sellerRecord = defineCheck({
  id: 'seller-record',
  family: 'seller',
  title: 'The seller has a record',
  failureTitle: 'The seller’s account is new or its record weak',
  kinds: ['doubt', 'gap', 'agreement'],
  basis: 'A seller’s record belongs in every check: how long, how many sales, how well rated.',
  innocent: 'Every honest seller starts with an empty record.',
  settles: 'More about the seller, and payment that can be taken back.',
  source: practice,
  needs: { listing: ['seller'], now: true },
  run({ listing: { seller }, now }) {
    const rating = seller.rating[0]?.value;
    const sales = seller.salesCount[0]?.value;
    const since = seller.memberSince[0]?.value;
    const weak: string[] = [];
    const good: string[] = [];
    const newFrom = addDays(now.slice(0, 10), -newAccountDays);
    if (since?.from) (since.from > newFrom ? weak : good).push(`a member since ${since.from.slice(0, 7)}`);
    if (rating) {
      const few = rating.count !== null && rating.count < fewRatings;
      (few || rating.share < weakShare ? weak : good).push(`rated ${quote(rating.words)}`);
    }
    if (sales !== undefined) (sales < fewRatings ? weak : good).push(`with ${countWords(sales, 'sale')}`);
    if (weak.length + good.length === 0) {
      const statement = 'The page shows no record of the seller: no ratings, no sales, no date of joining.';
      return [{ kind: 'gap', statement, asks: [ask] }];
    }
    const speech: Speech =
      weak.length > 0
        ? { kind: 'doubt', statement: `The seller is ${listWords(weak)}.`, asks: [ask] }
        : { kind: 'agreement', statement: `The seller is ${listWords(good)}.` };
    return [speech];
  },
});
