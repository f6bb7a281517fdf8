import '../page/plain-validation';
import { greyOf, openPhoto, pixelsOf, reliefOf } from '../../photo';
import { fail, problem, reported, succeed } from '../../problem';
import { decodePhoto } from '../decode-photo';
import type { ReliefAnswer, ReliefRequest } from '.';

/** More is not seen on a screen, and takes memory for nothing. */
const mostPixels = 4_000_000;

self.addEventListener('message', async ({ data }: MessageEvent<ReliefRequest>) => {
  const answer: ReliefAnswer = await drawn(data).catch((error: unknown) =>
    fail(problem('measuring-failed', 'photo', reported(error))),
  );
  self.postMessage(answer);
});

async function drawn({ bytes, side }: ReliefRequest): Promise<ReliefAnswer> {
  const opened = await openPhoto(new Uint8Array(bytes), 'photo', decodePhoto, mostPixels);
  if (!opened.ok) return opened;
  const { width, height, data } = pixelsOf(reliefOf(greyOf(opened.value.image), side));
  const canvas = new OffscreenCanvas(width, height);
  canvas.getContext('2d')?.putImageData(new ImageData(new Uint8ClampedArray(data), width, height), 0, 0);
  return succeed(await canvas.convertToBlob({ type: 'image/webp', quality: 0.9 }));
}
