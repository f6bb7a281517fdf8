import { emptyDraft } from '../../src/listing/draft';
import type { Listing } from '../../src/listing/types';

/** A listing of the invented marketplace of which nothing is known yet, to be filled by a test with what it is about. */
export const blankListing: Listing = {
  ...emptyDraft(),
  format: 1,
  url: 'https://attic-arcade.example/item/1',
  readAt: '2026-01-15T10:00:00Z',
  kind: 'listing',
  language: 'en',
  text: '',
  photos: [],
};
