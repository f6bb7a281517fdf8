import { readFileSync } from 'node:fs';
import { type MakerFile, readMakerFileText } from '../../../src/maker';

/** The invented maker whose code systems the validation photographs follow. */
export function benchMaker(): MakerFile {
  const read = readMakerFileText(readFileSync(new URL('maker.json', import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(read.problems.map(({ where, what }) => `maker.json, ${where}: ${what}`).join('\n'));
  return read.file;
}
