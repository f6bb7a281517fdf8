import type { Span } from '../../../src/span';

/** The ten years that begin with `first`, as a listing's "the 1990s" is read. */
export const decadeSpan = (first: number): Span => ({
  from: `${first}-01-01`,
  to: `${first + 9}-12-31`,
  precision: 'decade',
});
