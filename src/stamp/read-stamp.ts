import {
  backgroundOf,
  differenceHash,
  type GreyImage,
  greyOf,
  isTooWeak,
  leastSide,
  type PixelImage,
  type Quad,
  release,
  resizePixels,
  sizeWithin,
  tooSmall,
} from '../photo';
import type { PrintReader, StampEngines } from './engines';
import { startedPrint } from './print/when-needed';
import { readPage, withoutRepeats } from './read-printed';
import { readWithNets } from './read-with-nets';
import { readWithPrint } from './read-with-print';
import type { PhotoRead, StampLine } from './types';

/** Longest side that is read; a stamp that fills a twentieth of it is still 150 px wide. */
const readSide = 3000;

/**
 * Reads one photo: stamped lines with their lattices, best first, and ordinary print. Quads are in pixels of the
 * photo given. Without any engine, or with one that fails, the photo is unread, never empty.
 */
export async function readStamp(photo: PixelImage, photoId: string, engines: StampEngines): Promise<PhotoRead> {
  const { width, height } = photo;
  const unread = (code: string, what: string, remedy: string): PhotoRead => ({
    state: 'unread',
    photoId,
    problem: { code, where: `photo ${photoId}`, what, remedy },
  });
  if (Math.min(width, height) < leastSide) {
    return { state: 'unread', photoId, problem: tooSmall(`photo ${photoId}`, width, height) };
  }
  // Nets need no print reader until they meet print; without them it is all there is.
  const print = engines.net === undefined ? await startedPrint(engines.print) : engines.print;
  if (engines.net === undefined && print === null) {
    return unread(
      'no-stamp-engine',
      'No text reader could be started, so no photo was looked at.',
      'Type the code by hand.',
    );
  }
  const { width: readWidth, height: readHeight } = sizeWithin(width, height, readSide);
  const small = readWidth === width ? photo : resizePixels(photo, readWidth, readHeight);
  const grey = greyOf(small);
  try {
    const { lines, printed } = await readLines(small, grey, photoId, { ...engines, print });
    return {
      state: 'read',
      photoId,
      width,
      height,
      lines: lines.map((line) => ({ ...line, quad: scaleQuad(line.quad, width / readWidth, height / readHeight) })),
      printed: withoutRepeats(printed),
      hash: differenceHash(grey),
      tooWeak: isTooWeak(grey),
      background: backgroundOf(photo),
    };
  } catch (error) {
    return unread(
      'stamp-engine-failed',
      `The text reader failed on this photo: ${error instanceof Error ? error.message : String(error)}`,
      'Read the photo again, or type the code.',
    );
  } finally {
    release(grey.data);
    if (small !== photo) release(small.data);
  }
}

/** Two lines of trusted words are a label, and a label has more lines than were found one by one. */
const linesOfLabel = 2;

async function readLines(
  photo: PixelImage,
  grey: GreyImage,
  photoId: string,
  { print, net }: StampEngines,
): Promise<{ lines: StampLine[]; printed: string[] }> {
  const found =
    net !== undefined
      ? await readWithNets(grey, photoId, net, print)
      : await readWithPrint(grey, photoId, print as PrintReader);
  const words = found.printed.filter((text) => text !== '');
  const reader = words.length < linesOfLabel ? null : await startedPrint(print);
  if (reader === null) return { ...found, printed: words };
  return { ...found, printed: [...words, ...(await readPage(photo, reader))] };
}

const scaleQuad = (quad: StampLine['quad'], across: number, down: number): Quad =>
  quad.map(({ x, y }) => ({ x: x * across, y: y * down })) as Quad;
