import { describe, expect, it } from 'vitest';
import { listingText } from '../../../src/case/listing-text';
import { emptyListing, stated } from '../check/sample';

describe('listingText', () => {
  it('does not repeat a description that the visible text holds', () => {
    const listing = { ...emptyListing, title: stated('T'), description: stated('D'), text: 'x D y' };
    expect(listingText(listing)).toBe('T\nx D y');
    expect(listingText({ ...listing, text: 'x y' })).toBe('T\nD\nx y');
  });
});
