import { presentPlaces } from '../place';
import { meetAll, type Span } from '../span';
import { groundOf } from './cells';
import type { Stretch } from './reasoning-types';
import type { Dating } from './types';

/**
 * The dates and places that all pieces allow together; null when there is no such date or no such place. More
 * evidence never widens it.
 */
export function stretchOf(evidence: readonly Dating[]): Stretch | null {
  const dated = evidence.filter((piece) => piece.spans.length > 0);
  const placed = evidence.filter((piece) => piece.places.length > 0);
  const spans = dated.length === 0 ? [] : meetAll(dated.map((piece) => piece.spans)).map(plainSpan);
  const places = sharedPlaces(placed);
  const empty = (dated.length > 0 && spans.length === 0) || (placed.length > 0 && places.length === 0);
  return empty ? null : { spans, places };
}

/** The stretch is a result, not somebody's words: it is never "about", and its precision follows from its ends. */
const plainSpan = ({ from, to, precision, about }: Span): Span => ({
  from,
  to,
  precision: from !== null && from === to ? 'day' : about ? 'range' : precision,
});

/** Countries in every piece's set. Said by a former country's own code when that is exactly what is shared. */
function sharedPlaces(placed: readonly Dating[]): string[] {
  const grounds = placed.map((piece) => new Set(piece.places.flatMap(groundOf)));
  const shared = [...(grounds[0] ?? [])].filter((place) => grounds.every((ground) => ground.has(place))).sort();
  const former = [...new Set(placed.flatMap((piece) => piece.places))].find((code) => {
    const present = presentPlaces(code);
    return code.length === 4 && present.length === shared.length && present.every((place) => shared.includes(place));
  });
  return former ? [former] : shared;
}
