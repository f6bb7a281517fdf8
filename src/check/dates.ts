import type { Claim } from '../claim/types';
import { meetSpans, type Span } from '../span';

const dayMs = 86_400_000;
const daysFrom = (first: string, later: string) => Math.round((Date.parse(later) - Date.parse(first)) / dayMs);

/** Whole days by which `a` ends before `b` starts; 0 when it does not. */
export const daysBefore = (a: Span, b: Span): number =>
  a.to !== null && b.from !== null && a.to < b.from ? daysFrom(a.to, b.from) : 0;

/** Whole days between two spans, 0 when they share a day. */
export const daysApart = (a: Span, b: Span): number =>
  meetSpans(a, b) ? 0 : Math.max(daysBefore(a, b), daysBefore(b, a));

export type DatedClaim = Extract<Claim, { kind: 'made' | 'bought' }>;
/** The first claim of each date, at most twenty: a text full of years is not compared pair by pair. */
export function distinctDates<C extends DatedClaim>(claims: readonly C[]): C[] {
  const seen = new Set<string>();
  const first = claims.filter(({ span }) => {
    const date = JSON.stringify([span.from, span.to, span.about ?? false]);
    return seen.has(date) ? false : seen.add(date);
  });
  return first.slice(0, 20);
}
