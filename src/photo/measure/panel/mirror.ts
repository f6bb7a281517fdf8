import type { Point } from '../../types';
import { mean } from '../mean';
import type { NotMeasured } from '../measure-types';
import { bestMatch, type Cell, foldCell, type Turn, withoutBands } from './cell';
import type { Lattice, Step } from './lattice';
import { intoPanel, lengthInPhoto, type Panel } from './panel';

export interface Off {
  /** Shares of the repeat; right of the middle is positive. */
  value: number;
  uncertainty: number;
}

/**
 * Share of a pattern's likeness to its own other half that its mirror picture must reach to have an axis, and how much
 * more of the pattern it may leave over than the other half does: shapes that turn about a point are nearly a mirror
 * picture of each other, and what they lack is small, but more than a panel's own unevenness. Found on drawn patterns.
 */
const nearlyMirrored = 0.9;
const mostOver = { share: 0.018, times: 1.8 };
const leastAlike = 0.35;
/** An axis is told to no less than this share of a repeat, whatever the halves say. */
const leastWithin = 0.006;

interface Axes {
  lattice: Lattice & { across: Step; down: Step };
  /** Place of one axis in a repeat; the other lies half a repeat on. */
  place: number;
  within: number;
}

/** How far the nearest upright mirror axis lies off the panel's middle. Axes lie half a repeat apart: never more than a quarter. */
export function mirrorOff(panel: Panel): Off | NotMeasured {
  const axes = axesOf(panel);
  return typeof axes === 'string' ? axes : offBy(panel, axes, 0.5, axes.place);
}

/** How far the nearest of all motifs like the one at `motif`, marked to `within` pixels, lies off the panel's middle. */
export function motifOff(panel: Panel, motif: Point, within: number): Off | NotMeasured {
  const axes = axesOf(panel);
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

function axesOf({ image, lattice: found }: Panel): Axes | NotMeasured {
  const lattice = found();
  const { across, down, staggered } = lattice;
  if (across === null || down === null) return 'no-repeat';
  const fold = (holds: (x: number, y: number) => boolean): Cell | null => {
    const cell = foldCell(image, across, down, holds);
    return cell === null ? null : withoutBands(cell);
  };
  const halves = [
    fold((x) => x < image.width / 2),
    fold((x) => x >= image.width / 2),
    fold((_, y) => y < image.height / 2),
    fold((_, y) => y >= image.height / 2),
  ];
  const whole = fold(() => true);
  if (whole === null || halves.some((half) => half === null)) return 'no-repeat';
  const [left, right, upper, lower] = halves as [Cell, Cell, Cell, Cell];
  const pairs = [
    [left, right],
    [upper, lower],
  ] as const;
  const alike = (turn: Turn, rows: number): number[] => pairs.map((pair) => bestMatch(...pair, turn, rows).alike);
  const self = alike('as-it-is', 0.1);
  if (Math.min(...self) < leastAlike) return 'no-repeat';
  if (!isMirrored(self, alike('mirrored', 0.05))) return 'no-axis';
  const place = bestMatch(whole, whole, 'mirrored', 0.05).u / 2;
  const own = [left, right, upper, lower].map((cell) => apart(bestMatch(cell, cell, 'mirrored', 0.05).u / 2, place));
  const [l, r, u, d] = own as [number, number, number, number];
  // What the halves share is off at the middle too; what they part in is the slope of a panel not quite straightened.
  const within =
    leastWithin + (1.2 * (Math.abs(l + r) + Math.abs(u + d))) / 2 + 0.12 * (Math.abs(l - r) + Math.abs(u - d));
  return { lattice: { across, down, staggered }, place, within };
}

/** Whether the halves of a panel are as alike when one is mirrored as they are as they stand. */
function isMirrored(self: readonly number[], mirrored: readonly number[]): boolean {
  if (mirrored.some((alike, pair) => alike < nearlyMirrored * self[pair]!)) return false;
  return 1 - mean(mirrored) <= mostOver.share + mostOver.times * (1 - mean(self));
}

/** How far one axis is from another, −1/4 to 1/4: they come every half. */
const apart = (one: number, other: number): number => one - other - Math.round((one - other) * 2) / 2;

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
