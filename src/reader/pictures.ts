import { toBase64 } from '../message/bytes';
import type { Quad } from '../photo/types';

const thumbnailSide = 240;
/** The largest picture of a line: as wide as panels are drawn, and half as wide again as the narrowest. */
export const lineSize = { width: 480, height: 140 };
/** Leather around the line, as a share of its height: the eye needs it to judge the stamp. */
export const lineMargin = 0.45;

/** As WebP. At this a stamp's grain and edges stay; own look at twice the size, no source. */
export const pictureQuality = 0.45;

/** A small picture of the whole photo, as a data address. */
export function drawThumbnail(photo: OffscreenCanvas): Promise<string> {
  const shrink = Math.min(1, thumbnailSide / Math.max(photo.width, photo.height));
  const small = new OffscreenCanvas(Math.max(1, photo.width * shrink), Math.max(1, photo.height * shrink));
  const pen = small.getContext('2d');
  if (pen) {
    pen.imageSmoothingQuality = 'high';
    pen.drawImage(photo, 0, 0, small.width, small.height);
  }
  return asDataAddress(small);
}

/** One line of a photo, turned upright, as a data address. */
export function drawLine(photo: OffscreenCanvas, [topLeft, topRight, , bottomLeft]: Quad): Promise<string> {
  const length = Math.hypot(topRight.x - topLeft.x, topRight.y - topLeft.y);
  const height = Math.hypot(bottomLeft.x - topLeft.x, bottomLeft.y - topLeft.y);
  const edge = height * lineMargin;
  const scale = Math.min(lineSize.width / (length + 2 * edge), lineSize.height / (height + 2 * edge), 3);
  const cut = new OffscreenCanvas(
    Math.max(1, Math.round((length + 2 * edge) * scale)),
    Math.max(1, Math.round((height + 2 * edge) * scale)),
  );
  const pen = cut.getContext('2d');
  if (pen) {
    pen.imageSmoothingQuality = 'high';
    pen.scale(scale, scale);
    pen.translate(edge, edge);
    pen.rotate(-Math.atan2(topRight.y - topLeft.y, topRight.x - topLeft.x));
    pen.translate(-topLeft.x, -topLeft.y);
    pen.drawImage(photo, 0, 0);
  }
  return asDataAddress(cut);
}

/** Plain pixels on a canvas, to draw from. */
export function toCanvas(image: ImageData): OffscreenCanvas {
  const canvas = new OffscreenCanvas(image.width, image.height);
  canvas.getContext('2d')?.putImageData(image, 0, 0);
  return canvas;
}

/** WebP: two fifths smaller than JPEG at the same quality, and what is kept of a case is mostly pictures. */
async function asDataAddress(canvas: OffscreenCanvas): Promise<string> {
  const blob = await canvas.convertToBlob({ type: 'image/webp', quality: pictureQuality });
  releaseCanvas(canvas);
  // A browser that cannot write it gives PNG.
  return `data:${blob.type};base64,${toBase64(new Uint8Array(await blob.arrayBuffer()))}`;
}

/** Gives a canvas's pixels back at once, as `release` does an array's; it has none afterwards. */
export function releaseCanvas(canvas: OffscreenCanvas): void {
  canvas.width = 0;
  canvas.height = 0;
}

/**
 * Gives back at once the pixels that a canvas gave. `release` does not do: the browser itself holds on to these, and gives
 * up only what is handed over. Nobody takes the message from the port.
 */
export function releaseImage({ data }: ImageData): void {
  const { port1, port2 } = new MessageChannel();
  port1.postMessage(null, [data.buffer]);
  port1.close();
  port2.close();
}
