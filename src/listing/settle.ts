import { problem } from '../problem';
import { foldWords } from '../text/fold';
import { wordsOf } from '../text/lexicon';
import { phrasePattern } from '../text/phrases';
import type { Draft } from './draft';
import type { Candidate, Condition, Price } from './types';

/** Settles what candidates say of each other: finer conditions, prices of sold pieces, prices that disagree. */
export function settleConflicts(draft: Draft, text: string): Draft {
  preferFinerCondition(draft.condition);
  preferTermWithDays(draft.returns);
  preferOfferedOfSeveral(draft.availability);
  const gone = draft.availability[0]?.value;
  if (gone === 'sold' || gone === 'removed') for (const one of draft.price) addCaveat(one, 'last-seen');
  dropBareNumbers(draft);
  nameFormerPrice(draft.price);
  lowerHigherInBox(draft);
  lowerConverted(draft.price, text);
  preferNamedPrice(draft.price);
  const conflict = priceConflict(draft.price);
  return conflict ? { ...draft, problems: [...draft.problems, conflict] } : draft;
}

function addCaveat(candidate: Candidate<unknown>, caveat: string): void {
  if (!candidate.caveats?.includes(caveat)) candidate.caveats = [...(candidate.caveats ?? []), caveat];
}

/** Of the page's own data, and neither seen on it nor pointed at. */
const isOfData = ({ origin }: Candidate<unknown>): boolean => origin !== 'visible' && origin !== 'user-pick';

const finer: ReadonlySet<Condition> = new Set(['as-new', 'used-very-good', 'worn', 'damaged']);

/** Puts a candidate in the place of the best, as trusted as that one: it says the same and more, or what holds. */
function putFirst<T>(candidates: Candidate<T>[], better: Candidate<T> | undefined, { confidence }: Candidate<T>): void {
  if (!better) return;
  candidates.splice(candidates.indexOf(better), 1);
  candidates.unshift({ ...better, confidence });
}

/** Data knows "used" only; where the page grades the use, the grade says the same and more. */
function preferFinerCondition(candidates: Candidate<Condition>[]): void {
  const [best] = candidates;
  if (best?.value === 'used')
    putFirst(
      candidates,
      candidates.find((one) => finer.has(one.value) && one.confidence >= 0.6),
      best,
    );
}

/** "14-day returns" says the same as "returns accepted" and more. */
function preferTermWithDays(candidates: Draft['returns']): void {
  const [best] = candidates;
  if (best?.value.accepted && best.value.days === null)
    putFirst(
      candidates,
      candidates.find((one) => one.value.accepted && one.value.days !== null),
      best,
    );
}

/** Data of one size or colour says that it is gone, and of another that it is there: the piece can be bought. */
function preferOfferedOfSeveral(availability: Draft['availability']): void {
  const [best] = availability;
  if (best?.value !== 'sold' || !isOfData(best)) return;
  const isTied = ({ caveats }: Candidate<unknown>) => caveats?.includes('tie') === true;
  const offered = availability.find(
    (one) =>
      one.value === 'offered' &&
      one.origin === best.origin &&
      (one.where === best.where || (isTied(best) && isTied(one))),
  );
  putFirst(availability, offered, best);
}

/** A number without a sign, in no element that is called a price and beside no word for one, is a size or a number of the shop's. */
function dropBareNumbers(draft: Draft): void {
  draft.price = draft.price.filter(
    ({ value, origin, confidence, caveats }) =>
      value.kind !== 'sale' ||
      origin !== 'visible' ||
      confidence >= leastBare ||
      !caveats?.includes('no-currency-sign'),
  );
}
const leastBare = 0.45;

/**
 * Two prices of the same data, both shown in one box: one is paid, the lower. Where the data holds variants, or the page
 * shows them apart, neither is.
 */
