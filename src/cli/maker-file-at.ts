import { type MakerFile, readMakerFileText } from '../maker';
import { textAt } from './file-text';
import { saidProblems } from './said-problems';

/** A maker file that the command line names. Throws for one that cannot be used: which, where, what is wrong, what to do. */
export function makerFileAt(path: string): MakerFile {
  const read = readMakerFileText(textAt(path));
  if (read.ok) return read.file;
  const lines = saidProblems(read.problems).map(
    ({ where, what, expected, remedy }) =>
      `  ${where}: ${what}${expected ? ` (expected: ${expected})` : ''}. ${remedy}`,
  );
  throw new Error([`${path}: the maker file is refused`, ...lines].join('\n'));
}
