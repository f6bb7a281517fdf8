export { boxDeviation, boxMean, flatten, histogram, stretch, summedArea } from './contrast';
export { type ForeignFormat, foreignFormat } from './foreign-format';
export { greyOf, invert, pixelsOf } from './grey';
export type { ImageHeader } from './header';
export { maxPixels, maxSide, readImageHeader } from './header';
export { decodeHeic, type HeifLibrary, type StartHeif, startedHeif } from './heic';
export { type Prepared, prepared, type SamePhoto, samePhoto } from './likeness/same-photo';
export { measureMarks } from './measure';
export { ciede2000 } from './measure/colour/ciede2000';
export { measureHandMarks, pointsOf } from './measure/hand';
export {
  type HandMark,
  type HandMeasure,
  handMarkSchema,
  type MarkKind,
  type MeasuredByHand,
  markKinds,
  type NotMeasuredByHand,
} from './measure/hand/hand-types';
export { cardMm } from './measure/hand/scale';
export { inPixelsOf } from './measure/in-pixels';
export { type LetterWidths, leastReferences, lettersCompared, letterWidths } from './measure/lettering/compare';
export { type Mark, type Measure, markSchema } from './measure/measure-types';
export { median } from './measure/median';
export { type Observation, observed, type Where } from './observation-types';
export { observe, observersOfPrint, type Seen } from './observe';
export { likenessIn } from './observe/likeness';
export {
  type CutPhoto,
  type DecodePhoto,
  type FileOfPhoto,
  leastSide,
  type OpenedPhoto,
  openPhoto,
  type PartOfFile,
  readPixels,
  shareWithin,
  tooSmall,
} from './open';
export { type PhotoReader, type PhotoToRead, readPhoto } from './read-photo';
export {
  type Came,
  isTooWeakRead,
  type PhotoRead,
  partsSeenIn,
  printedIn,
  seenIn,
  showsPart,
  stampAsPart,
  valueIn,
} from './read-types';
export { type ReadingCopy, readingCopy } from './reading-copy';
export { release } from './release';
export { type LightSide, lightSides, reliefOf } from './relief';
export { resizeGrey, resizePixels, sizeWithin } from './resize';
export { cutTiff, decodeTiff } from './tiff';
export type { GreyImage, PixelImage, Point, Quad } from './types';
export type { Projection } from './warp';
export {
  backOf,
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
export { boxWhere, scaledWhere } from './where';
