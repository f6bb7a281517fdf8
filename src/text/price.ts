import type { Price } from '../listing/types';
import { type Amount, findAmounts } from './amount';
import { type CurrencySign, exponentOf, type PriceHints, settleCurrency, signAt } from './currency';
import { type Folded, foldText, foldWords, sourceRange } from './fold';
import { minorUnits } from './number';
import { priceKind, type Surroundings } from './price-kind';
import { betweenBefore, betweenJoint, dashJoint, priceBefore, rangeJoint } from './price-words';

export type { PriceHints } from './currency';

/** An amount found in a text, with the exact characters of number and sign. */
export interface FoundPrice {
  price: Price;
  start: number;
  end: number;
  words: string;
  /** 'ambiguous' (two readings), 'currency-open', 'currency-by-data' | '-domain' | '-language', 'includes-shipping', 'net', 'when-new', 'no-currency-sign'. */
  caveats: string[];
}

/** "Carryall 30 450 €": behind a word that is no price word, the first group may be the word's own number. */
function afterModelNumber(folded: Folded, amount: Amount, around: Surroundings, kind: Price['kind']): string[] {
  if (kind !== 'sale' || amount.start !== amount.number.start) return [];
  const grouped = /^\d{1,3} (\d{3}(?: \d{3})*)/.exec(sourceRange(folded, amount.start, amount.end).words);
  const before = around.text.slice(Math.max(0, amount.start - 24), amount.start);
  if (!grouped || !/\p{L} $/u.test(before) || priceBefore.test(before)) return [];
  return [(grouped[1] as string).replaceAll(' ', '')];
}

function toFound(folded: Folded, amount: Amount, around: Surroundings, hints: PriceHints): FoundPrice | null {
  const kind = priceKind(around);
  if (kind === null) return null;
  const candidates = amount.sign?.codes ?? (hints.currency ? [hints.currency] : []);
  const { currency, by } = settleCurrency(candidates, amount.sign ? hints : {});
  const exponent = exponentOf(currency ?? candidates[0] ?? null);
  const readings = [...amount.number.readings, ...afterModelNumber(folded, amount, around, kind)].filter(
    (reading, index, all) => all.indexOf(reading) === index,
  );
  const minors = readings.map((reading) => minorUnits(reading, exponent));
  const [minor, ...others] = minors;
  if (minor === undefined || minor === null) return null;
  const otherMinor = others.filter((other) => other !== null && other !== minor) as number[];
  const caveats = [
    ...(otherMinor.length > 0 ? ['ambiguous'] : []),
    ...(currency === null ? ['currency-open'] : []),
    ...(by ? [`currency-by-${by}`] : []),
    ...(amount.sign ? [] : ['no-currency-sign']),
    ...(around.includesShipping ? ['includes-shipping'] : []),
    ...(around.net ? ['net'] : []),
    ...(around.whenNew ? ['when-new'] : []),
  ];
  const ordered = currency ? [currency, ...candidates.filter((code) => code !== currency)] : candidates;
  return {
    price: { kind, minor, exponent, currency, currencies: ordered, ...(otherMinor.length > 0 ? { otherMinor } : {}) },
    ...sourceRange(folded, amount.start, amount.end),
    caveats,
  };
}

/** Whether two amounts, one behind the other, are the ends of one range; two with signs and a stroke are variants. */
function joins(plain: string, low: Amount, high: Amount): boolean {
  const between = plain.slice(low.end, high.start);
  if (rangeJoint.test(between)) return true;
  if (/^\s?\/\s?$/.test(between)) return low.sign !== null && high.sign !== null;
  return betweenJoint.test(between) && betweenBefore.test(plain.slice(Math.max(0, low.start - 16), low.start));
}

/** "£180-240": the number behind the dash is money too, where it is larger, not much larger, and counts nothing. */
function isUpperEnd(plain: string, low: Amount, high: Amount): boolean {
  const [from, to] = [low, high].map(({ number }) => Number(number.readings[0]));
  return (
    dashJoint.test(plain.slice(low.end, high.start)) &&
    from !== undefined &&
    to !== undefined &&
    to > from &&
    to <= from * 5 &&
    !/^\s?[\p{L}\d]/u.test(plain.slice(high.end, high.end + 2))
  );
}

