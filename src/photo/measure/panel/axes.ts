import { mean } from '../mean';
import type { NotMeasured } from '../measure-types';
import { bestMatch, type Cell, foldCell, type Turn, withoutBands } from './cell';
import type { Lattice, Step } from './lattice';
import type { Panel } from './panel';

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

/** The upright mirror axes of a panel's pattern. */
export interface Axes {
  lattice: Lattice & { across: Step; down: Step };
  /** Place of one axis in a repeat; the other lies half a repeat on. */
  place: number;
  within: number;
}

export function axesOf({ image, lattice: found }: Pick<Panel, 'image' | 'lattice'>): Axes | NotMeasured {
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
