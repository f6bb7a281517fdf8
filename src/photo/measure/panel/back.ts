import type { NotMeasured } from '../measure-types';
import { bestMatch, type Cell, foldCell } from './cell';
import type { Panel } from './panel';

/** Least likeness of two panels of one pattern, and by how much one way must be more alike than the other. Found on drawn panels. */
const leastAlike = 0.5;
const leastAhead = 0.16;

/** Whether the back's pattern stands as the front's does or on its head; one length of cloth that is folded stands on its head. */
export function backTurned(front: Panel, back: Panel): 'turned' | 'upright' | NotMeasured {
  const [one, other] = [cellOf(front), cellOf(back)];
  if (one === null || other === null) return 'no-repeat';
  const upright = bestMatch(one, other, 'as-it-is').alike;
  const turned = bestMatch(one, other, 'half-turned').alike;
  const [more, less] = [Math.max(upright, turned), Math.min(upright, turned)];
  if (more < leastAlike) return 'not-the-same-pattern';
  if (more - less < leastAhead * more) return 'alike-both-ways';
  return turned > upright ? 'turned' : 'upright';
}

function cellOf({ image, lattice }: Panel): Cell | null {
  const { across, down } = lattice();
  return across === null || down === null ? null : foldCell(image, across, down, () => true);
}
