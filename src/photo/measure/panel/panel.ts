import { boxDeviation, boxMean } from '../../contrast';
import type { GreyImage, Point, Quad } from '../../types';
import { projectionOnto, quadSize, warpQuad } from '../../warp';
import type { NotMeasured } from '../measure-types';
import { once } from '../once';
import { type Axes, axesOf } from './axes';
import { type Lattice, latticeOf } from './lattice';
import { type Snapped, snapQuad } from './snap';

/** A panel seen straight on, light that falls off taken out. */
export interface Panel {
  image: GreyImage;
  snapped: Snapped;
  /** The panel's own size: the mean lengths of its opposite sides, pixels of the photo. */
  across: number;
  down: number;
  /** How its pattern repeats. */
  lattice: () => Lattice;
  axes: () => Axes | NotMeasured;
}

/** Longest side that a panel is looked at in, pixels. */
const longest = 288;

/** Null for a panel that is flat, or under 40 pixels a side. */
export function rectified(grey: GreyImage, marked: Quad, within: number): Panel | null {
  const snapped = snapQuad(grey, marked, within);
  const { across, down } = quadSize(snapped.quad);
  if (!(across >= 40 && down >= 40)) return null;
  const share = Math.min(1, longest / Math.max(across, down));
  const straight = warpQuad(grey, snapped.quad, Math.round(across * share), Math.round(down * share));
  if (straight === null) return null;
  const image = evened(straight);
  const lattice = once(() => latticeOf(image));
  return { image, snapped, across, down, lattice, axes: once(() => axesOf({ image, lattice })) };
}

/** Mean 0 everywhere over a quarter of the panel, and contrast as at the others. */
function evened(image: GreyImage): GreyImage {
  const reach = Math.round(Math.max(image.width, image.height) / 8);
  const mean = boxMean(image, reach);
  const spread = boxDeviation(image, reach);
  return { ...image, data: image.data.map((value, at) => (value - mean.data[at]!) / (spread.data[at]! + 4)) };
}

/** The length of a step across the panel, pixels of the photo. */
export const lengthInPhoto = ({ image, across, down }: Panel, { x, y }: Point): number =>
  Math.hypot((x * across) / image.width, (y * down) / image.height);

/** A place of the photo in samples of the panel; null where the panel is flat. */
export function intoPanel({ image, snapped }: Panel, { x, y }: Point): Point | null {
  const projection = projectionOnto(snapped.quad, image.width, image.height);
  if (projection === null) return null;
  const [a, b, c, d, e, f, g, h] = projection;
  const [px, py, qx, qy] = [a - g * x, b - h * x, d - g * y, e - h * y];
  const area = px * qy - py * qx;
  return area === 0 ? null : { x: ((x - c) * qy - py * (y - f)) / area, y: (px * (y - f) - (x - c) * qx) / area };
}
