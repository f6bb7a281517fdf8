import type { Claim } from '../claim/types';
import type { Decoding, Reading } from '../code/types';
import { fitsClaims } from '../evidence';

/**
 * Readings by the shape of a code alone, those that fit what the seller says of the date first: none of them is likelier
 * by itself than another house's habit. Readings by a maker's file stay in their order. Nothing is left out.
 */
export function orderReadings(decoding: Decoding, claims: readonly Claim[]): Decoding {
  if (decoding.readings.some(({ system }) => system.maker !== null)) return decoding;
  const rank = ({ span }: Reading): number => {
    const fits = fitsClaims(span, claims);
    return fits === null ? 1 : fits ? 0 : 2;
  };
  const ranked = decoding.readings.map((reading) => ({ reading, rank: rank(reading) }));
  // Where nothing is said, or nothing of it tells them apart, they stay as they are.
  if (new Set(ranked.map((one) => one.rank)).size < 2) return decoding;
  ranked.sort((a, b) => a.rank - b.rank || b.reading.probability - a.reading.probability);
  return { ...decoding, readings: ranked.map(({ reading }) => reading) };
}