function lowerHigherInBox({ price, problems }: Draft): void {
  const [best] = price;
  if (best?.value.kind !== 'sale' || !isOfData(best)) return;
  if (problems.some(({ code }) => code === 'pick-the-variant' || code === 'which-product')) return;
  const { currency } = best.value;
  const boxOf = (minor: number) =>
    price
      .find(
        ({ value, origin, confidence }) =>
          origin === 'visible' &&
          value.minor === minor &&
          value.currency === currency &&
          value.kind === 'sale' &&
          confidence >= 0.7,
      )
      ?.where.split(' > ')
      .slice(0, -1)
      .join(' > ');
  const box = boxOf(best.value.minor);
  if (box === undefined) return;
  const lower = price.find(
    ({ value, origin, confidence }) =>
      origin === best.origin &&
      value.kind === 'sale' &&
      value.currency === currency &&
      value.minor < best.value.minor &&
      confidence >= best.confidence - 0.02 &&
      boxOf(value.minor) === box,
  );
  if (!lower) return;
  best.value = { ...best.value, kind: 'was' };
  for (const one of price)
    if (one.origin === 'visible' && one.value.minor === best.value.minor) one.value = { ...one.value, kind: 'was' };
  putFirst(price, lower, best);
}

const about = new RegExp(`(?:${phrasePattern(wordsOf('about')).source})\\.?[\\s:(]{0,3}$`, 'u');

/** Whether a sum stands behind "about" wherever the page shows it: one place without says that it is the price. */
function isAlwaysAbout(text: string, words: string): boolean {
  const ahead = text.split(words).slice(0, -1);
  return ahead.length > 0 && ahead.every((before) => about.test(foldWords(before.slice(-24)).text));
}

/** "GBP 12.99 (approximately EUR 14.43)": a sum in another currency that the page calls about right is the price worked out. */
function lowerConverted(prices: Candidate<Price>[], text: string): void {
  const sums = prices.filter(({ value }) => value.kind !== 'shipping');
  for (const one of sums) {
    const { value, origin, words } = one;
    if (origin !== 'visible' || value.kind !== 'sale' || words === undefined) continue;
    if (!isAlwaysAbout(text, words)) continue;
    if (!sums.some((other) => other.value.currency !== null && other.value.currency !== value.currency)) continue;
    one.confidence = Math.min(one.confidence, 0.3);
    addCaveat(one, 'converted');
  }
  prices.sort((a, b) => b.confidence - a.confidence);
}

/** Where the page calls one element the price, and only one thing can be called so by its id. */
const namedPrice = /#[\w-]{0,40}price[\w-]{0,40}(?:$| >)/i;
/** So much surer may another one be: prices of other sellers stand beside it, as large and as near. */
const besideNamed = 0.08;

/** Of prices that are only seen, the one whose element is called so before those of boxes beside it. */
function preferNamedPrice(prices: Candidate<Price>[]): void {
  const [best] = prices;
  if (best?.origin !== 'visible' || best.value.kind !== 'sale' || namedPrice.test(best.where)) return;
  const named = prices.find(
    ({ value, origin, where, confidence }) =>
      origin === 'visible' &&
      value.kind === 'sale' &&
      namedPrice.test(where) &&
      confidence >= best.confidence - besideNamed,
  );
  putFirst(prices, named, best);
}

/** Data that gives the amount which the page strikes through gives the price from before. */
function nameFormerPrice(prices: Candidate<Price>[]): void {
  const struck = prices.filter(({ value, origin }) => origin === 'visible' && value.kind === 'was');
  const seen = prices.find(
    ({ value, origin, confidence }) => origin === 'visible' && value.kind === 'sale' && confidence >= 0.6,
  );
  for (const one of prices)
    if (
      seen &&
      isOfData(one) &&
      one.value.kind === 'sale' &&
      one.value.minor > seen.value.minor &&
      struck.some(({ value }) => value.minor === one.value.minor)
    ) {
      one.value = { ...one.value, kind: 'was' };
      one.confidence = Math.min(one.confidence, seen.confidence * 0.9);
    }
  prices.sort((a, b) => b.confidence - a.confidence);
}

/** A price of the data that is not the one seen: both stay, and it is said. */
function priceConflict(prices: Candidate<Price>[]): Draft['problems'][number] | null {
  const sale = prices.filter((one) => one.value.kind === 'sale');
  const data = sale.find((one) => isOfData(one) && !one.caveats?.includes('stale'));
  const seen = sale.find((one) => one.origin === 'visible' && one.confidence >= 0.6);
  if (!data || !seen || data.value.minor === seen.value.minor) return null;
  addCaveat(data, 'conflict');
  addCaveat(seen, 'conflict');
  const saying = ({ words, value }: Candidate<Price>) => words ?? String(value.minor);
  return problem('price-conflict', 'price', { inData: saying(data), seen: saying(seen) });
}
