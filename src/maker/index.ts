import calderwickRook from './built-in/calderwick-rook.json' with { type: 'json' };
import ondrasse from './built-in/ondrasse.json' with { type: 'json' };
import tessaroVell from './built-in/tessaro-vell.json' with { type: 'json' };
import { plainName } from './name';
import { parseMakerFile } from './parse';
import type { MakerFile } from './schema';

export * from './edit';
export { type LiveExample, liveExamples } from './live';
export { type Choice, type Conflict, type Merge, mergeMakerFiles } from './merge';
export { plainName } from './name';
export { type MakerFileResult, parseMakerFile, readMakerFileText } from './parse';
export { pathWords } from './plain';
export type * from './types';

/** A built-in file that does not pass is a bug of ours, so it throws; a test reads all of them. */
function builtIn(value: unknown): MakerFile {
  const parsed = parseMakerFile(value);
  if (parsed.ok) return parsed.file;
  throw new Error(parsed.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'));
}

/** Invented makers for the demonstration. No real maker's codes are shipped: users write or import those files. */
export const builtInMakers: MakerFile[] = [ondrasse, calderwickRook, tessaroVell].map(builtIn);

/** The file whose maker or alias is this name; null when none is. The last of several wins: users' files stand last. */
export function findMaker(name: string, files: readonly MakerFile[]): MakerFile | null {
  const wanted = plainName(name);
  if (wanted === '') return null;
  return files.findLast((file) => [file.maker, ...file.aliases].some((known) => plainName(known) === wanted)) ?? null;
}
