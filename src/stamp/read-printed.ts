import {
  type GreyImage,
  type PixelImage,
  pixelsOf,
  type Quad,
  release,
  resizePixels,
  sizeWithin,
  stretch,
} from '../photo';
import { cropLine, growQuad } from './crop';
import type { PrintLine, PrintReader } from './engines';

/** Longest side in which a page of print is read: labels are legible at this size, and leather costs less time. */
const pageSide = 1000;

/** How a line is cut out for a general engine: the ground beside and above it, in its heights, and the crop's height in pixels. */
export interface PrintView {
  beside: number;
  above: number;
  height: number;
}
/** The view that such an engine reads best. */
export const bestView: PrintView = { beside: 0.4, above: 0.25, height: 56 };

/**
 * A whole photo as a page of print: labels, tags. It takes seconds on grained leather, so it is asked for only when
 * single lines already gave words.
 */
export async function readPage(photo: PixelImage, print: PrintReader): Promise<string[]> {
  const { width, height } = sizeWithin(photo.width, photo.height, pageSide);
  const page = width === photo.width ? photo : resizePixels(photo, width, height);
  const lines = await print.read(page, 'page');
  if (page !== photo) release(page.data);
  return lines.map(trustedText).filter((text) => text !== '');
}

/** Ordinary print of one line, empty when the engine does not trust it. */
export async function readPrintedLine(grey: GreyImage, quad: Quad, print: PrintReader): Promise<string> {
  return trustedOf(await readView(grey, quad, print, bestView));
}

/** All that the engine reads of a line in one view of it, trusted or not. */
export async function readView(
  grey: GreyImage,
  quad: Quad,
  print: PrintReader,
  { beside, above, height }: PrintView,
): Promise<PrintLine[]> {
  const crop = cropLine(grey, growQuad(quad, beside, above), height);
  return crop === null ? [] : print.read(pixelsOf(stretch(crop)), 'line');
}

/** The trusted words of lines that are one. */
export const trustedOf = (lines: readonly PrintLine[]): string => lines.map(trustedText).join(' ').trim();

/** The words of a line that the engine trusts; single signs count only between words. */
export function trustedText(line: PrintLine): string {
  const words = line.words.filter(({ text, confidence }) => confidence >= 0.6 && /[\p{L}\p{N}]/u.test(text));
  const letters = words.reduce((sum, word) => sum + (word.text.match(/[\p{L}\p{N}]/gu)?.length ?? 0), 0);
  return letters >= 3 ? words.map((word) => word.text).join(' ') : '';
}

/** Lines without those that another one holds. */
export function withoutRepeats(lines: readonly string[]): string[] {
  const kept: string[] = [];
  for (const line of [...lines].sort((a, b) => b.length - a.length)) {
    if (line !== '' && !kept.some((other) => other.includes(line))) kept.push(line);
  }
  return lines.filter((line, at) => kept.includes(line) && lines.indexOf(line) === at);
}
