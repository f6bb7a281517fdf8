import {
  cutTiff,
  decodeHeic,
  decodeTiff,
  type ImageHeader,
  type PartOfFile,
  type PixelImage,
  shareWithin,
} from '../photo';
import { openHeif } from './heif';
import { inflate } from './inflate';
import { releaseCanvas } from './pictures';

/** Decodes with the browser's own decoders (`DecodePhoto`), and those of the extension where browsers have none (HEIC, TIFF); turned as the file says. */
export async function decodePhoto(
  bytes: Uint8Array<ArrayBuffer>,
  { type, mime, width, height }: ImageHeader,
  mostPixels: number,
): Promise<ImageData | null> {
  if (type === 'tiff') return imageData(await decodeTiff(bytes, mostPixels, tiffPorts));
  const share = shareWithin(width, height, mostPixels);
  // Only the width: the height follows, and a picture that lies on its side keeps its shape.
  const scaled: ImageBitmapOptions =
    share < 1 ? { resizeWidth: Math.max(1, Math.round(width * share)), resizeQuality: 'high' } : {};
  return withBitmap(bytes, { type: mime, ...scaled }, (bitmap) => drawn(bitmap, mostPixels));
}

/**
 * Parts with the browser's own decoders (`CutPhoto`). No browser decodes a part alone: the whole is decoded once more, as
 * large as when it was opened, and given up again before a part is looked at.
 */
export async function cutPhoto(
  bytes: Uint8Array<ArrayBuffer>,
  { type, mime }: ImageHeader,
  parts: readonly PartOfFile[],
): Promise<(ImageData | null)[]> {
  if (type === 'tiff') return (await cutTiff(bytes, parts, tiffPorts)).map(imageData);
  const cut = await withBitmap(bytes, { type: mime }, (bitmap) =>
    parts.map(({ x0: left, y0: top, x1, y1 }) => {
      const [width, height] = [Math.min(bitmap.width, x1) - left, Math.min(bitmap.height, y1) - top];
      return width < 1 || height < 1 ? null : pixelsOf(bitmap, { left, top, width, height }, { width, height });
    }),
  );
  return cut ?? parts.map(() => null);
}

/** How the pieces of a TIFF are unpacked here. */
const tiffPorts = {
  inflate,
  jpeg: (file: Uint8Array<ArrayBuffer>) => withBitmap(file, { type: 'image/jpeg' }, pixelsOfWhole),
};

const imageData = (image: PixelImage | null): ImageData | null =>
  image && new ImageData(image.data as Uint8ClampedArray<ArrayBuffer>, image.width, image.height);

/** What is made of a decoded photo, which is given up then; null where it cannot be decoded. */
async function withBitmap<Made>(
  bytes: Uint8Array<ArrayBuffer>,
  { type, ...size }: { type: string } & ImageBitmapOptions,
  make: (bitmap: ImageBitmap) => Made,
): Promise<Made | null> {
  const picture = type === 'image/heic' ? await heicPixels(bytes) : new Blob([bytes], { type });
  if (picture === null) return null;
  const bitmap = await createImageBitmap(picture, { imageOrientation: 'from-image', ...size }).catch(() => null);
  if (bitmap === null) return null;
  try {
    return make(bitmap);
  } finally {
    bitmap.close();
  }
}

async function heicPixels(bytes: Uint8Array): Promise<ImageData | null> {
  try {
    return imageData(await decodeHeic(bytes, await openHeif()));
  } catch (error) {
    console.error('[tellstamp] HEIC not decoded', error);
    return null;
  }
}

function drawn(bitmap: ImageBitmap, mostPixels: number): ImageData {
  const share = shareWithin(bitmap.width, bitmap.height, mostPixels);
  const [width, height] = [bitmap.width, bitmap.height].map((side) => Math.max(1, Math.round(side * share))) as [
    number,
    number,
  ];
  const whole = wholeOf(bitmap);
  // Given up before the pixels are taken: the photo in three copies would be the most that reading it needs.
  return pixelsOf(bitmap, whole, { width, height }, () => bitmap.close());
}

const wholeOf = ({ width, height }: ImageBitmap) => ({ left: 0, top: 0, width, height });

const pixelsOfWhole = (bitmap: ImageBitmap): ImageData => pixelsOf(bitmap, wholeOf(bitmap), wholeOf(bitmap));

/** A part of a bitmap, drawn in a size; `onDrawn` is called before its pixels are taken. */
function pixelsOf(
  bitmap: ImageBitmap,
  from: { left: number; top: number; width: number; height: number },
  { width, height }: { width: number; height: number },
  onDrawn = () => {},
): ImageData {
  const canvas = new OffscreenCanvas(width, height);
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  if (!pen) throw new Error('the browser gave no canvas');
  // Transparent parts would read as black; a photo's paper is white.
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, width, height);
  pen.drawImage(bitmap, from.left, from.top, from.width, from.height, 0, 0, width, height);
  onDrawn();
  const image = pen.getImageData(0, 0, width, height);
  releaseCanvas(canvas);
  return image;
}
