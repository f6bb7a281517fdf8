import { readFile, stat } from 'node:fs/promises';
import sharp from 'sharp';
import { maxPixels, type PixelImage, readImageHeader } from '../photo';
import { fail, type Result, succeed } from '../problem';

/** A decoded photo, and the factor from its pixels to the file's own. */
export interface PhotoFile {
  image: PixelImage;
  scale: number;
}

/** Files larger than this are no photo of a listing. */
const mostBytes = 60_000_000;
/** Longest side that is decoded to; larger photos are shrunk while decoding. */
const longestSide = 3000;

/** Photo file → upright sRGB pixels on white; the first picture of an animation. Never throws. */
export async function openPhotoFile(path: string): Promise<Result<PhotoFile>> {
  let bytes: Buffer;
  try {
    const { size } = await stat(path);
    if (size > mostBytes)
      return refuse('photo-too-large', path, `The file has ${size} bytes; at most ${mostBytes} are read.`);
    bytes = await readFile(path);
  } catch (error) {
    const missing = (error as NodeJS.ErrnoException).code === 'ENOENT';
    return refuse('photo-missing', path, missing ? 'There is no file of this name.' : 'The file cannot be read.');
  }
  return decodePhoto(bytes, path);
}

/** Photo bytes → upright sRGB pixels; `where` names the photo in problems. */
export async function decodePhoto(bytes: Uint8Array, where: string): Promise<Result<PhotoFile>> {
  const header = readImageHeader(bytes, where);
  if (!header.ok) return header;
  const { width, height } = header.value;
  const longest = Math.max(width, height);
  const shrink = Math.min(1, longestSide / longest);
  try {
    const input = sharp(bytes, { failOn: 'truncated', limitInputPixels: maxPixels, pages: 1 });
    const resized =
      shrink < 1 ? input.rotate().resize({ width: longestSide, height: longestSide, fit: 'inside' }) : input.rotate();
    const { data, info } = await resized
      .toColourspace('srgb')
      .flatten({ background: '#ffffff' })
      .ensureAlpha()
      .raw({ depth: 'uchar' })
      .toBuffer({ resolveWithObject: true });
    const image = { width: info.width, height: info.height, data: new Uint8ClampedArray(data) };
    return succeed({ image, scale: longest / Math.max(info.width, info.height) });
  } catch {
    return refuse('photo-damaged', where, 'The photo is damaged or cut off: it could not be decoded to its end.');
  }
}

const refuse = (code: string, where: string, what: string): Result<never> =>
  fail({ code, where, what, remedy: 'Save the photo again and give its file.' });
