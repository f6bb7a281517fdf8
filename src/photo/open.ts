import { fail, type Problem, problem, type Result, succeed } from '../problem';
import { foreignFormat } from './foreign-format';
import { type ImageHeader, notReadHere, readImageHeader } from './header';
import type { PixelImage } from './types';

/** Most pixels that a photo is read in: above it the decoder scales. */
export const readPixels = 12_000_000;
/** Smaller photos hold no line of characters. */
export const leastSide = 24;

/**
 * What decodes where the program runs: the browser, or a library on the command line. Gives upright sRGB pixels on white,
 * at most `mostPixels` of them, of the first picture of an animation; null when the bytes do not hold a whole picture.
 */
export type DecodePhoto<I extends PixelImage> = (
  bytes: Uint8Array<ArrayBuffer>,
  header: ImageHeader,
  mostPixels: number,
) => Promise<I | null>;

/** A rectangle in the file's own pixels, upright. */
export interface PartOfFile {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
}

/** As `DecodePhoto`, of parts alone and in the file's own pixels: null for one that holds none. */
export type CutPhoto = (
  bytes: Uint8Array<ArrayBuffer>,
  header: ImageHeader,
  parts: readonly PartOfFile[],
) => Promise<(PixelImage | null)[]>;

/** The factor from a decoded photo's pixels to the file's own; where it was shrunk, and parts can be had, the way to them. */
export interface FileOfPhoto {
  scale: number;
  /** The file, for what it tells beside its pixels. */
  bytes: Uint8Array;
  cut?: (parts: readonly PartOfFile[]) => Promise<(PixelImage | null)[]>;
}

/** A decoded photo, and its file. */
export interface OpenedPhoto<I extends PixelImage = PixelImage> extends FileOfPhoto {
  image: I;
}

/** Bytes → pixels, or why there are none; `where` names the photo in problems. What is refused here is never decoded. */
export async function openPhoto<I extends PixelImage>(
  bytes: Uint8Array<ArrayBuffer>,
  where: string,
  decode: DecodePhoto<I>,
  mostPixels: number = readPixels,
  cut?: CutPhoto,
): Promise<Result<OpenedPhoto<I>>> {
  const header = readImageHeader(bytes, where);
  if (!header.ok) return header;
  const { width, height } = header.value;
  if (Math.min(width, height) < leastSide) return fail(tooSmall(where, width, height));
  const image = await decode(bytes, header.value, mostPixels);
  // JPEG XL is read by some browsers only, and HEIC not in every form: to ask for a JPEG helps in either case.
  const isOftenNotRead = header.value.type === 'jxl' || header.value.type === 'heic';
  const foreign = image === null && isOftenNotRead ? foreignFormat(bytes) : null;
  if (foreign !== null) return fail(notReadHere(where, foreign));
  if (image === null) return fail(problem('photo-damaged', where));
  const scale = Math.max(width, height) / Math.max(image.width, image.height);
  const cutParts = cut && ((parts: readonly PartOfFile[]) => cut(bytes, header.value, parts.map(wholePixels)));
  return succeed({ image, bytes, scale, ...(cutParts ? { cut: cutParts } : {}) });
}

const wholePixels = ({ x0, y0, x1, y1 }: PartOfFile): PartOfFile => ({
  x0: Math.max(0, Math.floor(x0)),
  y0: Math.max(0, Math.floor(y0)),
  x1: Math.ceil(x1),
  y1: Math.ceil(y1),
});

/** The share of both sides that leaves at most so many pixels. */
export const shareWithin = (width: number, height: number, mostPixels: number): number =>
  Math.min(1, Math.sqrt(mostPixels / (width * height)));

export const tooSmall = (where: string, width: number, height: number): Problem =>
  problem('photo-too-small', where, { width, height });
