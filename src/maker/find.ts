import { plainName } from './name';
import type { MakerFile } from './schema';

/** The file whose maker or alias is this name; null when none is. The last of several wins: users' files stand last. */
export function findMaker(name: string, files: readonly MakerFile[]): MakerFile | null {
  const wanted = plainName(name);
  if (wanted === '') return null;
  return files.findLast((file) => [file.maker, ...file.aliases].some((known) => plainName(known) === wanted)) ?? null;
}
