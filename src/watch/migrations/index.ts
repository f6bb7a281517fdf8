import type { Problem } from '../../problem';
import { formOf } from '../record';
import { faultOf, problemOf } from '../record/standing';
import { recordVersion, type WatchRecord, watchRecordSchema } from '../types';
import { addVersion } from './1-add-version';
import { keepBoth } from './2-keep-both';

/**
 * One step: a raw record of version `to - 1` becomes one of version `to`. Steps are numbered files in this folder
 * and stand here in order; the tuple's length is held by `recordVersion`, so a missing step does not compile.
 */
export interface Migration {
  to: number;
  migrate(raw: Record<string, unknown>): Record<string, unknown>;
}

const migrations: readonly Migration[] & { length: typeof recordVersion } = [addVersion, keepBoth];

export type Opened = { state: 'readable'; record: WatchRecord } | { state: 'newer' | 'damaged'; problem: Problem };

/** Brings a stored record up to this version. It fails closed: what cannot be read is reported and left as it is. */
export function openRecord(raw: unknown): Opened {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return damaged('it is no record');
  const version = 'version' in raw ? raw.version : 0;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0) {
    return damaged('its version is not a number');
  }
  if (version > recordVersion)
    return { state: 'newer', problem: problemOf('record-newer', `it has version ${version}`) };
  const frozen = formOf(version)?.safeParse(raw);
  if (frozen?.error) return faultOf(frozen.error.issues);
  let record = raw as Record<string, unknown>;
  for (const { to, migrate } of migrations.slice(version)) {
    try {
      record = { ...migrate(record), version: to };
    } catch {
      return damaged(`it could not be brought to version ${to}`);
    }
  }
  const parsed = watchRecordSchema.safeParse(record);
  return parsed.success ? { state: 'readable', record: parsed.data } : faultOf(parsed.error.issues);
}

const damaged = (what: string): Opened => ({ state: 'damaged', problem: problemOf('record-damaged', what) });
