export type { Labelled, PageExtract } from './extract-types';
export { fingerprint } from './page/fingerprint';
export { type PickWords, pickOnPage } from './pick';
export type { Pick, PickField } from './pick-types';
export { readFacts } from './read-facts';
export { readListing } from './read-listing';
export { type PageOptions, readPage } from './read-page';
export type { Candidate, Condition, Field, Listing, Measure, Origin, PhotoLink, Price, Rating } from './types';
