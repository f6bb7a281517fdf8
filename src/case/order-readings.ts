import type { Claim } from '../claim/types';
import type { Decoding, Reading } from '../code/types';
import { fitsClaims } from '../evidence';

/** Stamped pieces of before are offered less often, by half with each of so many years. */
const [evenSince, halvedIn] = [1980, 4];

/**
 * How often pieces of a year are offered second-hand, against those of the years since 1980: what a family's shape alone
 * leaves open is more often of a common year. Common practice, no source.
 */
function offeredOf({ span }: Reading): number {
  const year = Number((span?.to ?? span?.from)?.slice(0, 4));
  return Number.isNaN(year) || year >= evenSince ? 1 : 0.5 ** ((evenSince - year) / halvedIn);
}

/**
 * Readings by the shape of a code alone, those that fit what the seller says of the date first, then those of years that
 * are common in the trade: none of them is likelier by itself than another house's habit. Readings by a maker's file stay
 * in their order. Nothing is left out.
 */
export function orderReadings(decoding: Decoding, claims: readonly Claim[]): Decoding {
  if (decoding.readings.some(({ system }) => system.maker !== null)) return decoding;
  const rank = ({ span }: Reading): number => {
    const fits = fitsClaims(span, claims);
    return fits === null ? 1 : fits ? 0 : 2;
  };
  const ranked = decoding.readings.map((reading) => ({
    reading,
    rank: rank(reading),
    share: reading.probability * offeredOf(reading),
  }));
  ranked.sort((a, b) => a.rank - b.rank || b.share - a.share);
  return { ...decoding, readings: ranked.map(({ reading }) => reading) };
}
