import { readImageHeader } from '../../photo';
import { decodePhoto } from '../../reader/decode-photo';
import { releaseCanvas, toCanvas } from '../../reader/pictures';

/** How files begin that browsers show nothing of, TIFF and HEIC, and AVIF, which they do show. Source: TIFF 6.0, ISO/IEC 14496-12. */
const openings = /^(?:II\*\0|MM\0\*|[\s\S]{4}ftyp)/;
/** More pixels than a screen shows at once, and what is measured is measured in the file itself. */
const mostPixels = 12_000_000;

/** A photo as browsers show it: TIFF and HEIC, which they read nothing of, drawn anew; null for all others. */
export async function drawnAnew(photo: Blob): Promise<Blob | null> {
  if (!openings.test(await photo.slice(0, 8).text())) return null;
  const bytes = new Uint8Array(await photo.arrayBuffer());
  const header = readImageHeader(bytes, 'photo');
  if (!header.ok || (header.value.type !== 'tiff' && header.value.type !== 'heic')) return null;
  const image = await decodePhoto(bytes, header.value, mostPixels);
  if (image === null) return null;
  const canvas = toCanvas(image);
  const drawn = await canvas.convertToBlob();
  releaseCanvas(canvas);
  return drawn;
}
