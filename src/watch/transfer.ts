import * as z from 'zod';
import { fail, type Problem, type Result, succeed } from '../problem';
import { openRecord } from './migrations';
import type { WatchRecord } from './types';

const exportName = 'tellstamp-watch-list';
const exportVersion = 1;
/** Records in one file, and characters: beyond is no export of ours. */
const mostRecords = 20_000;
const mostCharacters = 400_000_000;

const exportSchema = z.looseObject({
  format: z.literal(exportName),
  version: z.number().int().min(1),
  exportedAt: z.string(),
  records: z.array(z.unknown()).max(mostRecords),
});

export interface Imported {
  added: number;
  renewed: number;
  kept: number;
  refused: Problem[];
}

/** The list as the text of a file: records as they lie in the database, whatever their version. */
export const writeExport = (records: unknown[], now: string): string =>
  `${JSON.stringify({ format: exportName, version: exportVersion, exportedAt: now, records })}\n`;

/** An exported file → its records of this version, and what was refused. Other formats and cut files are told apart. */
export function readExport(text: string): Result<{ records: WatchRecord[]; refused: Problem[] }> {
  if (text.length > mostCharacters) return fail(problem('import-too-large', 'the file is too large to be an export'));
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    const ours = text.slice(0, 200).includes(`"${exportName}"`);
    return fail(
      ours
        ? problem('import-cut-off', 'the file is cut off: its end is missing')
        : problem('import-not-json', 'the file is not an export of the watch list'),
    );
  }
  const parsed = exportSchema.safeParse(value);
  if (!parsed.success) return fail(problem('import-other-format', 'the file is not an export of the watch list'));
  if (parsed.data.version > exportVersion) {
    return fail(problem('import-newer', 'the file was written by a newer version of the extension'));
  }
  const records: WatchRecord[] = [];
  const refused: Problem[] = [];
  for (const [index, raw] of parsed.data.records.entries()) {
    const opened = openRecord(raw);
    if (opened.state === 'readable') records.push(opened.record);
    else refused.push({ ...opened.problem, where: `record ${index + 1}` });
  }
  return succeed({ records, refused });
}

const problem = (code: string, what: string): Problem => ({
  code,
  where: 'import',
  what,
  remedy: 'Nothing was changed. Choose a file that the watch list exported.',
});
