import type { Problem } from '../problem';
import type { Listing } from './types';

/** Why a page that is no listing is none, in words for the buyer. */
export function kindProblem(kind: Exclude<Listing['kind'], 'listing'>): Problem {
  switch (kind) {
    case 'list':
      return {
        code: 'page-is-a-list',
        where: 'page',
        what: 'This page offers many pieces; it is not a listing of one.',
        remedy: 'Open one of the listings and read that page.',
      };
    case 'article':
      return {
        code: 'page-is-an-article',
        where: 'page',
        what: 'This page is an article; it tells of things and offers none.',
        remedy: 'Open a listing, or point at its title and price on the page if one is offered here.',
      };
    case 'cut':
      return {
        code: 'page-too-large-to-tell',
        where: 'page',
        what: 'The page is too large to be read whole, and what was read does not tell what it offers.',
        remedy: 'Point at the title and the price of the piece on the page.',
      };
    case 'none':
      return {
        code: 'no-listing',
        where: 'page',
        what: 'No listing was found on this page.',
        remedy: 'Open a listing, or point at its title and price on the page.',
      };
  }
}

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
