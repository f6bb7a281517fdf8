import type { GreyImage, Point } from '../../types';
import { sampleGrey } from '../../warp';

/** The photo along a line: one sample a pixel, the line in the middle row, from `before` pixels before its first point. */
export interface Strip extends GreyImage {
  /** Samples before the line's first point. */
  before: number;
  /** Rows on either side of the line. */
  aside: number;
  /** The line's length. */
  length: number;
  /** Where a place of the strip lies in the photo: samples from the line's first point, rows from the line. */
  place(along: number, across: number): Point;
}

/** Null for a line shorter than 12 pixels. */
export function stripAlong(grey: GreyImage, from: Point, to: Point, beyond: number, aside: number): Strip | null {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (!(length >= 12)) return null;
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const [before, rows] = [Math.ceil(beyond), Math.ceil(aside)];
  const width = Math.ceil(length) + 2 * before;
  const height = 2 * rows + 1;
  const place = (along: number, across: number): Point => ({
    x: from.x + dx * along - dy * across,
    y: from.y + dy * along + dx * across,
  });
  const data = new Float32Array(width * height);
  for (let row = 0; row < height; row++) {
    const start = place(0.5 - before, row - rows);
    for (let column = 0; column < width; column++)
      data[row * width + column] = sampleGrey(grey, start.x + dx * column, start.y + dy * column);
  }
  return { width, height, data, before, aside: rows, length, place };
}

/** Samples along a straight line through the strip: `first` and `last` rows from its middle at the line's two points. */
export function alongLine(strip: Strip, first: number, last: number, thick: number, into: Float64Array): void {
  const { width, height, data, before, aside, length } = strip;
  for (let at = 0; at < into.length; at++) {
    const along = ((at + 0.5) / into.length) * length;
    const column = Math.min(width - 1, Math.max(0, Math.round(before + along - 0.5)));
    const middle = aside + first + ((last - first) * along) / length;
    let [sum, rows] = [0, 0];
    for (let row = Math.round(middle - thick); row <= Math.round(middle + thick); row++) {
      if (row < 0 || row >= height) continue;
      sum += data[row * width + column]!;
      rows++;
    }
    into[at] = rows > 0 ? sum / rows : 0;
  }
}
