import { foreignFormat, howToSendJpeg, maxPixels } from '../../photo';
import { fail, type Problem, type Result, succeed } from '../../problem';
import { inspectBytes } from './inspect-bytes';
import { releaseCanvas } from './pictures';

/** Largest picture that is read as it is: above it the browser scales while decoding. */
const readPixels = 12_000_000;
const leastSide = 24;

/**
 * Bytes → upright pixels (orientation applied), at most `mostPixels` of them. Every failure says what the file was.
 */
export async function decodePhoto(
  photoId: string,
  bytes: Uint8Array<ArrayBuffer>,
  mostPixels: number = readPixels,
): Promise<Result<ImageData>> {
  const header = inspectBytes(bytes);
  if (!header) {
    const foreign = foreignFormat(bytes);
    if (foreign === null) return fail(problem(photoId, 'not-a-photo', 'the file is not a picture that can be read'));
    const what = `it is ${foreign.words}, which is not read here`;
    return fail({ ...problem(photoId, 'foreign-format', what), remedy: howToSendJpeg });
  }
  const { size, format } = header;
  if (size && size.width * size.height > maxPixels) {
    return fail(problem(photoId, 'photo-too-large', `it has ${size.width} × ${size.height} pixels`));
  }
  let bitmap: ImageBitmap;
  try {
    const blob = new Blob([bytes], { type: `image/${format}` });
    bitmap = await createImageBitmap(blob, { imageOrientation: 'from-image', ...scaleTo(size, mostPixels) });
  } catch {
    return fail(problem(photoId, 'photo-damaged', 'the file is damaged or cut off'));
  }
  try {
    if (Math.min(bitmap.width, bitmap.height) < leastSide) {
      return fail(problem(photoId, 'photo-too-small', `it is only ${bitmap.width} × ${bitmap.height} pixels`));
    }
    const shrink = Math.min(1, Math.sqrt(mostPixels / (bitmap.width * bitmap.height)));
    const [width, height] = [Math.round(bitmap.width * shrink), Math.round(bitmap.height * shrink)];
    const canvas = new OffscreenCanvas(width, height);
    const pen = canvas.getContext('2d', { willReadFrequently: true });
    if (!pen) return fail(problem(photoId, 'no-canvas', 'the browser gave no canvas'));
    // Transparent parts would read as black; a photo's paper is white.
    pen.fillStyle = '#fff';
    pen.fillRect(0, 0, width, height);
    pen.drawImage(bitmap, 0, 0, width, height);
    // Before the pixels are taken: the photo in three copies would be the most that reading it needs.
    bitmap.close();
    const image = pen.getImageData(0, 0, width, height);
    releaseCanvas(canvas);
    return succeed(image);
  } finally {
    bitmap.close();
  }
}

function scaleTo(size: { width: number; height: number } | null, mostPixels: number): ImageBitmapOptions {
  if (!size || size.width * size.height <= mostPixels) return {};
  const shrink = Math.sqrt(mostPixels / (size.width * size.height));
  // Only the width: the height follows, and a picture that lies on its side keeps its shape.
  return { resizeWidth: Math.max(1, Math.round(size.width * shrink)), resizeQuality: 'high' };
}

const problem = (photoId: string, code: string, what: string): Problem => ({
  code,
  where: `photo ${photoId}`,
  what,
  remedy: 'Ask the seller for the photo again, or type the code by hand.',
});
