export { type Background, backgroundOf } from './background';
export { boxDeviation, boxMean, flatten, histogram, stretch, summedArea } from './contrast';
export { type ForeignFormat, foreignFormat, howToSendJpeg } from './foreign-format';
export { greyOf, invert, pixelsOf } from './grey';
export { differenceHash, hashDistance } from './hash';
export type { ImageHeader } from './header';
export { maxPixels, maxSide, readImageHeader } from './header';
export { type DecodePhoto, leastSide, type OpenedPhoto, openPhoto, shareWithin, tooSmall } from './open';
export { release } from './release';
export { resizeGrey, resizePixels, sizeWithin } from './resize';
export { isTooWeak, sharpness } from './sharpness';
export type { GreyImage, PixelImage, Point, Quad } from './types';
export type { Projection } from './warp';
export {
  cropGrey,
  cropPixels,
  project,
  projectionOnto,
  quadBounds,
  quadSize,
  sampleGrey,
  turnedQuad,
  warpQuad,
} from './warp';
