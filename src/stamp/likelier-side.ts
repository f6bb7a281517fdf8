import type { Quad } from '../photo';
import { looksLikeCode } from './looks-like-code';
import { fromOtherSide, isReadFromBothSides } from './sides';
import type { Spelt } from './spelt';
import { sure } from './sure';
import type { Lattice } from './types';

/**
 * How likely a text must be from the other side to be taken instead, and how many times likelier: the finder was shown
 * upright lines only and frames one that stands on its head as well as any.
 */
const leastTurned = 0.5;
const timesLikelier = 2;
/** A text that is a code upside down too is left open from this probability on. */
const leastOtherWay = 0.5;

/**
 * What a line spells as it was found, or from its other side where that is a code and clearly likelier; it is not read
 * from there where no text could be. `otherWay` is set where both sides spell likely codes, as those of 0, 1, 6, 8 and 9 do.
 */
export async function fromLikelierSide(
  quad: Quad,
  spell: (quad: Quad) => Promise<Spelt>,
): Promise<{ quad: Quad; spelt: Spelt; otherWay: Lattice | null }> {
  const spelt = await spell(quad);
  const { text, probability } = spelt.free;
  const isSure = probability >= sure;
  const isSettled = isSure ? !(looksLikeCode(text) && isReadFromBothSides(text)) : timesLikelier * probability > 1;
  if (isSettled) return { quad, spelt, otherWay: null };
  const over = await spell(fromOtherSide(quad));
  const isCode = looksLikeCode(over.free.text);
  if (isSure) {
    const isLikely = isCode && over.free.probability >= leastOtherWay && over.free.text !== text;
    return { quad, spelt, otherWay: isLikely ? over.lattice : null };
  }
  const isLikelier = over.free.probability >= Math.max(leastTurned, timesLikelier * probability);
  return isCode && isLikelier
    ? { quad: fromOtherSide(quad), spelt: over, otherWay: null }
    : { quad, spelt, otherWay: null };
}
