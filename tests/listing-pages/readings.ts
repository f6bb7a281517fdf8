import { readFileSync } from 'node:fs';
import { readFacts, readPage } from '../../src/listing';
import { lookBySource } from '../../src/listing/page/look-by-source';
import { corpus } from './corpus';
import { type Reading, readWhole } from './reading';

/** Where the reading of each file's pages is kept. */
export const readingFile = (file: string): URL => new URL(`readings/${file}.json`, import.meta.url);

/** What was read when the reading was last looked at, by page. */
export const keptReadings = (file: string): Record<string, Reading> =>
  JSON.parse(readFileSync(readingFile(file), 'utf8'));

/** What is read now of all pages of a file. */
export async function readingsOf(file: string): Promise<Record<string, Reading>> {
  const readings: Record<string, Reading> = {};
  for (const [name, page] of Object.entries(corpus[file] ?? {}))
    readings[name] = await readWhole(page, { readPage, readFacts, lookBySource });
  return readings;
}
