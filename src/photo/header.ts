import { fail, type Problem, problem, type Result, succeed } from '../problem';
import { ascii } from './ascii';
import { type ForeignFormat, foreignFormat } from './foreign-format';
import { heifSize } from './header-heif';
import { jxlSize } from './header-jxl';
import { jpegSegments } from './jpeg-segments';
import { tiffLayout } from './tiff/layout';

/** What an image file says of itself before a single pixel is decoded. Sizes are as stored, before EXIF turning. */
export interface ImageHeader {
  type: 'jpeg' | 'png' | 'gif' | 'webp' | 'avif' | 'bmp' | 'jxl' | 'tiff' | 'heic';
  mime: string;
  width: number;
  height: number;
}

/** More pixels than this are not decoded; the largest photos of telephones have 108 million (from memory). */
export const maxPixels = 120_000_000;
/** Longer sides are no photograph, and Firefox's canvases end here (from memory). */
export const maxSide = 32_767;

/** Reads the type from the bytes, never from a name, and the size in pixels; refuses what must not be decoded. */
export function readImageHeader(bytes: Uint8Array, where: string): Result<ImageHeader> {
  if (bytes.length === 0) {
    return fail(problem('photo-empty', where));
  }
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const header = sizeOf(bytes, view);
  if (header === 'svg') {
    return fail(problem('photo-svg', where));
  }
  if (header === null) {
    const foreign = foreignFormat(bytes);
    if (foreign !== null) return fail(notReadHere(where, foreign));
    return fail(problem('photo-not-image', where));
  }
  if (header === 'cut') {
    return fail(problem('photo-truncated', where));
  }
  const { width, height } = header;
  if (width < 1 || height < 1) {
    return fail(problem('photo-no-size', where, { width, height }));
  }
  if (width > maxSide || height > maxSide || width * height > maxPixels) {
    return fail(problem('photo-too-large', where, { width, height, most: [maxPixels / 1e6, maxSide] }));
  }
  return succeed(header);
}

/** A format that this browser, or this program, does not decode, and how to come by another. */
export const notReadHere = (where: string, format: ForeignFormat): Problem =>
  problem('photo-foreign-format', where, { format });

function sizeOf(bytes: Uint8Array, view: DataView): ImageHeader | 'svg' | 'cut' | null {
  if (starts(bytes, [0xff, 0xd8, 0xff])) return jpegSize(view);
  if (starts(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) {
    if (bytes.length < 24 || ascii(bytes, 12, 4) !== 'IHDR') return 'cut';
    return { type: 'png', mime: 'image/png', width: view.getUint32(16), height: view.getUint32(20) };
  }
  if (ascii(bytes, 0, 6) === 'GIF87a' || ascii(bytes, 0, 6) === 'GIF89a') {
    if (bytes.length < 10) return 'cut';
    return { type: 'gif', mime: 'image/gif', width: view.getUint16(6, true), height: view.getUint16(8, true) };
  }
  if (ascii(bytes, 0, 4) === 'RIFF' && ascii(bytes, 8, 4) === 'WEBP') return webpSize(bytes, view);
  if (ascii(bytes, 4, 4) === 'ftyp') {
    const brands = ascii(bytes, 8, Math.min(view.getUint32(0), 64) - 8);
    const size = heifSize(bytes);
    if (/avif|avis/.test(brands)) return size === null ? 'cut' : { type: 'avif', mime: 'image/avif', ...size };
    // Without a size it is named and not decoded, as all else that such a file may hold.
    const isHeic = size !== null && foreignFormat(bytes) === 'HEIC';
    return isHeic ? { type: 'heic', mime: 'image/heic', ...size } : null;
  }
  if (ascii(bytes, 0, 2) === 'BM') {
    const size = bmpSize(bytes, view);
    if (size !== null) return size;
  }
  const jxl = jxlSize(bytes);
  if (jxl !== null) return jxl === 'cut' ? 'cut' : { type: 'jxl', mime: 'image/jxl', ...jxl };
  const tiff = tiffLayout(bytes);
  if (tiff === 'cut') return 'cut';
  if (tiff !== null) return { type: 'tiff', mime: 'image/tiff', width: tiff.width, height: tiff.height };
  const opening = ascii(bytes, 0, Math.min(bytes.length, 1024)).toLowerCase();
  return /<svg[\s>]|<!doctype svg/.test(opening) ? 'svg' : null;
}

/** A JPEG's size stands in its frame header (SOF0 to SOF15 without DHT, JPG and DAC). Source: ITU-T T.81, table B.1. */
function jpegSize(view: DataView): ImageHeader | 'cut' {
  for (const { marker, at } of jpegSegments(view)) {
    const isFrame = marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
    if (isFrame) {
      return { type: 'jpeg', mime: 'image/jpeg', width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    }
  }
  return 'cut';
}

/** Source: RFC 9649 (WebP), sections 2.5 to 2.7. */
function webpSize(bytes: Uint8Array, view: DataView): ImageHeader | 'cut' {
  if (bytes.length < 30) return 'cut';
  const chunk = ascii(bytes, 12, 4);
  const webp = (width: number, height: number): ImageHeader => ({ type: 'webp', mime: 'image/webp', width, height });
  const threeBytes = (at: number): number => view.getUint16(at, true) + (view.getUint8(at + 2) << 16);
  if (chunk === 'VP8X') return webp(threeBytes(24) + 1, threeBytes(27) + 1);
  if (chunk === 'VP8L') {
    const packed = view.getUint32(21, true);
    return webp((packed & 0x3fff) + 1, ((packed >>> 14) & 0x3fff) + 1);
  }
  if (chunk === 'VP8 ') return webp(view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff);
  return 'cut';
}

/**
 * Two letters are little to know a file by, so the length of the second header has to be one that there is; null when
 * it is none. A negative height says that the rows run downwards. Source: Microsoft's "Bitmap Storage" and the structures
 * BITMAPCOREHEADER to BITMAPV5HEADER (from memory).
 */
function bmpSize(bytes: Uint8Array, view: DataView): ImageHeader | 'cut' | null {
  if (bytes.length < 26) return 'cut';
  const headerLength = view.getUint32(14, true);
  const bmp = (width: number, height: number): ImageHeader => ({ type: 'bmp', mime: 'image/bmp', width, height });
  if (headerLength === 12) return bmp(view.getUint16(18, true), view.getUint16(20, true));
  if (![40, 52, 56, 64, 108, 124].includes(headerLength)) return null;
  return bmp(view.getInt32(18, true), Math.abs(view.getInt32(22, true)));
}

const starts = (bytes: Uint8Array, start: number[]): boolean => start.every((byte, at) => bytes[at] === byte);
