export { fingerprint } from './page/fingerprint';
export { type PickWords, pickOnPage } from './pick';
export { readFacts } from './read-facts';
export { readListing } from './read-listing';
export { type PageOptions, readPage } from './read-page';
export type {
  Candidate,
  Condition,
  Field,
  Labelled,
  Listing,
  Measure,
  Origin,
  PageExtract,
  PhotoLink,
  Pick,
  PickField,
  Price,
  Rating,
} from './types';
