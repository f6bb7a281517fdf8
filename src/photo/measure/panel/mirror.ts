import type { Point } from '../../types';
import type { NotMeasured } from '../measure-types';
import type { Axes } from './axes';
import { intoPanel, lengthInPhoto, type Panel } from './panel';

export interface Off {
  /** Shares of the repeat; right of the middle is positive. */
  value: number;
  uncertainty: number;
}

/** How far the nearest upright mirror axis lies off the panel's middle. Axes lie half a repeat apart: never more than a quarter. */
export function mirrorOff(panel: Panel): Off | NotMeasured {
  const axes = panel.axes();
  return typeof axes === 'string' ? axes : offBy(panel, axes, 0.5, axes.place);
}

/**
 * By how much farther from an axis the left edge cuts the pattern than the right one does, −1/2 to 1/2: 0 where they cut it
 * at mirrored places. That is twice what an axis is off the middle: a repeat that seems longer to one side, as on a
 * panel not quite straightened, takes from one edge what it gives the other. Which of the two kinds of axis it is makes
 * no difference, but where every other row stands aside its own axes lie between.
 */
export function edgesOff(panel: Panel): Off | NotMeasured {
  const axes = panel.axes();
  if (typeof axes === 'string') return axes;
  if (axes.lattice.staggered) return 'staggered';
  const { value, uncertainty } = offBy(panel, axes, 0.5, axes.place);
  return { value: 2 * value, uncertainty: 2 * uncertainty };
}

/** How far the nearest of all motifs like the one at `motif`, marked to `within` pixels, lies off the panel's middle. */
export function motifOff(panel: Panel, motif: Point, within: number): Off | NotMeasured {
  const axes = panel.axes();
  if (typeof axes === 'string') return axes;
  if (axes.lattice.staggered) return 'staggered';
  const at = intoPanel(panel, motif);
  if (at === null) return 'flat';
  const { across, down } = axes.lattice;
  const u = (at.x * down.y - at.y * down.x) / (across.x * down.y - across.y * down.x);
  const ahead = u - axes.place;
  // The motif's middle lies on one of the axes; which of the two a hand's point tells, where it is not that far off.
  const nearest = Math.round(2 * ahead) / 2;
  const toOther = (0.5 - Math.abs(ahead - nearest)) * lengthInPhoto(panel, across);
  return toOther > within ? offBy(panel, axes, 1, axes.place + nearest) : 'either-axis';
}

/** The nearest of the places that come every `every` repeats to the middle of the panel, at half its height. */
function offBy({ image, snapped, across: wide, down: high }: Panel, axes: Axes, every: number, place: number): Off {
  const { across, down } = axes.lattice;
  const middle = image.width / 2;
  const slope = down.x / down.y;
  // Along the line of half the height, one repeat is this many samples.
  const repeat = across.x - across.y * slope;
  const first = place * repeat + (image.height / 2) * slope;
  const off = (first - middle) / repeat;
  const value = off - Math.round(off / every) * every;
  const [top, right, bottom, left] = snapped.within;
  const pixels = (repeat * wide) / image.width;
  // The middle is where the diagonals meet: it moves with the left and right sides, and where one of them seems longer.
  const moved = Math.hypot(Math.hypot(left, right) / 2, (wide / (4 * high)) * Math.SQRT2 * Math.hypot(top, bottom));
  return { value, uncertainty: Math.hypot(axes.within, moved / pixels) };
}
