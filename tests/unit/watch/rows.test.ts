import { describe, expect, it } from 'vitest';
import { problem } from '../../../src/problem';
import { openRecord } from '../../../src/watch/migrations';
import { latestFirst, namesIn, notYet, rowOf, type WatchRow } from '../../../src/watch/rows';
import { sampleRecord } from './sample-case';

describe('rows', () => {
  it('of what cannot be read say what it is called and what is wrong', () => {
    const at = (raw: unknown) => rowOf(raw);
    expect(at({ id: 'a', version: 10, title: 'T'.repeat(501), x: { y: ['0'.repeat(64)] } })).toEqual({
      state: 'newer',
      id: 'a',
      key: '',
      title: 'T'.repeat(500),
      problem: problem('record-newer', 'watch list', { version: 10 }),
      uses: ['0'.repeat(64)],
    });
    expect(at({ id: 5, version: 'x', title: '' })).toMatchObject({
      state: 'damaged',
      id: '5',
      title: '',
    });
    expect(notYet).toEqual(problem('record-older', 'watch list'));
  });

  it('of a record say what a list shows of it', () => {
    const record = sampleRecord({
      note: 'mine',
      otherNotes: [{ from: 'bin', at: '2026-03-01T10:05:00.000Z', note: 'x', status: null }],
    });
    expect(rowOf(record)).toEqual({
      state: 'readable',
      id: 'case-1',
      key: 'attic-arcade.example/item/7',
      title: 'Ondrasse Carryall 30',
      ...record.shown,
      status: 'watching',
      hasNote: true,
      otherNotes: 1,
      dated: null,
      savedAt: record.savedAt,
      changedAt: record.changedAt,
      removedAt: null,
      uses: ['0'.repeat(64)],
    });
    expect(rowOf(sampleRecord())).toMatchObject({ hasNote: false, otherNotes: 0 });
  });

  it('stand with the latest change first, ties as they came, and last what cannot be read', () => {
    const row = (id: string, changedAt: string | null) =>
      ({ id, ...(changedAt === null ? { state: 'damaged' } : { state: 'readable', changedAt }) }) as WatchRow;
    const rows = [
      row('broken', null),
      row('old', '1'),
      row('a', '2'),
      row('b', '2'),
      row('new', '3'),
      row('broken too', null),
    ];
    expect([...rows].sort(latestFirst).map(({ id }) => id)).toEqual(['new', 'a', 'b', 'old', 'broken', 'broken too']);
    expect(
      [...rows]
        .reverse()
        .sort(latestFirst)
        .map(({ id }) => id),
    ).toEqual(['new', 'b', 'a', 'old', 'broken too', 'broken']);
  });

  it('need every name of sixty-four hexadecimal digits, wherever it stands', () => {
    const name = 'a1'.repeat(32);
    expect([
      ...namesIn({
        a: [{ b: name }],
        c: null,
        d: 7,
        e: 'A1'.repeat(32),
        f: name.slice(1),
        g: `${name}0`,
        h: 'g'.repeat(64),
      }),
    ]).toEqual([name]);
  });
});

describe('a record as it lies', () => {
  it('is of an older build when its form of then fits, and damaged when it does not', () => {
    expect(openRecord({ ...sampleRecord(), version: 3, more: 1 })).toMatchObject({
      state: 'newer',
      problem: { code: 'record-newer' },
    });
    const { asked: _asked, dated: _dated, sentChanges: _changes, ...before } = sampleRecord();
    const { aside: _aside, ...head } = before.shown.head;
    const looks = before.looks.map(({ files: _files, ...look }) => look);
    expect(openRecord({ ...before, version: 3, looks, shown: { ...before.shown, head } })).toMatchObject({
      state: 'older',
      version: 3,
    });
    expect(openRecord(sampleRecord())).toEqual({ state: 'readable', record: sampleRecord() });
  });
});
