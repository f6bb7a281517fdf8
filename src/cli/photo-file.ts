import { readFile, stat } from 'node:fs/promises';
import { inflateSync } from 'node:zlib';
import { decode as decodeBmp } from 'bmp-ts';
import sharp from 'sharp';
import {
  cutTiff,
  decodeHeic,
  decodeTiff,
  type ImageHeader,
  maxPixels,
  type OpenedPhoto,
  openPhoto,
  type PartOfFile,
  type PixelImage,
  readPixels,
  shareWithin,
} from '../photo';
import { fail, type Result } from '../problem';
import { whyNotOpened } from './file-text';
import { openHeif } from './heif';

/** Files larger than this are no photo of a listing. */
const mostBytes = 60_000_000;

/** Photo file → upright sRGB pixels on white; the first picture of an animation. Never throws. */
export async function openPhotoFile(path: string): Promise<Result<OpenedPhoto>> {
  let bytes: Buffer<ArrayBuffer>;
  try {
    const { size } = await stat(path);
    if (size > mostBytes)
      return refuse('photo-too-large', path, `the file has ${size} bytes; at most ${mostBytes} are read`);
    bytes = await readFile(path);
  } catch (error) {
    return refuse('photo-missing', path, whyNotOpened(error));
  }
  return openPhoto(bytes, path, decodePhoto, readPixels, cutPhoto);
}

/** Decodes with libraries (`DecodePhoto`), as the browser does in the extension. */
export async function decodePhoto(
  bytes: Uint8Array<ArrayBuffer>,
  header: ImageHeader,
  mostPixels: number,
): Promise<PixelImage | null> {
  if (header.type === 'tiff') return decodeTiff(bytes, mostPixels, tiffPorts);
  const share = shareWithin(header.width, header.height, mostPixels);
  const side = Math.max(1, Math.round(Math.max(header.width, header.height) * share));
  try {
    const turned = (await opened(bytes, header)).rotate();
    const resized = share < 1 ? turned.resize({ width: side, height: side, fit: 'inside' }) : turned;
    return await plainPixels(resized);
  } catch {
    return null;
  }
}

async function plainPixels(input: ReturnType<typeof sharp>): Promise<PixelImage> {
  const { data, info } = await input
    .toColourspace('srgb')
    .flatten({ background: '#ffffff' })
    .ensureAlpha()
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data: new Uint8ClampedArray(data) };
}

/** Decodes parts with libraries (`CutPhoto`). */
export const cutPhoto = (
  bytes: Uint8Array<ArrayBuffer>,
  header: ImageHeader,
  parts: readonly PartOfFile[],
): Promise<(PixelImage | null)[]> =>
  header.type === 'tiff'
    ? cutTiff(bytes, parts, tiffPorts)
    : Promise.all(parts.map((part) => cutOne(bytes, header, part).catch(() => null)));

/** More than a piece holds may stand behind it in its stream, but not without end. */
const mostBeyond = 1 << 16;
/** TIFF is read by the program's own decoder here too, so that a photo is read as in the browser. */
const tiffPorts = {
  async inflate(packed: Uint8Array, most: number): Promise<Uint8Array | null> {
    try {
      return inflateSync(packed, { maxOutputLength: most + mostBeyond });
    } catch {
      return null;
    }
  },
  jpeg: (file: Uint8Array) => plainPixels(sharp(file, { ...limits, failOn: 'truncated' })).catch(() => null),
};

async function cutOne(
  bytes: Uint8Array<ArrayBuffer>,
  header: ImageHeader,
  { x0, y0, x1, y1 }: PartOfFile,
): Promise<PixelImage> {
  const input = await opened(bytes, header);
  const { width, height, autoOrient } = await input.metadata();
  const [right, bottom] = [Math.min(x1, autoOrient?.width ?? width), Math.min(y1, autoOrient?.height ?? height)];
  return plainPixels(input.rotate().extract({ left: x0, top: y0, width: right - x0, height: bottom - y0 }));
}

async function opened(bytes: Uint8Array, { type }: ImageHeader): Promise<ReturnType<typeof sharp>> {
  if (type === 'bmp') return bitmap(bytes);
  if (type === 'heic') return heic(bytes);
  return sharp(bytes, { ...limits, failOn: 'truncated', pages: 1 });
}

const limits = { limitInputPixels: maxPixels } as const;

/** The image library comes without HEVC. */
async function heic(bytes: Uint8Array): Promise<ReturnType<typeof sharp>> {
  const image = await decodeHeic(bytes, await openHeif());
  if (image === null) throw new Error('no picture in it');
  return sharp(image.data, { ...limits, raw: { width: image.width, height: image.height, channels: 4 } });
}

/** The image library knows no BMP. Its fourth channel counts for nothing, as in browsers: it is mostly left empty. */
function bitmap(bytes: Uint8Array): ReturnType<typeof sharp> {
  const { width, height, data } = decodeBmp(Buffer.from(bytes), { toRGBA: true });
  for (let alpha = 3; alpha < data.length; alpha += 4) data[alpha] = 255;
  return sharp(data, { ...limits, raw: { width, height: Math.abs(height), channels: 4 } });
}

const refuse = (code: string, where: string, what: string): Result<never> =>
  fail({ code, where, what, remedy: 'Save the photo again and give its file.' });
