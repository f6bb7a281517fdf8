import {
  type FileOfPhoto,
  type GreyImage,
  leastSide,
  observed,
  type PhotoReader,
  type PixelImage,
  type Point,
  type Quad,
  type ReadingCopy,
  readingCopy,
  tooSmall,
} from '../photo';
import { fail, type Problem, problem, reported, succeed } from '../problem';
import type { Box, PrintReader, StampEngines } from './engines';
import type { FullSize } from './look-full-size';
import { startedPrint } from './print/when-needed';
import { readPage, withoutRepeats } from './read-printed';
import { readWithNets } from './read-with-nets';
import { readWithPrint } from './read-with-print';
import { shorten } from './shorten';
import { observedLine, type StampLine } from './types';

/** The text in one photo: stamped lines, the best first, and ordinary print (labels, tags) line by line. */
export type StampReading =
  | { state: 'read'; photoId: string; lines: StampLine[]; printed: string[] }
  | { state: 'unread'; photoId: string; problem: Problem };

/**
 * Reads one photo: stamped lines with their lattices, best first, and ordinary print. Quads are in pixels of the
 * photo given; `file` is the way to more of its pixels than were opened. Without any engine, or with one that fails, the photo is unread, never empty.
 */
export async function readStamp(
  photo: PixelImage,
  photoId: string,
  engines: StampEngines,
  given?: ReadingCopy,
  file?: FileOfPhoto,
): Promise<StampReading> {
  const { width, height } = photo;
  const where = `photo ${photoId}`;
  const unread = (why: Problem): StampReading => ({ state: 'unread', photoId, problem: why });
  if (Math.min(width, height) < leastSide) return unread(tooSmall(where, width, height));
  // Nets need no print reader until they meet print; without them it is all there is.
  const print = engines.net === undefined ? await startedPrint(engines.print) : engines.print;
  if (engines.net === undefined && print === null) return unread(problem('no-stamp-engine', where));
  const copy = given ?? readingCopy(photo);
  try {
    const full = file === undefined ? null : fullSizeOf(file, copy);
    const { lines, printed } = await readLines(copy.small, copy.grey, photoId, { ...engines, print }, full);
    return {
      state: 'read',
      photoId,
      lines: lines.map((line) => ({ ...line, quad: scaleQuad(line.quad, copy.across, copy.down) })),
      printed: withoutRepeats(printed),
    };
  } catch (error) {
    return unread(problem('stamp-engine-failed', where, reported(error)));
  } finally {
    if (copy !== given) copy.letGo();
  }
}

/** A picture to be read in place of the photo, and how its points lie in the photo: a part of it, turned or inverted. */
export interface PartToRead {
  image: PixelImage;
  toWhole: (point: Point) => Point;
}

/** Parts of the file in pixels of the copy that is read; nothing where the file has no more of them. */
function fullSizeOf({ scale, cut }: FileOfPhoto, { across, down }: ReadingCopy): FullSize | null {
  if (cut === undefined) return null;
  const [x, y] = [across * scale, down * scale];
  const inFile = ({ x0, y0, x1, y1 }: Box): Box => ({ x0: x0 * x, y0: y0 * y, x1: x1 * x, y1: y1 * y });
  return { factor: Math.min(x, y), cut: (parts) => cut(parts.map(inFile)) };
}

/** The stamp's reader among those of a photo. */
export const stampReader =
  (engines: StampEngines, part?: PartToRead): PhotoReader =>
  async ({ photoId, pixels, copy, file }) => {
    const read = part
      ? await readStamp(part.image, photoId, engines)
      : await readStamp(pixels, photoId, engines, copy, file);
    if (read.state === 'unread') return fail(read.problem);
    const lines = part
      ? read.lines.map((line) => ({ ...line, quad: line.quad.map(part.toWhole) as Quad }))
      : read.lines;
    return succeed([
      ...lines.map(shorten).map(observedLine),
      ...read.printed.map((line, at) => observed(photoId, 'print', line, {}, at + 1)),
    ]);
  };

/** Two lines of trusted words are a label, and a label has more lines than were found one by one. */
const linesOfLabel = 2;

async function readLines(
  photo: PixelImage,
  grey: GreyImage,
  photoId: string,
  { print, net }: StampEngines,
  full: FullSize | null,
): Promise<{ lines: StampLine[]; printed: string[] }> {
  const found =
    net !== undefined
      ? await readWithNets(grey, photoId, net, print, full)
      : await readWithPrint(grey, photoId, print as PrintReader);
  const words = found.printed.filter((text) => text !== '');
  const reader = words.length < linesOfLabel ? null : await startedPrint(print);
  if (reader === null) return { ...found, printed: words };
  return { ...found, printed: [...words, ...(await readPage(photo, reader))] };
}

const scaleQuad = (quad: StampLine['quad'], across: number, down: number): Quad =>
  quad.map(({ x, y }) => ({ x: x * across, y: y * down })) as Quad;
