import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { type MakerFile, readMakerFileText } from '../maker';
import { saidProblems } from './said-problems';

/** A path as the user wrote it, also from a folder below the project's: npm starts programs in the project's own. */
export const placeOf = (path: string): string =>
  existsSync(path) ? path : resolve(process.env.INIT_CWD ?? process.cwd(), path);

/** A maker file that the command line names. Throws for one that cannot be used: which, where, what is wrong, what to do. */
export function makerFileAt(given: string): MakerFile {
  const path = placeOf(given);
  if (!existsSync(path)) throw new Error(`${path}: there is no such maker file. Check the path.`);
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    throw new Error(
      `${path}: the maker file cannot be read: ${error instanceof Error ? error.message : 'no reason given'}`,
    );
  }
  const read = readMakerFileText(text);
  if (read.ok) return read.file;
  const lines = saidProblems(read.problems).map(
    ({ where, what, expected, remedy }) =>
      `  ${where}: ${what}${expected ? ` (expected: ${expected})` : ''}. ${remedy}`,
  );
  throw new Error([`${path}: the maker file is refused`, ...lines].join('\n'));
}
