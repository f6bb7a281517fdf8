import '../page/plain-validation';
import { readImageHeader } from '../../photo';
import { decodePhoto } from '../decode-photo';
import { releaseCanvas, toCanvas } from '../pictures';
import type { DrawnAnew } from '.';

/** More pixels than a screen shows at once, and what is measured is measured in the file itself. */
const mostPixels = 12_000_000;

self.addEventListener('message', async ({ data }: MessageEvent<Blob>) => {
  self.postMessage((await drawn(data).catch(() => null)) satisfies DrawnAnew);
});

async function drawn(photo: Blob): Promise<DrawnAnew> {
  const bytes = new Uint8Array(await photo.arrayBuffer());
  const header = readImageHeader(bytes, 'photo');
  if (!header.ok || (header.value.type !== 'tiff' && header.value.type !== 'heic')) return null;
  const image = await decodePhoto(bytes, header.value, mostPixels);
  if (image === null) return null;
  const canvas = toCanvas(image);
  const picture = await canvas.convertToBlob();
  releaseCanvas(canvas);
  return picture;
}
