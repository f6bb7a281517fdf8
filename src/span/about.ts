import { widenSpan } from './periods';
import type { Span } from './types';

/** Years by which "about 1994" may be off either way. Own rule, common practice, no source. */
export const aboutYears = 5;

/** The dates that a hedged span may mean; any other as it is. */
export const reachOfAbout = (span: Span): Span =>
  span.about ? widenSpan(span, { before: aboutYears * 366, after: aboutYears * 366 }) : span;
