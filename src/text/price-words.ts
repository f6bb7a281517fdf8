import { anyLanguage, type EachLanguage } from './each-language';
import { ofWhat } from './joint-words';
import { listOf, phrasePattern } from './phrases';
import * as table from './price-table';
import { lengthToLength } from './unit-words';

/** Patterns over the words beside an amount that say what kind of amount it is. */
const sourceOf = (...rows: EachLanguage[]) => phrasePattern(listOf(...rows.flat())).source;
const before = (...rows: EachLanguage[]) => new RegExp(`(?:${sourceOf(...rows)})[\\s:(]{0,4}$`, 'u');
const after = (...rows: EachLanguage[]) => new RegExp(`^[\\s)]{0,3}(?:${sourceOf(...rows)})`, 'u');

/** Codes of regions are of no language. */
const shippingWay = `(?:(?:${sourceOf(table.postageWay)})(?: [a-z]{2,14})?|uk|us|eu|de)`;
export const shippingBefore = new RegExp(
  `(?:${sourceOf(table.postage)})(?:[ :]{1,2}${shippingWay}){0,3}[\\s:(=+]{0,4}$`,
  'u',
);
export const shippingAfter = after(table.postage, table.forPostage);

/** A sum of postage in a sentence: "versturen kan voor 6,95". */
export const shippingSum = new RegExp(
  `${shippingBefore.source.slice(0, -1)}(?:\\p{Sc}\\s?\\d|\\d{1,4}(?:[.,]\\d\\d(?!\\d)|\\s?(?:\\p{Sc}|eur|quid|円)))`,
  'u',
);

/** "Collection from Ludlow or £7 post": a sum, and behind it what it is for. */
export const sumOfShipping = new RegExp(
  `(?<![\\d.,])(?:\\p{Sc}\\s?\\d{1,3}(?:[.,]\\d\\d)?|\\d{1,3}(?:[.,]\\d\\d)?\\s?(?:\\p{Sc}|eur|quid|円))\\s(?:(?:${anyLanguage(ofWhat)})\\s)?(?:${sourceOf(table.postage, table.forPostage)}|post(?!\\p{L}))`,
  'u',
);

export const wasBefore = before(table.was);
export const costBefore = before(table.cost);
export const costAfter = after(table.whenNew);
export const estimateBefore = before(table.estimate);

/** "från", "fra", "od": shops of other countries name a lowest price as well. */
export const fromBefore = new RegExp(`(?:${sourceOf(table.from)}|(?<!\\p{L})(?:fran?|od))[\\s:(]{0,4}$`, 'u');
export const fromAfter = new RegExp(`^\\s{0,2}(?:${sourceOf(table.andUp)}|[〜~](?!\\s*[\\d¥]))`, 'u');

export const savingBefore = before(table.saving);
export const savingAfter = after(table.off);

/** Words of a shop's own terms before a sum: "free shipping over", "orders above", "ab … versandkostenfrei". */
export const thresholdBefore = new RegExp(`(?:${sourceOf(table.freePostage, table.orders)})[^.!?|•\\n\\d]{0,24}$`, 'u');
/** "over $150", "ab 75 €", "dès 80 €": with words of postage behind them, a shop's own terms. */
export const overBefore = before(table.over);
export const postageBehind = new RegExp(`^[\\s)]{0,3}(?:${sourceOf(table.freePostage)}|以上)`, 'u');

export const betweenBefore = before(table.between);
export const betweenJoint = new RegExp(`^\\s(?:${anyLanguage(table.and)})\\s$`, 'u');

export const instalmentBefore = new RegExp(
  `(?:(?<!\\d)\\d{1,2}\\s?[x×]\\s?|(?:${sourceOf(table.instalments)})[\\s:]{0,3})$`,
  'u',
);
export const instalmentAfter = new RegExp(
  `^\\s{0,2}(?:/\\s?)?(?:${sourceOf(table.monthly)}|[x×]\\s?\\d{1,2}(?!\\d))`,
  'u',
);
export const unitAfter = new RegExp(
  `^\\s{0,2}(?:/\\s?(?:[a-z]{1,8}[²³]?|m2|qm|\\d{1,4}\\s?(?:g|ml|cm)|台|個|枚)(?!\\p{L})|(?:${sourceOf(table.each)}))`,
  'u',
);
export const netBefore = before(table.beforeTax);
export const netAfter = new RegExp(`^[\\s(]{0,3}(?:${sourceOf(table.beforeTax)})`, 'u');

export const includesShippingAfter = after(table.withPostage, table.freePostage);

/** Words that make a number without a currency sign a price. */
export const priceBefore = before(table.price);
export const priceAfter = after(table.negotiable);

/** A dash alone: behind a signed amount, a number that has no sign of its own is its upper end. */
export const dashJoint = /^\s?[-–—]\s?$/u;

/** Words between two amounts that make them one range. */
export const rangeJoint = new RegExp(`^\\s{0,2}(?:[-–—~〜]|${anyLanguage(lengthToLength)})\\s{0,2}$`, 'u');
