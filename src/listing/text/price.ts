import type { Price } from '../types';
import {
  type CurrencySign,
  decimalConvention,
  exponentOf,
  type PriceHints,
  settleCurrency,
  signAt,
  signBefore,
} from './currency';
import { type Folded, foldText, foldWords, sourceRange } from './fold';
import { minorUnits, type NumberHabits, readNumber, type WrittenNumber } from './number';
import { listOf } from './phrases';
import { priceKind, type Surroundings } from './price-kind';
import { rangeJoint } from './price-words';

export type { PriceHints } from './currency';

/** An amount found in a text, with the exact characters of number and sign. */
export interface FoundPrice {
  price: Price;
  start: number;
  end: number;
  words: string;
  /** 'ambiguous' (two readings), 'currency-open', 'currency-by-data' | '-domain' | '-language', 'includes-shipping', 'no-currency-sign'. */
  caveats: string[];
}

interface Amount {
  number: WrittenNumber;
  sign: CurrencySign | null;
  start: number;
  end: number;
}

const numberStart = /[.,]?\d/g;
const notMoney = /^\s?(?:%|°|mm\b|cm\b|kg\b|g\b|ml\b|:\d|\/\d)/;
/** Signs whose countries all write a point before the decimals. */
const pointSigns = new Set(listOf('$, £, ¥, US$, C$, CA$, A$, AU$, NZ$, HK$, S$, GBP, USD, JPY, ₹, 円'));

function habitsFor(sign: CurrencySign | null, hints: PriceHints, spacedDecimals: boolean): NumberHabits {
  const currency = sign ? settleCurrency(sign.codes, hints).currency : (hints.currency ?? null);
  const byPlace = decimalConvention(hints);
  return {
    convention: byPlace ?? (sign && pointSigns.has(sign.sign) ? '.' : null),
    decimals: exponentOf(currency ?? sign?.codes[0] ?? null),
    spacedDecimals,
  };
}

/** Past up to two spaces, and past the dash of "50,- Kč" and "1299.–". */
const skipSpaces = (text: string, number: number) => {
  const from = number + (/^[.,]\s?[-–—]{1,2}/.exec(text.slice(number, number + 4))?.[0].length ?? 0);
  let position = from;
  while (position < from + 2 && text[position] === ' ') position += 1;
  return position;
};

/** The sign before a number; a second, more exact one before it ("NZD $", "SGD$") names the currency. */
function leadingSign(text: string, numberAt: number, from: number, anySign: boolean): CurrencySign | null {
  let end = numberAt;
  while (end > from && numberAt - end < 2 && (text[end - 1] === ' ' || text[end - 1] === '.')) end -= 1;
  const near = signBefore(text, end, anySign) ?? (text[end] === '.' ? signBefore(text, end + 1, anySign) : null);
  if (!near || near.start < from) return null;
  let outer = near.start;
  while (outer > from && near.start - outer < 2 && text[outer - 1] === ' ') outer -= 1;
  const wider = signBefore(text, outer, false);
  if (!wider || wider.start < from) return near;
  const exact = [near, wider].find((sign) => sign.codes.length === 1) ?? near;
  return { ...exact, start: wider.start, end: near.end };
}

/** "35€ 99": the sign stands where the decimals begin. */
function signAsPoint(text: string, number: WrittenNumber, sign: CurrencySign): WrittenNumber | null {
  const decimals = /^ ?(\d\d)(?![\d.,%]|\s?[\p{L}$£€¥])/u.exec(text.slice(sign.end, sign.end + 8));
  const whole = number.readings[0];
  if (
    !decimals ||
    !'€$£'.includes(sign.sign) ||
    number.readings.length !== 1 ||
    whole === undefined ||
    whole.includes('.')
  )
    return null;
  return { start: number.start, end: sign.end + decimals[0].length, readings: [`${whole}.${decimals[1]}`] };
}

