import { type PixelImage, resizePixels, sizeWithin } from '../photo';
import type { PrintLine, PrintReader } from './engines';

/** Longest side in which ordinary print is looked for: labels are read at this size, leather costs less time. */
const pageSide = 1000;

/** Ordinary print of a photo (labels, tags, origin wording), line by line; what the engine does not trust is left out. */
export async function readPrinted(photo: PixelImage, print: PrintReader): Promise<string[]> {
  const { width, height } = sizeWithin(photo.width, photo.height, pageSide);
  const page = width === photo.width ? photo : resizePixels(photo, width, height);
  return (await print.read(page, 'page')).map(trustedText).filter((text) => text !== '');
}

/** The words of a line that the engine trusts; single signs count only between words. */
function trustedText(line: PrintLine): string {
  const words = line.words.filter(({ text, confidence }) => confidence >= 0.6 && /[\p{L}\p{N}]/u.test(text));
  const letters = words.reduce((sum, word) => sum + (word.text.match(/[\p{L}\p{N}]/gu)?.length ?? 0), 0);
  return letters >= 3 ? words.map((word) => word.text).join(' ') : '';
}
