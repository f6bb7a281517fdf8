import { type ImageHeader, shareWithin } from '../photo';
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
  const blob = new Blob([bytes], { type: mime });
  const bitmap = await createImageBitmap(blob, { imageOrientation: 'from-image', ...scaled }).catch(() => null);
  if (bitmap === null) return null;
  try {
    return drawn(bitmap, mostPixels);
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
  const canvas = new OffscreenCanvas(width, height);
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  if (!pen) throw new Error('the browser gave no canvas');
  // Transparent parts would read as black; a photo's paper is white.
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, width, height);
  pen.drawImage(bitmap, 0, 0, width, height);
  // Before the pixels are taken: the photo in three copies would be the most that reading it needs.
  bitmap.close();
  const image = pen.getImageData(0, 0, width, height);
  releaseCanvas(canvas);
  return image;
}
