import { parsePrices, parsePriceText } from '../../text';
import { formerAmounts, formerIn } from './former-money';
import { bareFrancs, saysBareFrancs } from './francs';

export interface SaidAmount {
  amount: number;
  currency: string;
}

/**
 * The one amount of a cell, with the currency that its sign can only mean; several readings are none. `francs` is whose francs
 * the page means (ISO 4217): without, bare ones are none.
 */
export function readAmount(text: string, sign: string | null = null, francs: string | null = null): SaidAmount | null {
  const [inFrancs, ...others] = saysBareFrancs(text) ? bareFrancs(text) : [];
  if (inFrancs) return francs !== null && others.length === 0 ? { amount: inFrancs.amount, currency: francs } : null;
  if (sign !== null && saysBareFrancs(sign) && /^[\d.,'\s]{1,20}$/.test(text))
    return francs === null ? null : readAmount(`${text} F`, null, francs);
  // The lira was written with a bare letter, which counts nowhere else.
  const lira = /^L(?:it)?\.?\s?(?=\d)/.exec(text);
  const [former, ...more] = lira ? [] : formerAmounts(text);
  if (former) return more.length === 0 ? { amount: former.amount, currency: former.currency } : null;
  const named = sign === null || lira ? null : formerIn(text, sign);
  if (named) return named;
  const shillings = /^£\s?(\d{1,4})\s(\d{1,2})s(?:\.?\s(\d{1,2})d)?\.?(?!\p{L})/u.exec(text);
  if (shillings) return { amount: inPounds(shillings), currency: 'GBP' };
  const { amount, otherAmounts, currencies } = parsePriceText(lira ? text.slice(lira[0].length) : text, sign);
  const currency = lira ? 'ITL' : currencies[0];
  if (amount === null || currency === undefined || (!lira && otherAmounts.length > 0)) return null;
  const whole = lira ? text.slice(lira[0].length).replace(/\D/g, '') : amount;
  return { amount: Number(whole), currency };
}

/** "£7 10s 6d": before 1971 a pound had 20 shillings of 12 pence. */
const inPounds = ([, pounds, shillings, pence = '0']: RegExpExecArray): number =>
  Math.round((Number(pounds) + Number(shillings) / 20 + Number(pence) / 240) * 1000) / 1000;

/** Amounts with their signs in running text, each with its place. */
export function readAmounts(
  text: string,
  francs: string | null = null,
): (SaidAmount & { start: number; end: number })[] {
  const inFrancs = saysBareFrancs(text) ? bareFrancs(text) : [];
  const former = formerAmounts(text);
  const others = parsePrices(text).flatMap(({ price, start, end }) => {
    const currency = price.currency ?? price.currencies[0];
    if (currency === undefined || price.minorTo !== undefined || price.otherMinor) return [];
    const isFranc = inFrancs.some((one) => one.start < end && one.end > start);
    return isFranc ? [] : [{ amount: price.minor / 10 ** price.exponent, currency, start, end }];
  });
  const known = francs === null ? [] : inFrancs.map((one) => ({ ...one, currency: francs }));
  return [...former, ...others, ...known].sort((a, b) => a.start - b.start);
}
