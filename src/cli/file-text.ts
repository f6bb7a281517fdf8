import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';

/** A path as the user wrote it, also from a folder below the project's: npm starts programs in the project's own. */
const placeOf = (path: string): string =>
  existsSync(path) ? path : resolve(process.env.INIT_CWD ?? process.cwd(), path);

/** Why a file was not opened, in words. */
export const whyNotOpened = (error: unknown): string =>
  (error as NodeJS.ErrnoException).code === 'ENOENT' ? 'there is no file of this name' : 'the file cannot be read';

/** The text of a file that the command line names. Throws where there is none: which, and why. */
export function textAt(given: string): string {
  try {
    return readFileSync(placeOf(given), 'utf8');
  } catch (error) {
    throw new Error(`${given}: ${whyNotOpened(error)}. Check the path.`);
  }
}
