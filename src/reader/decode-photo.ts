import { type ImageHeader, type PartOfFile, shareWithin } from '../photo';
import { releaseCanvas } from './pictures';

/** Decodes with the browser's own decoders (`DecodePhoto`), turned as the file says. */
export async function decodePhoto(
  bytes: Uint8Array<ArrayBuffer>,
  { mime, width, height }: ImageHeader,
  mostPixels: number,
): Promise<ImageData | null> {
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
  { mime }: ImageHeader,
  parts: readonly PartOfFile[],
): Promise<(ImageData | null)[]> {
  const cut = await withBitmap(bytes, { type: mime }, (bitmap) =>
    parts.map(({ x0: left, y0: top, x1, y1 }) => {
      const [width, height] = [Math.min(bitmap.width, x1) - left, Math.min(bitmap.height, y1) - top];
      return width < 1 || height < 1 ? null : pixelsOf(bitmap, { left, top, width, height }, { width, height });
    }),
  );
  return cut ?? parts.map(() => null);
}

/** What is made of a decoded photo, which is given up then; null where it cannot be decoded. */
async function withBitmap<Made>(
  bytes: Uint8Array<ArrayBuffer>,
  { type, ...size }: { type: string } & ImageBitmapOptions,
  make: (bitmap: ImageBitmap) => Made,
): Promise<Made | null> {
  const blob = new Blob([bytes], { type });
  const bitmap = await createImageBitmap(blob, { imageOrientation: 'from-image', ...size }).catch(() => null);
  if (bitmap === null) return null;
  try {
    return make(bitmap);
  } finally {
    bitmap.close();
  }
}

function drawn(bitmap: ImageBitmap, mostPixels: number): ImageData {
  const share = shareWithin(bitmap.width, bitmap.height, mostPixels);
  const [width, height] = [bitmap.width, bitmap.height].map((side) => Math.max(1, Math.round(side * share))) as [
    number,
    number,
  ];
  const whole = { left: 0, top: 0, width: bitmap.width, height: bitmap.height };
  // Given up before the pixels are taken: the photo in three copies would be the most that reading it needs.
  return pixelsOf(bitmap, whole, { width, height }, () => bitmap.close());
}

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
