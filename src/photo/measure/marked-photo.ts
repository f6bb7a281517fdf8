import { greyOf } from '../grey';
import type { GreyImage, PixelImage, Point, Quad } from '../types';
import { once } from './once';
import { type Panel, rectified } from './panel/panel';
import { findStitches, type Stitches } from './stitch/count';

/** A photo whose marks are measured. What several measures rest on is found once, and only where one of them asks for it. */
export interface MarkedPhoto {
  image: PixelImage;
  grey: () => GreyImage;
  panel: (marked: Quad, within: number) => Panel | null;
  stitches: (from: Point, to: Point, within: number) => Stitches | null;
}

export function markedPhoto(image: PixelImage): MarkedPhoto {
  const grey = once(() => greyOf(image));
  return {
    image,
    grey,
    panel: once((marked: Quad, within: number) => rectified(grey(), marked, within)),
    stitches: once((from: Point, to: Point, within: number) => findStitches(grey(), from, to, within)),
  };
}
