import type { Listing } from '../listing/types';
import { countInStock } from '../text';
import { type ClaimDraft, saidInData } from './passage';

/** Several of one kind, as the page's own data counts them. What its text says of them is a family of words. */
export function inStockClaims({ availability }: Listing): ClaimDraft[] {
  return availability.flatMap(({ words, confidence }): ClaimDraft[] => {
    const count = countInStock(words);
    return count === null ? [] : [{ kind: 'in-stock', count, ...saidInData(words as string, confidence) }];
  });
}
