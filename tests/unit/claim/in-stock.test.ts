import { expect, it } from 'vitest';
import { inStockClaims } from '../../../src/claim/in-stock';
import { blankListing } from '../blank-listing';

const counted = (words: string) => {
  const availability = [{ value: 'offered' as const, words, origin: 'json-ld' as const, where: 'x', confidence: 0.8 }];
  return inStockClaims({ ...blankListing, availability } as never);
};

it('several of one kind are claimed as the page counts them, and one is none', () => {
  expect(counted('in stock: 3')).toEqual([
    { kind: 'in-stock', count: 3, words: 'in stock: 3', at: { field: 'data', start: 0, end: 11 }, confidence: 0.8 },
  ]);
  expect(counted('In stock')).toEqual([]);
});
