import { readImageHeader } from '../../photo';
import { decodePhoto } from '../../reader/decode-photo';
import { releaseCanvas, toCanvas } from '../../reader/pictures';

/** A TIFF begins with one of these. Source: TIFF 6.0, section 2. */
const openings = ['II*\0', 'MM\0*'];
/** More pixels than a screen shows at once, and what is measured is measured in the file itself. */
const mostPixels = 12_000_000;

/** A photo as browsers show it: TIFF, which they read nothing of, is drawn anew in its own size; null for all others. */
export async function drawnAnew(photo: Blob): Promise<Blob | null> {
  if (!openings.includes(await photo.slice(0, 4).text())) return null;
  const bytes = new Uint8Array(await photo.arrayBuffer());
  const header = readImageHeader(bytes, 'photo');
  const image = header.ok ? await decodePhoto(bytes, header.value, mostPixels) : null;
  if (image === null) return null;
  const canvas = toCanvas(image);
  const drawn = await canvas.convertToBlob();
  releaseCanvas(canvas);
  return drawn;
}
