import { type Problem, problem } from '../problem';
import type { Listing } from './types';

const codes = {
  list: 'page-is-a-list',
  article: 'page-is-an-article',
  cut: 'page-too-large-to-tell',
  none: 'no-listing',
} as const;

/** Why a page that is no listing is none. */
export const kindProblem = (kind: Exclude<Listing['kind'], 'listing'>): Problem => problem(codes[kind], 'page');

/** Why the ad of somebody who looks for a piece is no listing. */
export const wantedProblem: Problem = problem('page-is-a-wanted-ad', 'page');

/** What is said of a piece has no place where no piece is offered. */
const ofThePiece: ReadonlySet<string> = new Set([
  'which-product',
  'pick-the-variant',
  'data-stale',
  'price-not-in-text',
  'price-conflict',
  'photo-without-address',
]);

export const isOfThePiece = ({ code }: Problem): boolean => ofThePiece.has(code);