/** All numbers of a folded text with their currency signs; numbers without one are kept with `sign: null`. */
export function findAmounts(text: string, hints: PriceHints, field: boolean): Amount[] {
  const amounts: Amount[] = [];
  numberStart.lastIndex = 0;
  let from = 0;
  for (let match = numberStart.exec(text); match; match = numberStart.exec(text)) {
    const leading = leadingSign(text, match.index, from, field);
    const start = leading || !/^[.,]/.test(match[0]) || field ? match.index : match.index + 1;
    const glued =
      !leading && /[\p{L}\d_#]/u.test(text[start - 1] ?? '') && !/[\u3040-\u9fff]/.test(text[start - 1] ?? '');
    let number = readNumber(text, start, habitsFor(leading, hints, field));
    if (!number) continue;
    numberStart.lastIndex = number.end;
    const trailing = signAt(text, skipSpaces(text, number.end), field);
    const next = trailing ? text.slice(trailing.end, trailing.end + 3) : '';
    const takes = trailing && (!leading || trailing.codes.length === 1) && !(leading && /^\s?[.\d]/.test(next));
    const sign = takes && !(leading && leading.codes.length === 1 && trailing.codes.length > 1) ? trailing : leading;
    if (trailing && sign === trailing) {
      number = readNumber(text, start, habitsFor(trailing, hints, field)) ?? number;
      const joined = leading ? null : signAsPoint(text, number, trailing);
      if (joined) number = joined;
    }
    const end = sign && sign === trailing ? Math.max(sign.end, number.end) : number.end;
    from = end;
    numberStart.lastIndex = end;
    if (
      number.readings.length === 0 ||
      (glued && !(field && sign)) ||
      notMoney.test(text.slice(number.end, number.end + 4))
    )
      continue;
    amounts.push({ number, sign, start: leading?.start ?? start, end });
  }
  return amounts;
}

function toFound(folded: Folded, amount: Amount, around: Surroundings, hints: PriceHints): FoundPrice | null {
  const kind = priceKind(around);
  if (kind === null) return null;
  const candidates = amount.sign?.codes ?? (hints.currency ? [hints.currency] : []);
  const { currency, by } = settleCurrency(candidates, amount.sign ? hints : {});
  const exponent = exponentOf(currency ?? candidates[0] ?? null);
  const minors = amount.number.readings.map((reading) => minorUnits(reading, exponent));
  const [minor, ...others] = minors;
  if (minor === undefined || minor === null) return null;
  const otherMinor = others.filter((other) => other !== null && other !== minor) as number[];
  const caveats = [
    ...(otherMinor.length > 0 ? ['ambiguous'] : []),
    ...(currency === null ? ['currency-open'] : []),
    ...(by ? [`currency-by-${by}`] : []),
    ...(amount.sign ? [] : ['no-currency-sign']),
    ...(around.includesShipping ? ['includes-shipping'] : []),
  ];
  const ordered = currency ? [currency, ...candidates.filter((code) => code !== currency)] : candidates;
  return {
    price: { kind, minor, exponent, currency, currencies: ordered, ...(otherMinor.length > 0 ? { otherMinor } : {}) },
    ...sourceRange(folded, amount.start, amount.end),
    caveats,
  };
}

/** Joins "£40 – £60" to one range. */
function joinRanges(found: { price: FoundPrice; amount: Amount }[], folded: Folded): FoundPrice[] {
  const joined: FoundPrice[] = [];
  for (let index = 0; index < found.length; index += 1) {
    const low = found[index]!;
    const high = found[index + 1];
    const between = high ? folded.text.slice(low.amount.end, high.amount.start) : '';
    const ranges = high && rangeJoint.test(between) && high.price.price.minor > low.price.price.minor;
    if (!ranges || low.price.price.exponent !== high.price.price.exponent) {
      joined.push(low.price);
      continue;
    }
    const signed = high.amount.sign ? high.price : low.price;
    const { otherMinor: _, ...price } = signed.price;
    joined.push({
      price: { ...price, kind: 'range', minor: low.price.price.minor, minorTo: high.price.price.minor },
      ...sourceRange(folded, low.amount.start, high.amount.end),
      caveats: signed.caveats,
    });
    index += 1;
  }
  return joined;
}

/**
 * All prices of a text, in order. An amount needs a currency sign, a price word beside it, or to be the whole text.
 * Percentages, dates, measures, quantities and savings ("save £20") are not prices. `words` is `text.slice(start, end)`.
 */
export function parsePrices(text: string, hints: PriceHints = {}): FoundPrice[] {
  const folded = foldText(text);
  const plain = foldWords(folded.text).text;
  const amounts = findAmounts(folded.text, hints, false);
  const found: { price: FoundPrice; amount: Amount }[] = [];
  let from = 0;
  amounts.forEach((amount, index) => {
    const rangeWithNext =
      amounts[index + 1]?.sign != null && rangeJoint.test(folded.text.slice(amount.end, amounts[index + 1]!.start));
    const around: Surroundings = {
      text: plain,
      start: amount.start,
      end: amount.end,
      from,
      to: amounts[index + 1]?.sign ? amounts[index + 1]!.start : plain.length,
      signed: amount.sign !== null || rangeWithNext,
      includesShipping: false,
    };
    const price = toFound(
      folded,
      amount,
      around,
      rangeWithNext && !amount.sign ? { ...hints, currency: undefined } : hints,
    );
    if (amount.sign) from = amount.end;
    if (price) found.push({ price, amount });
  });
  return joinRanges(found, folded);
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
  const folded = foldText(text).text;
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
