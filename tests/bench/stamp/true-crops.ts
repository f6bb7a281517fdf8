import { openPhotoFile } from '../../../src/cli/photo-file';
import { greyOf, type PixelImage, pixelsOf, type Quad, quadSize, warpQuad } from '../../../src/photo';
import { freeTexts, type StampEngines } from '../../../src/stamp';
import { growQuad } from '../../../src/stamp/crop';
import { bare, share } from './judge';
import type { PlateReader } from './plates';
import type { BenchPhoto, Difficulty } from './rendered';

/** Around the true corners, in shares of the code's height: recognisers expect some ground about a line. */
const beside = 0.25;
const above = 0.2;
/** Recognisers take lines about 48 pixels high; a crop much smaller or larger would test their enlarging. */
const [lowest, highest] = [48, 96];

/** The code's line cut out at its true corners, upright and grey. */
export function trueCrop(photo: PixelImage, quad: Quad): PixelImage | null {
  const grown = growQuad(quad, beside, above);
  const { across, down } = quadSize(grown);
  const height = Math.round(Math.min(highest, Math.max(lowest, down)));
  const line = warpQuad(greyOf(photo), grown, Math.max(8, Math.round((across / down) * height)), height);
  return line === null ? null : pixelsOf(line);
}

/** A reader that is told where the code is. */
export interface CropReader {
  name: string;
  read(photo: PixelImage, quad: Quad): Promise<string>;
}

/** The yardsticks, which are not ours, and our own recogniser without its finder. */
export function cropReaders({ net, print }: StampEngines, general: PlateReader | null): CropReader[] {
  const readers: CropReader[] = [];
  const cropped = async (photo: PixelImage, quad: Quad, read: (line: PixelImage) => Promise<string[]>) => {
    const line = trueCrop(photo, quad);
    return line === null ? '' : (await read(line)).join(' ');
  };
  if (general !== null) {
    readers.push({
      name: 'general recogniser, true crop',
      read: (photo, quad) => cropped(photo, quad, (line) => general.read(line, '')),
    });
  }
  if (print !== null) {
    readers.push({
      name: 'tesseract.js, true crop',
      read: (photo, quad) =>
        cropped(photo, quad, async (line) => (await print.read(line, 'line')).map(({ text }) => text)),
    });
  }
  if (net !== undefined) {
    readers.push({
      name: 'our recogniser, true corners, free',
      read: async (photo, quad) => freeTexts(await net.readLine(greyOf(photo), quad))[0]?.text ?? '',
    });
  }
  return readers;
}

/** What a reader makes of each photo, by file path; photos without corners are left out. */
export async function readTrueCrops(photos: readonly BenchPhoto[], reader: CropReader): Promise<Map<string, string>> {
  const texts = new Map<string, string>();
  for (const { path, quad } of photos) {
    if (!quad) continue;
    const opened = await openPhotoFile(path);
    if (!opened.ok) throw new Error(`${path}: ${opened.problem.code}`);
    texts.set(path, await reader.read(opened.value.image, quad));
  }
  return texts;
}

/** Exact codes, letters and digits only, of readers told where the code is: what each class asks of a reader. */
export async function trueCropTable(
  photos: readonly BenchPhoto[],
  readers: readonly CropReader[],
): Promise<Record<string, string>[]> {
  const rows: Record<string, string>[] = [];
  for (const reader of readers) {
    const texts = await readTrueCrops(photos, reader);
    const exact = (difficulty: Difficulty): string => {
      const own = photos.filter((photo) => photo.difficulty === difficulty && texts.has(photo.path));
      const right = own.filter(({ path, code }) => bare(texts.get(path) ?? '') === bare(code ?? ''));
      return own.length === 0 ? '–' : `${share(right.length, own.length)} of ${own.length}`;
    };
    rows.push({ reader: reader.name, clear: exact('clear'), fair: exact('fair'), hard: exact('hard') });
  }
  return rows;
}
