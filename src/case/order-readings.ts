import type { Claim } from '../claim/types';
import type { Decoding, Reading } from '../code/types';
import { type Span, spansMeet } from '../span';

/** Dates that the seller gives the piece; a purchase leaves everything before it open. */
const datesOf = (claims: readonly Claim[]): Span[] =>
  claims.flatMap((claim) => {
    if (claim.kind === 'made') return [claim.span];
    return claim.kind === 'bought' ? [{ from: null, to: claim.span.to, precision: 'range' as const }] : [];
  });

/**
 * Readings by the shape of a code alone, those that fit what the seller says of the date first: none of them is likelier
 * by itself than another house's habit. Readings by a maker's file stay in their order. Nothing is left out.
 */
export function orderReadings(decoding: Decoding, claims: readonly Claim[]): Decoding {
  const dates = datesOf(claims);
  if (dates.length === 0 || decoding.readings.some(({ system }) => system.maker !== null)) return decoding;
  const misses = ({ span }: Reading) => (span === null ? 0.5 : dates.filter((date) => !spansMeet(date, span)).length);
  const readings = [...decoding.readings].sort((a, b) => misses(a) - misses(b) || b.probability - a.probability);
  return { ...decoding, readings };
}