/** Joins "£40 – £60" to one range. */
function joinRanges(found: { price: FoundPrice; amount: Amount }[], folded: Folded, plain: string): FoundPrice[] {
  const joined: FoundPrice[] = [];
  for (let index = 0; index < found.length; index += 1) {
    const low = found[index]!;
    const high = found[index + 1];
    const ranges = high && joins(plain, low.amount, high.amount) && high.price.price.minor > low.price.price.minor;
    if (!ranges || low.price.price.exponent !== high.price.price.exponent) {
      joined.push(low.price);
      continue;
    }
    const signed = high.amount.sign ? high.price : low.price;
    const { otherMinor: _, ...price } = signed.price;
    const kind = low.price.price.kind === 'estimate' ? 'estimate' : 'range';
    joined.push({
      price: { ...price, kind, minor: low.price.price.minor, minorTo: high.price.price.minor },
      ...sourceRange(folded, low.amount.start, high.amount.end),
      caveats: signed.caveats,
    });
    index += 1;
  }
  return joined;
}

/**
 * Shift_JIS has the yen sign where ASCII has the backslash, and is decoded so (WHATWG Encoding Standard, Shift_JIS
 * decoder: a byte up to 0x80 is its own code point): a Japanese price begins with a backslash then.
 */
const withYen = (text: string, { language }: PriceHints): string =>
  /^ja/i.test(language ?? '') ? text.replace(/\\(?=\s?\d)/g, '¥') : text;
/** One sign for one, so that places stay: words are quoted as the text has them. */
const foldSums = (text: string, hints: PriceHints): Folded => ({ ...foldText(withYen(text, hints)), source: text });

/**
 * All prices of a text, in order. An amount needs a currency sign, a price word beside it, or to be the whole text.
 * Percentages, dates, measures, quantities and savings ("save £20") are not prices. `words` is `text.slice(start, end)`.
 * `field`: the text is that of a price field alone, so that the rarest signs count ("Fr.", "KM", "Br").
 */
export function parsePrices(text: string, hints: PriceHints = {}, field = false): FoundPrice[] {
  const folded = foldSums(text, hints);
  const plain = foldWords(folded.text).text;
  const amounts = findAmounts(folded.text, hints, field);
  const found: { price: FoundPrice; amount: Amount }[] = [];
  let from = 0;
  for (const [index, amount] of amounts.entries()) {
    const next = amounts[index + 1];
    const previous = amounts[index - 1];
    const rangeWithNext = next?.sign != null && joins(plain, amount, next);
    const upperEnd = !amount.sign && previous?.sign != null && isUpperEnd(plain, previous, amount);
    const sign = amount.sign ?? (upperEnd ? previous.sign : null);
    const around: Surroundings = {
      text: plain,
      start: amount.start,
      end: amount.end,
      from,
      to: next?.sign ? next.start : plain.length,
      signed: sign !== null || rangeWithNext,
      includesShipping: false,
      net: false,
      whenNew: false,
    };
    const own = rangeWithNext && !amount.sign ? { ...hints, currency: undefined } : hints;
    const price = toFound(folded, { ...amount, sign }, around, own);
    if (sign) from = amount.end;
    if (price) found.push({ price, amount: { ...amount, sign } });
  }
  return joinRanges(found, folded, plain);
}

/** The one amount of a price field's own text; decimal text, best reading first, null when there is none. */
export interface FieldPrice {
  amount: string | null;
  otherAmounts: string[];
  /** The currency sign as written, in the text or else in the hint. */
  sign: string | null;
  currencies: string[];
}

const dateLike = /^\s*\d{1,2}[./-]\d{1,2}[./-]\d{2,4}\s*$/;

/** Reads a price field ("€ 11.69", "2 285,81 грн.", "1.899,-"); `hint` is text near it or a currency sign. */
export function parsePriceText(text: string, hint: string | null = null, hints: PriceHints = {}): FieldPrice {
  const folded = foldSums(text, hints).text;
  const amounts = dateLike.test(folded) ? [] : findAmounts(folded, hints, true);
  const chosen = amounts.find((amount) => amount.sign) ?? amounts[0];
  const alone = chosen?.sign ?? firstSign(folded) ?? firstSign(foldText(hint ?? '').text);
  const readings = (chosen?.number.readings ?? []).map((reading) => reading.replace(/^0+(?=\d)/, ''));
  return {
    amount: readings[0] ?? null,
    otherAmounts: readings.slice(1),
    sign: alone?.sign ?? null,
    currencies: alone?.codes ?? [],
  };
}

/** The first currency sign anywhere in a short text. */
function firstSign(text: string): CurrencySign | null {
  for (let start = 0; start < Math.min(text.length, 400); start += 1) {
    const found = signAt(text, start, false);
    if (found) return found;
  }
  return null;
}
