import { type GreyImage, type Quad, release } from '../photo';
import { bare } from './bare';
import type { FoundLine, StampNets } from './engines';
import { directionOf, quarterTurn, turnedBy } from './sides';
import { sure } from './sure';
import type { StampLine } from './types';

/** Size in which the photo turned by a quarter is looked at, as a share of the first look's. */
const sidewaysShare = 0.7;
/** Longest side of the photo turned by an eighth, pixels: half of it is the corners that the turn adds. */
const aslantSide = 720;
/** What lies askew by more than the finder knows, whichever way it is turned by quarters. */
const aslant = [45, -45] as const;

/** Lines that run up or down the photo: what the finder, which knows upright lines, sees once the photo is turned. */
export async function findSideways(
  grey: GreyImage,
  nets: StampNets,
  share: number = sidewaysShare,
): Promise<FoundLine[]> {
  return found(quarterTurn(grey), nets, share);
}

/** Looks at the photo turned by an eighth either way, as they are asked for, and the direction that lies straight in each. */
export const looksAslant = (grey: GreyImage, nets: StampNets): { level: number; find: () => Promise<FoundLine[]> }[] =>
  aslant.map((degrees) => ({
    level: -degrees,
    find: () => found(turnedBy(grey, degrees, aslantSide), nets, 1),
  }));

/** What is turned by at most this, degrees, from the photo's sides lies straight in it. */
const mostTurn = 30;
/** Fewer characters may be read in grain. */
const leastCharacters = 4;

/**
 * Whether a piece may lie askew in its photo: what does is seen from a side as well, though framed badly, and whatever is
 * surely read shows how the piece lies.
 */
export const mayLieAskew = (places: readonly FoundLine[], lines: readonly StampLine[]): boolean =>
  places.length > 0 && !lines.some((line) => isSurelyRead(line) && liesStraight(line.quad));

const isSurelyRead = ({ free: { text, probability } }: StampLine): boolean =>
  probability >= sure && bare(text).length >= leastCharacters;

function liesStraight(quad: Quad): boolean {
  const turn = Math.abs(directionOf(quad)) % 90;
  return Math.min(turn, 90 - turn) <= mostTurn;
}

async function found(
  { turned, back }: ReturnType<typeof turnedBy>,
  nets: StampNets,
  share: number,
): Promise<FoundLine[]> {
  const lines = await nets.findLines(turned, share);
  release(turned.data);
  return lines.map((line) => ({ ...line, quad: line.quad.map(back) as Quad }));
}
