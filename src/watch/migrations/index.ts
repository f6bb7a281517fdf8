import { type Problem, problem } from '../../problem';
import type { Packing } from '../ports';
import { caseForms } from '../record';
import { faultOf } from '../record/standing';
import { type Parts, recordVersion, type WatchRecord, watchRecordSchema } from '../types';
import { addVersion } from './1-add-version';
import { keepBoth } from './2-keep-both';
import { looksApart } from './3-looks-apart';
import { setAside } from './4-set-aside';
import { asked } from './5-asked';
import { dated } from './6-dated';
import { marks } from './7-marks';
import { files } from './8-files';
import { sentChanges } from './9-sent-changes';

type Raw = Record<string, unknown>;

/**
 * One step: a raw record of version `to - 1` becomes one of version `to`; what leaves it goes to `parts`. Steps are
 * numbered files in this folder and stand here in order; the tuple's length is held by `recordVersion`, so that a missing
 * step does not compile.
 */
export interface Migration {
  to: number;
  migrate(raw: Raw, packing: Packing, parts: Parts): Promise<Raw>;
}

const migrations: readonly Migration[] & { length: typeof recordVersion } = [
  addVersion,
  keepBoth,
  looksApart,
  setAside,
  asked,
  dated,
  marks,
  files,
  sentChanges,
];

type Unreadable = { state: 'newer' | 'damaged'; problem: Problem };
/** `older`: whole, of a version before this one, and not brought forward yet. */
export type Opened =
  | { state: 'readable'; record: WatchRecord }
  | { state: 'older'; version: number; raw: Raw }
  | Unreadable;

/** What a stored record is. It fails closed: what cannot be read is reported and left as it is. */
export function openRecord(raw: unknown): Opened {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return unreadable(problem('record-none', listed));
  const version = 'version' in raw ? raw.version : 0;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0) {
    return unreadable(problem('record-none', listed));
  }
  if (version > recordVersion) return { state: 'newer', problem: problem('record-newer', listed, { version }) };
  if (version < recordVersion) {
    const issues = caseForms[version]?.safeParse(raw).error?.issues;
    return issues ? faultOf(issues) : { state: 'older', version, raw: raw as Raw };
  }
  const parsed = watchRecordSchema.safeParse(raw);
  return parsed.success ? { state: 'readable', record: parsed.data } : faultOf(parsed.error.issues);
}

/** Brings a record up to this version, with the looks and pictures that lay within it. */
export async function bringForward(
  raw: unknown,
  packing: Packing,
): Promise<{ state: 'readable'; record: WatchRecord; parts: Parts } | Unreadable> {
  const opened = openRecord(raw);
  const parts: Parts = { looks: [], pictures: [] };
  if (opened.state !== 'older') return opened.state === 'readable' ? { ...opened, parts } : opened;
  let record = opened.raw;
  for (const { to, migrate } of migrations.slice(opened.version)) {
    try {
      record = { ...(await migrate(record, packing, parts)), version: to };
    } catch {
      return unreadable(problem('record-not-raised', listed, { to }));
    }
  }
  const parsed = watchRecordSchema.safeParse(record);
  return parsed.success ? { state: 'readable', record: parsed.data, parts } : faultOf(parsed.error.issues);
}

const listed = 'watch list';
const unreadable = (why: Problem): Unreadable => ({ state: 'damaged', problem: why });
