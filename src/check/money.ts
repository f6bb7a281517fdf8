import * as z from 'zod';
import type { Price } from '../listing/types';

/** A maker's smallest new price of one year, in whole units of its currency. */
export const floorSchema = z.strictObject({ amount: z.number(), currency: z.string(), year: z.number() });

/**
 * Roughly what one unit was worth in US dollars between 1995 and 2025, lowest and highest yearly figure rounded
 * outwards. From memory, not verified; used only where a factor of three decides.
 */
const dollarsPerUnit: Record<string, readonly [number, number]> = {
  USD: [1, 1],
  EUR: [0.85, 1.6],
  GBP: [1.15, 2.1],
  CHF: [0.55, 1.25],
  JPY: [0.006, 0.0131],
  AUD: [0.5, 1.1],
  CAD: [0.62, 1.06],
  SEK: [0.085, 0.17],
  DKK: [0.115, 0.21],
  NOK: [0.09, 0.2],
  PLN: [0.2, 0.5],
};

/** Lowest and highest amount in dollars that a sum may have been worth; null for a currency that is not listed. */
export function dollarRange(amount: number, currency: string): readonly [number, number] | null {
  const rate = dollarsPerUnit[currency];
  return rate ? [amount * rate[0], amount * rate[1]] : null;
}

export const amountOf = (price: Price): number => price.minor / 10 ** price.exponent;

/** The share of `floor` that `price` may be at most, by the rates that favour the seller; null when not comparable. */
export function largestShare(price: Price, floor: { amount: number; currency: string }): number | null {
  if (price.currency === null || price.otherMinor?.length) return null;
  if (price.currency === floor.currency) return amountOf(price) / floor.amount;
  const asked = dollarRange(amountOf(price), price.currency);
  const least = dollarRange(floor.amount, floor.currency);
  return asked && least ? asked[1] / least[0] : null;
}
