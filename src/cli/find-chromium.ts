import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const names = ['chromium', 'chromium-browser'];

/** Path of a Chromium that may be run: the CHROMIUM variable first, then the folders of PATH; null when there is none. */
export function findChromium(environment: NodeJS.ProcessEnv = process.env): string | null {
  const folders = (environment.PATH ?? '').split(delimiter);
  const paths = folders.flatMap((folder) => names.map((name) => join(folder, name)));
  return [environment.CHROMIUM, ...paths].find((path) => path !== undefined && isRunnable(path)) ?? null;
}

function isRunnable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

export const missingChromium =
  "Chromium was not found. On Debian install it with 'apt-get install chromium' (as root), or set CHROMIUM to its path, then run this again.";

if (process.argv[1] === fileURLToPath(import.meta.url) && findChromium() === null) {
  console.error(missingChromium);
  process.exit(1);
}
