import { type GreyImage, type Quad, quadBounds, resizeGrey, sizeWithin } from '../../photo';
import { chainsOf } from './chains';
import { patchesAbove } from './components';
import { type Polarity, strokeMaps } from './marks';

/** A line that pixel arithmetic alone proposes, in pixels of the image given. */
export interface LineProposal {
  quad: Quad;
  polarity: Polarity;
  score: number;
}

const polarities: readonly Polarity[] = ['dark', 'light', 'relief'];
/** Sides that the photo is looked at in: large for small characters, small for large ones. */
const looks: readonly { side: number; stroke: number; around: number }[] = [
  { side: 1000, stroke: 1, around: 22 },
  { side: 600, stroke: 1, around: 24 },
  { side: 360, stroke: 1, around: 24 },
];

/** Lines of characters by contrast and regularity, best first; at most `most`, none over another. */
export function proposeLines(image: GreyImage, most: number): LineProposal[] {
  const proposals: LineProposal[] = [];
  for (const { side, stroke, around } of looks) {
    const { width, height } = sizeWithin(image.width, image.height, side);
    if (width < 24 || height < 12) continue;
    const small = width === image.width ? image : resizeGrey(image, width, height);
    const scale = image.width / width;
    const maps = strokeMaps(small, stroke, around);
    for (const polarity of polarities) {
      for (const level of [0.7, 1.3]) {
        for (const chain of chainsOf(patchesAbove(maps[polarity], level), small).slice(0, 6)) {
          const quad = chain.quad.map(({ x, y }) => ({ x: x * scale, y: y * scale })) as Quad;
          proposals.push({ quad, polarity, score: chain.score });
        }
      }
    }
  }
  proposals.sort((a, b) => b.score - a.score);
  const kept: LineProposal[] = [];
  for (const proposal of proposals) {
    if (kept.length === most) break;
    if (!kept.some((other) => sharedGround(other.quad, proposal.quad) > 0.6)) kept.push(proposal);
  }
  return kept;
}

/** Two boxes that share more ground than this are of the same line. */
const sameGround = 0.3;

export const isSameLine = (one: Quad, other: Quad): boolean => sharedGround(one, other) > sameGround;

/** Ground that two quads' rectangles share, as a share of the ground of both, 0 to 1. */
export function sharedGround(a: Quad, b: Quad): number {
  const first = quadBounds(a);
  const second = quadBounds(b);
  const across = Math.min(first.x1, second.x1) - Math.max(first.x0, second.x0);
  const down = Math.min(first.y1, second.y1) - Math.max(first.y0, second.y0);
  if (across <= 0 || down <= 0) return 0;
  const area = (box: typeof first): number => (box.x1 - box.x0) * (box.y1 - box.y0);
  return (across * down) / (area(first) + area(second) - across * down);
}
