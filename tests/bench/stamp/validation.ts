import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Quad } from '../../../src/photo';
import type { BenchPhoto, Difficulty } from './rendered';

const here = new URL('.', import.meta.url).pathname;

/** Folders of the committed validation photographs: the training's renderer, with fonts and seeds of their own. */
export const validationSets = [join(here, 'photos'), join(here, 'photos-2')].map((folder) => `${folder}/`);

/** The photographs of a folder that `make_photos.py` wrote. */
export function photosOf(folder: string): BenchPhoto[] {
  const listed = JSON.parse(readFileSync(join(folder, 'expected.json'), 'utf8')) as {
    file: string;
    difficulty: Difficulty;
    code: string | null;
    quad: Quad | null;
  }[];
  return listed.map(({ file, difficulty, code, quad }) => ({ path: join(folder, file), difficulty, code, quad }));
}

export const validationPhotos = (): BenchPhoto[] => validationSets.flatMap(photosOf);
