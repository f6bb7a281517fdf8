import { exponentOf, type PriceHints } from '../../text/currency';
import { withoutEnd } from '../../text/ends';
import { parsePriceText } from '../../text/price';
import type { Price } from '../types';
import { type Item, type ItemValue, isItem, textOf, valuesOf, wordsOf } from './item';

/** A price from data, with why it is weaker than it looks. */
export interface DataPrice {
  price: Price;
  words: string;
  caveats: string[];
}

/** Scalar text of a price value: number, text, or `{@value}`; absent for null, '' and things. */
export function priceText(value: ItemValue | undefined): string | null {
  if (value === undefined || typeof value === 'boolean' || isItem(value)) return null;
  const text = String(value).trim();
  return text === '' || text === 'NaN' ? null : text;
}

/** ISO 4217 code of a currency as data writes it ("EUR", "eur", "€"), or null. */
export function currencyCode(text: string | null, hints: PriceHints): string | null {
  const trimmed = (text ?? '').trim().toUpperCase();
  if (/^[A-Z]{3}$/.test(trimmed)) return trimmed;
  if (trimmed === '') return null;
  const { currencies } = parsePriceText(`${text} 1`, text, hints);
  return currencies.length === 1 ? (currencies[0] as string) : null;
}

/** Decimal text to minor units without floats; null where it holds more decimals than the currency has. */
export function toMinor(decimal: string, exponent: number): number | null {
  const match = /^(\d{1,12})(?:\.(\d{0,6}))?$/.exec(decimal);
  if (!match) return null;
  const fraction = withoutEnd(match[2] ?? '', /0/);
  if (fraction.length > exponent) return null;
  const minor = Number(`${match[1]}${fraction.padEnd(exponent, '0')}`);
  return Number.isSafeInteger(minor) ? minor : null;
}

/**
 * Reads an amount of data. schema.org asks for a point before the decimals; "1.299" is read so and as 1299, marked
 * ambiguous. Zero is no price. `kind` is what the data says it is.
 */
export function dataPrice(
  text: string,
  currencyText: string | null,
  kind: Price['kind'],
  hints: PriceHints,
): DataPrice | null {
  const named = currencyCode(currencyText, hints);
  const plain = /^\d{1,12}(\.\d{1,2})?$/.test(text);
  const read = plain
    ? { amount: text, otherAmounts: [] as string[], currencies: [] as string[] }
    : parsePriceText(text, currencyText, named ? { ...hints, currency: named } : hints);
  if (read.amount === null) return null;
  const candidates = named ? [named] : read.currencies;
  const currency = candidates.length === 1 ? (candidates[0] as string) : null;
  const exponent = exponentOf(candidates[0] ?? null);
  const readings = [read.amount, ...read.otherAmounts]
    .map((amount) => toMinor(amount, exponent))
    .filter((minor): minor is number => minor !== null && minor > 0);
  const [minor, ...others] = readings;
  if (minor === undefined) return null;
  const otherMinor = others.filter((other) => other !== minor);
  return {
    price: {
      kind,
      minor,
      exponent,
      currency,
      currencies: candidates,
      ...(otherMinor.length > 0 ? { otherMinor } : {}),
    },
    words: text.slice(0, 100),
    caveats: [...(otherMinor.length > 0 ? ['ambiguous'] : []), ...(currency === null ? ['currency-open'] : [])],
  };
}

/** Prices of an offer: its own, its price specifications, and the range of an aggregate offer. */
export function offerPrices(offer: Item, hints: PriceHints): DataPrice[] {
  const found: DataPrice[] = [];
  const own = textOf(offer, 'priceCurrency', 'currency');
  const add = (text: string | null, currency: string | null, kind: Price['kind']) => {
    const price = text === null ? null : dataPrice(text, currency ?? own, kind, hints);
    if (price) found.push(price);
  };
  for (const value of valuesOf(offer, 'price')) {
    if (isItem(value))
      add(priceText(valuesOf(value, 'price', 'value')[0]), textOf(value, 'priceCurrency', 'currency'), 'sale');
    else add(priceText(value), null, 'sale');
  }
  const specifications = valuesOf(offer, 'priceSpecification').filter(isItem);
  for (const specification of specifications) {
    const inner = [specification, ...valuesOf(specification, 'priceComponent').filter(isItem)];
    for (const one of inner) {
      const text = priceText(valuesOf(one, 'price')[0]);
      const currency = textOf(one, 'priceCurrency');
      add(text, currency, specificationKind(one));
    }
  }
  const low = priceText(valuesOf(offer, 'lowPrice')[0]);
  const high = priceText(valuesOf(offer, 'highPrice')[0]);
  const range = low === null ? null : dataPrice(low, own, high === null ? 'from' : 'range', hints);
  const upper = high === null ? null : dataPrice(high, own, 'range', hints);
  if (range && upper && upper.price.minor > range.price.minor) range.price.minorTo = upper.price.minor;
  else if (range && upper) range.price.kind = 'sale';
  if (range) found.push(range);
  // A sale price in the specification is the price; the offer's own is then the one from before, if it is higher.
  const sale = found.find((one, index) => index > 0 && one.price.kind === 'sale' && specifications.length > 0);
  const first = found[0];
  if (sale && first && first !== sale && first.price.kind === 'sale' && first.price.minor > sale.price.minor)
    first.price.kind = 'was';
  return found;
}

function specificationKind(specification: Item): Price['kind'] {
  const type = wordsOf(specification, 'priceType').replace(/^.*\//, '').toLowerCase();
  if (/list|srp|msrp|strikethrough|regular|rrp/.test(type)) return 'was';
  if (specification.types.some((one) => /DeliveryChargeSpecification|PaymentChargeSpecification/i.test(one)))
    return 'shipping';
  const quantity = valuesOf(specification, 'referenceQuantity').find(isItem);
  const unit = quantity && textOf(quantity, 'unitCode', 'unitText');
  if (unit && !/^(C62|EA|NMP|H87)$/i.test(unit)) return 'unit';
  return 'sale';
}
