import { type GreyImage, greyOf, type PixelImage, type Point, type Quad, quadBounds, quadSize } from '../photo';
import type { Box, FoundLine, StampNets } from './engines';
import { sharedGround } from './find/find-lines';

/** A photo that is read in a smaller size than its file has, and the way to parts of it as they are. */
export interface FullSize {
  /** Pixels of the file to one of those that are read. */
  factor: number;
  /** The file's own pixels of parts, given in pixels that are read; null where they cannot be had. */
  cut(parts: readonly Box[]): Promise<(PixelImage | null)[]>;
}

/** A part of a photo in the file's own pixels, what was found there, and the way back to the photo as it is read. */
export interface PartAtFullSize {
  grey: GreyImage;
  found: FoundLine[];
  back: (point: Point) => Point;
  factor: number;
}

/** Less than this is no gain. What is taller is read as it is; small stamps on bare leather are framed far too tall. */
const leastGain = 1.3;
const tallEnough = 50;
/** A stamp's photo has few places that look like a line; each costs a look of its own. */
const mostPlaces = 3;
/** Ground taken in around a place, in its heights: a place that is found in a photo so small is framed badly. */
const beside = 4;
const above = 4;
/** Largest part in pixels of the file: what is larger was no small line. */
const mostPixels = 4_000_000;
/** Two places that share more ground than this are one. */
const samePlace = 0.2;

/**
 * Places in a large photo where a line seems to stand whose characters are too small to be read, looked at in the file's
 * own pixels, the likeliest first, one after the other as they are asked for. A stamp of 25 pixels in a photo of 48
 * million has 9 once that is shrunk to what is read whole.
 */
export function looksAtFullSize(
  places: readonly FoundLine[],
  { width, height }: GreyImage,
  nets: StampNets,
  full: FullSize | null,
): (() => Promise<PartAtFullSize | null>)[] {
  if (full === null || full.factor < leastGain) return [];
  const { factor } = full;
  const chosen: FoundLine[] = [];
  const parts: Box[] = [];
  for (const place of [...places].sort((a, b) => b.stampScore - a.stampScore)) {
    if (parts.length === mostPlaces) break;
    if (quadSize(place.quad).down >= tallEnough) continue;
    if (chosen.some((other) => sharedGround(other.quad, place.quad) >= samePlace)) continue;
    const part = partAround(place.quad, width, height);
    // One that is too large takes no place of those that are looked at.
    if ((part.x1 - part.x0) * (part.y1 - part.y0) * factor ** 2 > mostPixels) continue;
    chosen.push(place);
    parts.push(part);
  }
  // At the first look all are cut at once: a browser decodes the whole file for any part.
  let cut: Promise<(PixelImage | null)[]> | null = null;
  return parts.map((part, at) => async () => {
    cut ??= full.cut(parts);
    const image = (await cut)[at] ?? null;
    if (image === null) return null;
    const grey = greyOf(image);
    const [across, down] = [(part.x1 - part.x0) / grey.width, (part.y1 - part.y0) / grey.height];
    return {
      grey,
      found: await nets.findLines(grey),
      back: ({ x, y }) => ({ x: part.x0 + x * across, y: part.y0 + y * down }),
      factor,
    };
  });
}

function partAround(quad: Quad, width: number, height: number): Box {
  const { down } = quadSize(quad);
  const { x0, y0, x1, y1 } = quadBounds(quad);
  return {
    x0: Math.max(0, Math.floor(x0 - beside * down)),
    y0: Math.max(0, Math.floor(y0 - above * down)),
    x1: Math.min(width, Math.ceil(x1 + beside * down)),
    y1: Math.min(height, Math.ceil(y1 + above * down)),
  };
}
