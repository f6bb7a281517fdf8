import { readFile, stat } from 'node:fs/promises';
import { decode as decodeBmp } from 'bmp-ts';
import sharp from 'sharp';
import { type ImageHeader, maxPixels, type OpenedPhoto, openPhoto, type PixelImage, shareWithin } from '../photo';
import { fail, type Result } from '../problem';

/** Files larger than this are no photo of a listing. */
const mostBytes = 60_000_000;

/** Photo file → upright sRGB pixels on white; the first picture of an animation. Never throws. */
export async function openPhotoFile(path: string): Promise<Result<OpenedPhoto>> {
  let bytes: Buffer<ArrayBuffer>;
  try {
    const { size } = await stat(path);
    if (size > mostBytes)
      return refuse('photo-too-large', path, `The file has ${size} bytes; at most ${mostBytes} are read.`);
    bytes = await readFile(path);
  } catch (error) {
    const missing = (error as NodeJS.ErrnoException).code === 'ENOENT';
    return refuse('photo-missing', path, missing ? 'There is no file of this name.' : 'The file cannot be read.');
  }
  return openPhoto(bytes, path, decodePhoto);
}

/** Decodes with libraries (`DecodePhoto`), as the browser does in the extension. */
export async function decodePhoto(
  bytes: Uint8Array<ArrayBuffer>,
  header: ImageHeader,
  mostPixels: number,
): Promise<PixelImage | null> {
  const share = shareWithin(header.width, header.height, mostPixels);
  const side = Math.max(1, Math.round(Math.max(header.width, header.height) * share));
  try {
    const input = header.type === 'bmp' ? bitmap(bytes) : sharp(bytes, { ...limits, failOn: 'truncated', pages: 1 });
    const turned = input.rotate();
    const resized = share < 1 ? turned.resize({ width: side, height: side, fit: 'inside' }) : turned;
    const { data, info } = await resized
      .toColourspace('srgb')
      .flatten({ background: '#ffffff' })
      .ensureAlpha()
      .raw({ depth: 'uchar' })
      .toBuffer({ resolveWithObject: true });
    return { width: info.width, height: info.height, data: new Uint8ClampedArray(data) };
  } catch {
    return null;
  }
}

const limits = { limitInputPixels: maxPixels } as const;

/** The image library knows no BMP. Its fourth channel counts for nothing, as in browsers: it is mostly left empty. */
function bitmap(bytes: Uint8Array): ReturnType<typeof sharp> {
  const { width, height, data } = decodeBmp(Buffer.from(bytes), { toRGBA: true });
  for (let alpha = 3; alpha < data.length; alpha += 4) data[alpha] = 255;
  return sharp(data, { ...limits, raw: { width, height: Math.abs(height), channels: 4 } });
}

const refuse = (code: string, where: string, what: string): Result<never> =>
  fail({ code, where, what, remedy: 'Save the photo again and give its file.' });
