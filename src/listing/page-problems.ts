import type { Problem } from '../problem';

/** What can be said of a page as a whole. */
export type PageProblem = 'page-is-a-list' | 'no-listing' | 'which-product' | 'data-stale';

/** A problem of the page in words for the buyer. `count` is the number of pieces that a tie is between. */
export function pageProblem(code: PageProblem, where = 'page', count = 0): Problem {
  switch (code) {
    case 'page-is-a-list':
      return {
        code,
        where,
        what: 'This page offers many pieces; it is not a listing of one.',
        remedy: 'Open one of the listings and read that page.',
      };
    case 'no-listing':
      return {
        code,
        where,
        what: 'No listing was found on this page.',
        remedy: 'Open a listing, or point at its title and price on the page.',
      };
    case 'which-product':
      return {
        code,
        where,
        what: `The page's data describes ${count} pieces that fit this page equally well.`,
        remedy: 'Point at the price and the title of the piece that you mean.',
      };
    case 'data-stale':
      return {
        code,
        where,
        what: "The page's data describes another piece than the one shown; it was left from a page seen before.",
        remedy: 'What the page shows was used. Reload the page to get its own data.',
      };
  }
}
