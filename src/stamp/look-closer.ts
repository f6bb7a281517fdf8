import { cropGrey, type GreyImage, type Quad, release } from '../photo';
import type { FoundLine, StampNets } from './engines';
import { isSameLine } from './find/find-lines';

/** Longest side, pixels, up to which the finder's small picture loses no stamp that could be read. */
const wholeUpTo = 1500;
/** Quarters reach a little into each other, so that no line is cut through by all of them. */
const overlap = 0.12;

/**
 * A second look at a large photo in which the first found no code: its four quarters, each in the finder's own size,
 * in which characters are about twice as large. Lines already known are left out; best first.
 */
export async function lookCloser(
  photo: GreyImage,
  nets: StampNets,
  known: readonly { quad: Quad }[],
): Promise<FoundLine[]> {
  const { width, height } = photo;
  if (Math.max(width, height) <= wholeUpTo) return [];
  const found: FoundLine[] = [];
  const isNew = ({ quad }: FoundLine): boolean => ![...known, ...found].some((other) => isSameLine(other.quad, quad));
  for (const [across, down] of [
    [0, 0],
    [1, 0],
    [0, 1],
    [1, 1],
  ] as const) {
    const left = Math.floor(across * width * (0.5 - overlap / 2));
    const top = Math.floor(down * height * (0.5 - overlap / 2));
    const right = Math.ceil(width * (0.5 + overlap / 2)) + left;
    const bottom = Math.ceil(height * (0.5 + overlap / 2)) + top;
    const quarter = cropGrey(photo, left, top, Math.min(width, right), Math.min(height, bottom));
    const lines = await nets.findLines(quarter);
    release(quarter.data);
    for (const line of lines) {
      const quad = line.quad.map(({ x, y }) => ({ x: x + left, y: y + top })) as Quad;
      if (isNew({ ...line, quad })) found.push({ ...line, quad });
    }
  }
  return found.sort((a, b) => b.stampScore - a.stampScore);
}
