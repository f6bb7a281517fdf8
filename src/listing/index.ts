export { type ReadOptions, readListing } from './read-listing';
export type {
  Candidate,
  Condition,
  Field,
  Listing,
  Measure,
  Origin,
  PhotoLink,
  Price,
  Rating,
} from './types';
