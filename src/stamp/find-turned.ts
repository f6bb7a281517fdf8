import { type GreyImage, type Quad, release } from '../photo';
import type { FoundLine, StampNets } from './engines';
import { quarterTurn, turnedBy } from './sides';

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

/** Looks at the photo turned by an eighth either way, one after the other as they are asked for. */
export const looksAslant = (grey: GreyImage, nets: StampNets): (() => Promise<FoundLine[]>)[] =>
  aslant.map((degrees) => () => found(turnedBy(grey, degrees, aslantSide), nets, 1));

async function found(
  { turned, back }: ReturnType<typeof turnedBy>,
  nets: StampNets,
  share: number,
): Promise<FoundLine[]> {
  const lines = await nets.findLines(turned, share);
  release(turned.data);
  return lines.map((line) => ({ ...line, quad: line.quad.map(back) as Quad }));
}
