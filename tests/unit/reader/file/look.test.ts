import { describe, expect, it } from 'vitest';
import { type MakerFile, parseMakerFile } from '../../../../src/maker';
import {
  isDue,
  originOf,
  updatedWith,
  waitingChanges,
  withFound,
  withoutUpdate,
  withTroubles,
} from '../../../../src/reader/file/look';
import type { FileAt } from '../../../../src/reader/file/read-file';

const fileOf = (value: object): MakerFile => {
  const result = parseMakerFile({ format: 2, maker: 'Ondrasse', ...value });
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.file;
};
const address = 'https://makers.example/ondrasse.json';
const readAt = (at: string, sha256: string, value: object): FileAt => ({
  address,
  at,
  sha256,
  bytes: 1,
  file: fileOf(value),
});
const plant = (code: string, from: string) => ({ code, place: 'BE', used: [from, null] });
const first = readAt('2026-11-01T10:00:00Z', 'a', { plants: [plant('KV', '1982'), plant('LD', '1990')] });
const second = readAt('2026-11-02T10:00:00Z', 'b', {
  plants: [plant('KV', '1980'), plant('LD', '1991'), plant('HJ', '1986')],
});
const origin = originOf(first, true);
const found = withFound(origin, second);
const idsOf = (changes: readonly { id: string }[]) => changes.map(({ id }) => id);
const [kv, ld, hj] = ['plants KV BE', 'plants LD BE', 'plants HJ BE'] as const;

describe('a file that is looked at again', () => {
  it('waits with what changed, and with nothing when it is the same', () => {
    expect(idsOf(waitingChanges(found, first.file))).toEqual([kv, ld, hj]);
    const same = withFound(origin, { ...first, at: second.at });
    expect(same).toEqual({ ...origin, asked: second.at });
  });

  it('changes nothing when it is on another maker or cannot be read, and says why', () => {
    const other = withFound(found, { ...second, sha256: 'c', file: fileOf({ maker: 'Tessaro Vell' }) });
    expect(other).toMatchObject({
      used: origin.used,
      found: found.found,
      troubles: [{ code: 'file-other-maker', where: address }],
    });
    const failed = withTroubles(found, [{ code: 'file-late', where: address, what: 'a', remedy: 'b' }], new Date(0));
    expect(failed).toMatchObject({ used: origin.used, found: found.found, asked: '1970-01-01T00:00:00.000Z' });
    expect(withFound(failed, second).troubles).toEqual([]);
  });

  it('is due when a day has passed and the buyer wants it daily, also when the clock was set back', () => {
    const asked = Date.parse(origin.asked);
    const day = 24 * 60 * 60 * 1000;
    expect(isDue(origin, new Date(asked + day - 1))).toBe(false);
    expect(isDue(origin, new Date(asked + day))).toBe(true);
    expect(isDue(origin, new Date(asked - 1))).toBe(true);
    expect(isDue({ ...origin, daily: false }, new Date(asked + 9 * day))).toBe(false);
  });
});

describe('an update', () => {
  it('uses what was ticked, tells again what was left, and asks no more about what was decided', () => {
    const own = fileOf({ plants: [plant('KV', '1979'), plant('LD', '1990')] });
    expect(waitingChanges(found, own).map(({ id, conflict }) => [id, conflict])).toEqual([
      [kv, true],
      [ld, false],
      [hj, false],
    ]);
    const updated = updatedWith(found, own, new Set([ld]), new Set([hj]));
    if (!updated.ok) throw new Error('refused');
    expect(updated.own.plants).toEqual([plant('KV', '1979'), plant('LD', '1991')]);
    expect(idsOf(waitingChanges(updated.origin, updated.own))).toEqual([hj]);
    // Looked at again, the same file is no news.
    expect(withFound(updated.origin, second).found).toBe(updated.origin.found);
    const rest = updatedWith(updated.origin, updated.own, new Set([hj]), new Set());
    expect(rest).toMatchObject({ ok: true, origin: { found: null, used: { sha256: 'b' } } });
  });

  it('that would leave a file that holds together no more is refused', () => {
    const system = { id: 'a', used: ['1980', null], layout: [{ plant: 2 }, { year: 2 }] };
    const third = readAt('2026-11-03T10:00:00Z', 'c', {
      plants: [...first.file.plants, plant('HJ', '1986')],
      codeSystems: [{ ...system, examples: [{ code: 'HJ94', reads: '1994, BE' }] }],
    });
    const now = withFound(origin, third);
    const refused = updatedWith(now, first.file, new Set(['codeSystems a']), new Set([hj]));
    expect(refused).toMatchObject({ ok: false, problems: [{ code: 'maker-file-example' }] });
    expect(updatedWith(now, first.file, new Set(['codeSystems a', hj]), new Set()).ok).toBe(true);
  });

  it('is undone but for what the buyer changed since, and can be used again', () => {
    const updated = updatedWith(found, first.file, new Set([kv, ld, hj]), new Set());
    if (!updated.ok) throw new Error('refused');
    const since = fileOf({ plants: [plant('KV', '1975'), plant('LD', '1991'), plant('HJ', '1986')] });
    const undone = withoutUpdate(updated.origin, since);
    expect(undone).toMatchObject({ kept: 1, origin: { used: origin.used, found: found.found, before: null } });
    expect(undone.own.plants).toEqual([plant('KV', '1975'), plant('LD', '1990')]);
    expect(idsOf(waitingChanges(undone.origin, undone.own))).toEqual([kv, ld, hj]);
    expect(withoutUpdate(undone.origin, undone.own)).toEqual({ own: undone.own, origin: undone.origin, kept: 0 });
  });
});
