import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod';
import { openPhotoFile } from '../../../src/cli/photo-file';
import type { PixelImage, Quad } from '../../../src/photo';
import { quadSchema } from '../../../src/stamp/types';

const listedSchema = z.array(
  z.strictObject({
    file: z.string(),
    /** What the photo's code says; null where it shows none. */
    text: z.string().nullable(),
    /** Other codes that stand in the photo, and other ways to read one that it leaves open: as right as `text`. */
    also: z.array(z.string()).optional(),
    kind: z.string(),
    /** A photo as it was taken, or one already cut down to its line. */
    of: z.enum(['whole', 'crop']),
    /** Set aside by its source before anything was measured or tuned. */
    aside: z.boolean(),
    /** The line's corners where they are known. */
    quad: quadSchema.optional(),
    cut: z.tuple([z.number(), z.number(), z.number(), z.number()]).optional(),
    source: z.string(),
    commit: z.string(),
    path: z.string(),
    licence: z.string(),
  }),
);
export type ListedPhoto = z.infer<typeof listedSchema>[number];

/** A folder of a repository with photographs of one kind. */
const folderSchema = z.strictObject({
  kind: z.string(),
  source: z.string(),
  commit: z.string(),
  licence: z.string(),
  folder: z.string(),
  aside: z.boolean(),
});

/** Where a photo of a folder is to lie, and where it is from. */
const placed = (within: string, folder: string, file: string): Pick<ListedPhoto, 'file' | 'path'> => {
  const path = `${folder}/${file}`;
  return { file: `${within}/${path.replace(/[^\w.]+/g, '-')}`, path };
};

/** Folders whose photographs show surfaces and no code, with those of their files that were drawn by lot. */
const emptiesSchema = z.array(
  folderSchema
    .extend({ files: z.array(z.string()) })
    .transform(({ folder, files, ...all }) =>
      files.map((file): ListedPhoto => ({ ...all, ...placed('empties', folder, file), text: null, of: 'whole' })),
    ),
);

/** Folders whose photographs show codes: by file, what its source says of it, then other codes that stand in it. */
const codesSchema = z.array(
  folderSchema
    .extend({
      of: listedSchema.element.shape.of,
      files: z.record(z.string(), z.tuple([z.string()], z.string())),
    })
    .transform(({ folder, files, source, ...all }) =>
      Object.entries(files).map(([file, [text, ...also]]): ListedPhoto => {
        const within = `codes/${source.replace(/\W+/g, '-')}`;
        return { ...all, source, ...placed(within, folder, file), text, also };
      }),
    ),
);

const listAt = (name: string): unknown => JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8'));

/** Real photographs of public repositories, each with its source and licence; the pictures are not kept here. */
export const listedPhotos = (): ListedPhoto[] => [
  ...listedSchema.parse(listAt('./real-photos.json')),
  ...codesSchema.parse(listAt('./real-codes.json')).flat(),
  ...emptiesSchema.parse(listAt('./real-empties.json')).flat(),
];

/** Those of a kind of codes, or without any, that are at hand in a folder. */
export function photosAtHand(folder: string): (ListedPhoto & { at: string })[] {
  return listedPhotos()
    .map((photo) => ({ ...photo, at: join(folder, photo.file) }))
    .filter(({ at }) => existsSync(at));
}

/** Null where the product refuses the photo, as it does one that is too small. */
export async function pixels(path: string): Promise<PixelImage | null> {
  const opened = await openPhotoFile(path);
  if (opened.ok) return opened.value.image;
  if (opened.problem.code === 'photo-too-small') return null;
  throw new Error(`${path}: ${opened.problem.code}`);
}

/** A photo turned clockwise about its middle, on a ground of its own edge's mean colour, nothing cut off. */
export function turnedPhoto(image: PixelImage, degrees: number): PixelImage {
  const angle = (degrees * Math.PI) / 180;
  const [cosine, sine] = [Math.round(Math.cos(angle) * 1e9) / 1e9, Math.round(Math.sin(angle) * 1e9) / 1e9];
  const width = Math.ceil(Math.abs(image.width * cosine) + Math.abs(image.height * sine));
  const height = Math.ceil(Math.abs(image.width * sine) + Math.abs(image.height * cosine));
  const data = new Uint8ClampedArray(width * height * 4);
  const ground = edgeColour(image);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [u, v] = [x + 0.5 - width / 2, y + 0.5 - height / 2];
      const fromX = u * cosine + v * sine + image.width / 2 - 0.5;
      const fromY = -u * sine + v * cosine + image.height / 2 - 0.5;
      const at = (y * width + x) * 4;
      const inside = fromX > -0.5 && fromY > -0.5 && fromX < image.width - 0.5 && fromY < image.height - 0.5;
      for (let channel = 0; channel < 3; channel++) {
        data[at + channel] = inside ? between(image, fromX, fromY, channel) : ground[channel]!;
      }
      data[at + 3] = 255;
    }
  }
  return { width, height, data };
}

function between({ width, height, data }: PixelImage, x: number, y: number, channel: number): number {
  const [left, top] = [Math.max(0, Math.floor(x)), Math.max(0, Math.floor(y))];
  const [right, below] = [Math.min(width - 1, left + 1), Math.min(height - 1, top + 1)];
  const [u, v] = [Math.max(0, x - left), Math.max(0, y - top)];
  const at = (column: number, row: number): number => data[(row * width + column) * 4 + channel]!;
  return (
    (at(left, top) * (1 - u) + at(right, top) * u) * (1 - v) + (at(left, below) * (1 - u) + at(right, below) * u) * v
  );
}

function edgeColour({ width, height, data }: PixelImage): number[] {
  const sums = [0, 0, 0];
  let count = 0;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x += y === 0 || y === height - 1 ? 1 : Math.max(1, width - 1)) {
      for (let channel = 0; channel < 3; channel++) sums[channel]! += data[(y * width + x) * 4 + channel]!;
      count++;
    }
  }
  return sums.map((sum) => sum / count);
}

/** Which column of a photo leaves `left` of the last character of an upright line, 0 to 1; null for a tilted one. */
export function cutThrough(quad: Quad, characters: number, left: number): number | null {
  const [a, b] = quad;
  if (Math.abs(Math.atan2(b.y - a.y, b.x - a.x)) > 0.3) return null;
  const one = (b.x - a.x) / characters;
  return Math.round(b.x - one * (1 - left));
}
