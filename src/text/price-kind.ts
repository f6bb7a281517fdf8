import type { Price } from '../listing/types';
import { afterLast } from './ends';
import { readNumber } from './number';
import {
  costAfter,
  costBefore,
  estimateBefore,
  fromAfter,
  fromBefore,
  includesShippingAfter,
  instalmentAfter,
  instalmentBefore,
  netAfter,
  netBefore,
  overBefore,
  postageBehind,
  priceAfter,
  priceBefore,
  savingAfter,
  savingBefore,
  shippingAfter,
  shippingBefore,
  thresholdBefore,
  unitAfter,
  wasBefore,
} from './price-words';

/** An amount's place in text folded by `foldWords`, bounded by the amounts beside it (`from`, `to`). */
export interface Surroundings {
  text: string;
  start: number;
  end: number;
  from: number;
  to: number;
  /** Whether a currency sign stands with it. */
  signed: boolean;
  /** Set here: the words beside say that postage is in the amount. */
  includesShipping: boolean;
  /** Set here: a tax is added to the amount still. */
  net: boolean;
  /** Set here: it is what the piece cost when it was new. */
  whenNew: boolean;
}

/** Words further away say nothing of the amount. */
const reach = 40;
/** "Item weight 0.66 pounds" is none of money. Common practice, no source. */
const weighed = /(?:weigh(?:t|s)|gewicht|poids|peso)[^\d]{0,24}$/u;
const sentenceEnd = /[\n\r;!?|•]|\.\s/;

/** "€980 RRP" was; in "€310 RRP €980" the word belongs to the next amount. */
function saysBehind(pattern: RegExp, after: string, around: Surroundings): boolean {
  const match = pattern.exec(after);
  const next = around.end + after.length >= around.to && around.to < around.text.length;
  return match !== null && !(next && /^[\s:]*$/.test(after.slice(match[0].length)));
}

/** The first number of a text, NaN without one. */
const firstNumber = (text: string): number =>
  Number(readNumber(text, text.search(/\d/), { convention: null, decimals: 2, spacedDecimals: false })?.readings[0]);
/** "€100 shipping €5": of two amounts beside the word the lower one is the postage. */
const saysPostageBehind = (after: string, around: Surroundings): boolean =>
  saysBehind(shippingAfter, after, around) ||
  (shippingAfter.test(after) &&
    firstNumber(around.text.slice(around.start)) < firstNumber(around.text.slice(around.to)));

/** The kind of an amount from the words beside it; null when it is no price. */
export function priceKind(around: Surroundings): Price['kind'] | null {
  const { text, start, end } = around;
  const left = text.slice(Math.max(around.from, start - reach), start);
  const right = text.slice(end, Math.min(around.to, end + reach));
  const before = afterLast(left, /[\n\r;!?|•]/);
  const stop = right.search(sentenceEnd);
  const after = stop < 0 ? right : right.slice(0, stop);
  if (!around.signed) {
    const whole =
      start < 40 && text.length - end < 40 && text.slice(0, start).trim() === '' && text.slice(end).trim().length <= 2;
    // Most numbers of a text have no letter near and are settled without the word tables.
    const wordsNear = /\p{L}/u.test(before.slice(-12)) || /^.{0,3}\p{L}/u.test(after);
    if (!whole && !(wordsNear && (priceBefore.test(before) || priceAfter.test(after)))) return null;
  }
  if (savingBefore.test(before) || savingAfter.test(after)) return null;
  if (weighed.test(before)) return null;
  if (thresholdBefore.test(before) || (overBefore.test(before) && postageBehind.test(after))) return null;
  around.includesShipping = includesShippingAfter.test(after);
  around.net = netBefore.test(before) || netAfter.test(right);
  if (instalmentBefore.test(before) || instalmentAfter.test(after)) return 'instalment';
  if (!around.includesShipping && (shippingBefore.test(before) || saysPostageBehind(after, around))) return 'shipping';
  if (unitAfter.test(after)) return 'unit';
  around.whenNew = costBefore.test(before) || saysBehind(costAfter, after, around);
  if (around.whenNew || wasBefore.test(before)) return 'was';
  if (estimateBefore.test(before)) return 'estimate';
  if (fromBefore.test(before) || fromAfter.test(after)) return 'from';
  return 'sale';
}
