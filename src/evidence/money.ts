import type { Price } from '../listing/types';

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

export const amountOf = (price: Pick<Price, 'minor' | 'exponent'>): number => price.minor / 10 ** price.exponent;
