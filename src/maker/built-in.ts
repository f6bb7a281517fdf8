import calderwickRook from './built-in/calderwick-rook.json' with { type: 'json' };
import ondrasse from './built-in/ondrasse.json' with { type: 'json' };
import tessaroVell from './built-in/tessaro-vell.json' with { type: 'json' };
import { parseMakerFile } from './parse';
import type { MakerFile } from './schema';

/** A built-in file that does not pass is a bug of ours, so it throws; a test reads all of them. */
function builtIn(value: unknown): MakerFile {
  const parsed = parseMakerFile(value);
  if (parsed.ok) return parsed.file;
  throw new Error(parsed.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'));
}

let read: MakerFile[] | null = null;

/**
 * Invented makers for the demonstration. No real maker's codes are shipped: users write or import those files. Read when
 * first asked for, which no page but the demonstration's does.
 */
export function inventedMakers(): MakerFile[] {
  read ??= [ondrasse, calderwickRook, tessaroVell].map(builtIn);
  return read;
}
