import type { Claim } from '../claim/types';

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
