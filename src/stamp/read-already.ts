import type { Quad } from '../photo';
import { isSameLine } from './find/find-lines';
import { looksLikeCode } from './looks-like-code';
import { angleBetween, directionOf, fromOtherSide } from './sides';
import { sure } from './sure';
import type { StampLine } from './types';

/** A place that was read, and the line that it spelt, if any. */
export interface PlaceRead {
  quad: Quad;
  line: StampLine | null;
}

/** Two looks frame the same line in boxes that are turned less, degrees. */
const sameTurn = 25;

const isSamePlace = (one: Quad, other: Quad): boolean =>
  isSameLine(one, other) && angleBetween(directionOf(one), directionOf(other)) < sameTurn;

/** Whether a look that finds a place can tell no more of it than was read there. */
export type Settling = (quad: Quad, places: readonly PlaceRead[]) => boolean;

/** A code from this probability on becomes sure in any other box, by chance. */
const nearlySure = 0.8;

const linesAt = (quad: Quad, places: readonly PlaceRead[]): PlaceRead['line'][] =>
  places.filter((place) => isSamePlace(place.quad, quad)).map(({ line }) => line);

const isSurelyWords = (line: PlaceRead['line']): boolean =>
  line !== null && line.free.probability >= sure && !looksLikeCode(line.free.text);

/** In a look from the same side. A box of another size makes a code surer, and no code of nothing or of what is surely words. */
export const settledFromSameSide: Settling = (quad, places) => {
  const lines = linesAt(quad, places);
  return lines.length > 0 && lines.every((line) => line === null || isSurelyWords(line));
};

const isNearlySure = (line: PlaceRead['line']): boolean =>
  line !== null && line.free.probability >= nearlySure && looksLikeCode(line.free.text);

/** In a look from another side, which frames what runs as it was read no better. */
export const settledFromOtherSide: Settling = (quad, places) => {
  const lines = linesAt(quad, places);
  return lines.length > 0 && !lines.some(isNearlySure);
};

/** What runs askew by at most this, degrees, no other look frames as well. */
const leastAskew = 22.5;
/** What runs askew by more than this in a look at the photo turned by an eighth lies straight in another. */
const mostAskew = 35;

/**
 * In a look at the photo turned so that what runs at `level`, degrees, lies straight. A line that was framed from its other
 * side is read whichever way it runs.
 */
export const settledFromAskew =
  (level: number): Settling =>
  (quad, places) => {
    const apart = angleBetween(directionOf(quad), level);
    const askew = Math.min(apart, 180 - apart);
    const lines = linesAt(quad, places);
    if (askew <= leastAskew) return lines.some(isSurelyWords);
    if (lines.length > 0) return !lines.some(isNearlySure);
    return askew > mostAskew && linesAt(fromOtherSide(quad), places).length === 0;
  };
