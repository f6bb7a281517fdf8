import type { PhotoRead } from '../photo';
import { isCutBy, stampLinesOf, withWholeLine } from '../stamp';

/** Left, top, right and bottom of a part of a photo, in shares of its sides. */
type Crop = [left: number, top: number, right: number, bottom: number];

/**
 * The stamped line of a photo that a part cuts, so that what is read there would be no whole code, and the part with all
 * of that line; the line most likely a stamp where there are several. Null where the part cuts none.
 */
export function cutLine(read: PhotoRead, [left, top, right, bottom]: Crop): { text: string; whole: Crop } | null {
  if (read.state === 'unread') return null;
  const photo = { width: read.width, height: read.height };
  const part = { x0: left * photo.width, y0: top * photo.height, x1: right * photo.width, y1: bottom * photo.height };
  const line = stampLinesOf(read)
    .sort((a, b) => b.stampScore - a.stampScore)
    .find(({ quad, free }) => isCutBy(part, { quad, characters: free.text.replace(/\s/g, '').length }, photo));
  if (line === undefined) return null;
  const { x0, y0, x1, y1 } = withWholeLine(part, line.quad, photo);
  return {
    text: line.free.text,
    whole: [x0 / photo.width, y0 / photo.height, x1 / photo.width, y1 / photo.height],
  };
}
