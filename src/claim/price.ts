import type { Listing } from '../listing/types';
import { type ClaimDraft, saidInData } from './passage';

/** The listing's best price of each kind; conflicting candidates stay in the listing. */
export function priceClaims(listing: Listing): ClaimDraft[] {
  const kinds = new Set<string>();
  return listing.price.flatMap((candidate): ClaimDraft[] => {
    if (kinds.has(candidate.value.kind)) return [];
    kinds.add(candidate.value.kind);
    const words = candidate.words ?? amountWords(candidate.value);
    return [{ kind: 'price', price: candidate.value, ...saidInData(words, candidate.confidence) }];
  });
}

/** "450.00 EUR" for a price that has no words of its own. */
function amountWords(price: Listing['price'][number]['value']): string {
  const digits = String(price.minor).padStart(price.exponent + 1, '0');
  const whole = digits.slice(0, digits.length - price.exponent);
  const fraction = price.exponent > 0 ? `.${digits.slice(-price.exponent)}` : '';
  return `${whole}${fraction} ${price.currency ?? price.currencies.join('/')}`.trim();
}
