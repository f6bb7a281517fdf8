import { fail, type Problem, type Result, succeed } from '../../problem';
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
  const migrated = bringForward(raw);
  if (!migrated.ok) {
    return { state: migrated.problem.code === 'record-newer' ? 'newer' : 'damaged', problem: migrated.problem };
  }
  const parsed = watchRecordSchema.safeParse(migrated.value);
  if (parsed.success) return { state: 'readable', record: parsed.data };
  const issue = parsed.error.issues[0];
  return {
    state: 'damaged',
    problem: problem('record-damaged', `${issue?.path.join('.') || 'record'}: ${issue?.message ?? 'not readable'}`),
  };
}

function bringForward(raw: unknown): Result<Record<string, unknown>> {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    return fail(problem('record-damaged', 'it is no record'));
  }
  let record = raw as Record<string, unknown>;
  const version = record.version ?? 0;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0) {
    return fail(problem('record-damaged', 'its version is not a number'));
  }
  if (version > recordVersion) return fail(problem('record-newer', `it has version ${version}`));
  for (const { to, migrate } of migrations.slice(version)) {
    try {
      record = { ...migrate(record), version: to };
    } catch {
      return fail(problem('record-damaged', `it could not be brought to version ${to}`));
    }
  }
  return succeed(record);
}

const problem = (code: string, what: string): Problem => ({
  code,
  where: 'watch list',
  what,
  remedy:
    code === 'record-newer'
      ? 'Update the extension; until then the record is shown and not changed.'
      : 'The record is kept as it is: export it and report what it says.',
});
