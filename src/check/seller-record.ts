import { addDays } from '../span';
import { practice } from './frame';
import { askFact, countWords, listWords, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

/**
 * Common practice, no source. A short record says nothing against a seller: it is an open point; only a low rating by
 * enough buyers is unusual.
 */
const fewRatings = 10;
/** 85 in 100 good ones, or 4.25 of 5 stars: lower than either scale usually stands. */
const weakShare = 0.85;
const newAccountDays = 90;

const ask = askFact('seller', 'Have you sold similar pieces before, here or elsewhere?');

export const sellerRecord = defineWritten({
  id: 'seller-record',
  family: 'seller',
  title: 'The seller has a record',
  failureTitle: 'The seller’s record is short, missing or weak',
  kinds: ['doubt', 'gap', 'agreement'],
  basis: 'How long a seller has sold here, how much, and how well rated is all that a page shows of the seller.',
  innocent: 'Every honest seller starts with an empty record.',
  settles: 'More about the seller, and payment that can be taken back.',
  source: practice,
  needs: { listing: ['seller'], now: true },
  run({ listing: { seller }, now }) {
    const rating = seller.rating[0]?.value;
    const sales = seller.salesCount[0]?.value;
    const since = seller.memberSince[0]?.value;
    const short: string[] = [];
    const good: string[] = [];
    const newFrom = addDays(now.slice(0, 10), -newAccountDays);
    if (since?.from) (since.from > newFrom ? short : good).push(`a member since ${since.from.slice(0, 7)}`);
    if (rating) {
      const { count, share } = rating;
      const words = ratingWords(rating);
      if (count !== null && count >= fewRatings && share < weakShare) {
        const statement = `The seller is ${words}, which is less than ${weakShare * 100}% of the best rating there.`;
        const innocent = 'Ratings also fall for slow post, or for goods of another kind.';
        return [{ kind: 'doubt', statement, innocent, asks: [ask] }];
      }
      const few = count === null ? share < weakShare : count < fewRatings;
      (few ? short : good).push(words);
    }
    if (sales !== undefined) (sales < fewRatings ? short : good).push(`with ${countWords(sales, 'sale')}`);
    if (short.length + good.length === 0) {
      const statement = 'The page shows no record of the seller: no ratings, no sales, no date of joining.';
      return [{ kind: 'gap', statement, asks: [ask] }];
    }
    const speech: WrittenSpeech =
      short.length > 0
        ? { kind: 'gap', statement: `The seller’s record is short or says little: ${listWords(short)}.`, asks: [ask] }
        : { kind: 'agreement', statement: `The seller is ${listWords(good)}.` };
    return [speech];
  },
});

/** "rated “99.2%” from 4 ratings"; how many is left out where the page's own words say it or nothing does. */
function ratingWords({ words, count }: { words: string; count: number | null }): string {
  const numbers = words.match(/\d+(?:[.,]\d+)*/g) ?? [];
  const told = count === null || numbers.some((number) => number.replace(/[.,]/g, '') === String(count));
  return `rated ${quote(words)}${told ? '' : ` from ${countWords(count, 'rating')}`}`;
}
