import { describe, expect, it } from 'vitest';
import { addLook, joinRecords, settleOtherNote, withNote } from '../../../src/watch/join';
import { type LookName, mostEarlierLooks, type OtherNote, type WatchRecord } from '../../../src/watch/types';
import { sampleRecord } from './sample-case';

const day = (at: number) => new Date(Date.UTC(2026, 2, at, 10)).toISOString();
const lookOf = (at: number, judged = at): LookName => ({
  look: `${at}-${judged}`.padStart(64, '0'),
  readAt: day(at),
  judgedAt: day(judged),
  corrections: [],
  pictures: [],
  files: [],
});
const recordOf = (over: Partial<WatchRecord> = {}): WatchRecord => ({
  ...sampleRecord({ savedAt: day(1), changedAt: day(2), status: 'watching', note: '' }),
  id: 'own',
  otherNotes: [],
  looks: [lookOf(1)],
  ...over,
});
const now = day(20);
const join = (own: Partial<WatchRecord>, other: Partial<WatchRecord>) =>
  joinRecords(recordOf(own), recordOf({ id: 'other', ...other }), 'import', now);
const said = (note: string, status: OtherNote['status'] = null): OtherNote => ({
  from: 'import',
  at: now,
  note,
  status,
});
const momentsOf = ({ looks }: WatchRecord) => looks.map(({ readAt }) => readAt);

describe('two records of one listing', () => {
  it('that say the same stay as they are', () => {
    const own = recordOf({ note: 'mine', status: 'asked' });
    const joined = joinRecords(own, { ...own, id: 'other' }, 'import', now);
    expect(joined).toEqual({ record: own, changed: false, bothNotes: false });
    expect(joined.record).toBe(own);
  });

  it('keep the own note and status, the others beside them', () => {
    const { record, changed, bothNotes } = join(
      { note: 'mine', status: 'asked' },
      { note: 'theirs', status: 'bought' },
    );
    expect(record).toMatchObject({ id: 'own', note: 'mine', status: 'asked', otherNotes: [said('theirs', 'bought')] });
    expect([changed, bothNotes, record.changedAt]).toEqual([true, true, now]);
  });

  it('say nothing beside of a status that is the same, or that nobody chose', () => {
    const notes = (own: WatchRecord['status'], other: WatchRecord['status']) =>
      join({ note: 'mine', status: own }, { note: 'theirs', status: other }).record.otherNotes;
    expect(notes('asked', 'asked')).toEqual([said('theirs')]);
    expect(notes('asked', 'watching')).toEqual([said('theirs')]);
    expect(notes('asked', 'bought')).toEqual([said('theirs', 'bought')]);
    expect(join({ note: 'mine', status: 'asked' }, { note: 'mine', status: 'bought' }).record.otherNotes).toEqual([
      said('', 'bought'),
    ]);
  });

  it('take a note and a status where the own record has none', () => {
    const { record, changed, bothNotes } = join({}, { note: 'theirs', status: 'bought' });
    expect(record).toMatchObject({ note: 'theirs', status: 'bought', otherNotes: [] });
    expect([changed, bothNotes]).toEqual([true, false]);
    expect(join({}, { status: 'bought' }).changed).toBe(true);
    expect(join({ note: 'mine' }, { note: '' }).changed).toBe(false);
  });

  it('bring each other note once, and none that the own note says already', () => {
    const both = { note: 'mine', status: 'asked' as const };
    const brought = [said('third'), said('mine'), said('known')];
    const own = { ...both, otherNotes: [said('known')] };
    expect(join(own, { ...both, otherNotes: brought }).record.otherNotes).toEqual([said('known'), said('third')]);
    expect(join(own, { ...both, note: 'known' }).changed).toBe(false);
    expect(join(own, { ...both, note: 'known', status: 'bought' }).record.otherNotes).toEqual([
      said('known'),
      said('known', 'bought'),
    ]);
  });

  it('were saved when the first of them was', () => {
    expect(join({ savedAt: day(5) }, { note: 'theirs', savedAt: day(3) }).record.savedAt).toBe(day(3));
    expect(join({ savedAt: day(3) }, { note: 'theirs', savedAt: day(5) }).record.savedAt).toBe(day(3));
  });
});

describe('looks', () => {
  it('of both stand by moment, the latest first, which gives the title', () => {
    const theirs = { title: 'Theirs', looks: [lookOf(4), lookOf(2)] };
    const { record, changed } = join({ title: 'Mine', looks: [lookOf(1), lookOf(0)] }, theirs);
    expect(momentsOf(record)).toEqual([day(4), day(2), day(1), day(0)]);
    expect([changed, record.title]).toEqual([true, 'Theirs']);
    expect(join({ title: 'Mine', looks: [lookOf(5)] }, theirs).record.title).toBe('Mine');
  });

  it('of one moment are one, as it was judged last; of equal ones the first stands', () => {
    const judged = (own: number, other: number) =>
      join({ looks: [lookOf(1, own)] }, { looks: [lookOf(1, other)] }).record.looks;
    expect(judged(3, 5)).toEqual([lookOf(1, 5)]);
    expect(judged(5, 3)).toEqual([lookOf(1, 5)]);
    const [mine, newer] = [lookOf(3), lookOf(3)];
    expect(addLook(recordOf({ looks: [mine] }), recordOf({ looks: [newer] })).looks[0]).toBe(newer);
  });

  it('beyond the most that are kept leave out those after the first', () => {
    const looks = Array.from({ length: mostEarlierLooks + 1 }, (_, index) => lookOf(mostEarlierLooks + 1 - index));
    const added = (own: LookName[]) => momentsOf(addLook(recordOf({ looks: own }), recordOf({ looks: [lookOf(22)] })));
    expect(mostEarlierLooks).toBe(20);
    expect(added(looks)).toEqual([
      ...[22, 21, 20, 19, 18, 17, 16, 15, 14, 13, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3].map(day),
      day(1),
    ]);
    expect(added(looks.slice(1))).toEqual([day(22), ...looks.slice(1).map(({ readAt }) => readAt)]);
  });
});

describe('a note from another window', () => {
  const window = (note: string): OtherNote => ({ from: 'window', at: now, note, status: null });

  it('changes nothing when it says what stands there', () => {
    const record = recordOf({ note: 'mine' });
    expect(withNote(record, 'mine', 'begun', now)).toEqual({ record, changed: false, bothNotes: false });
  });

  it('takes the place of what it began with, and keeps beside it what was written since', () => {
    const written = (note: string, begunWith: string) => withNote(recordOf({ note }), 'new', begunWith, now);
    expect(written('old', 'old')).toMatchObject({
      record: { note: 'new', otherNotes: [], changedAt: now },
      changed: true,
      bothNotes: false,
    });
    expect(written('', 'old')).toMatchObject({ record: { note: 'new', otherNotes: [] }, bothNotes: false });
    expect(written('since', 'old')).toMatchObject({
      record: { note: 'new', otherNotes: [window('since')] },
      bothNotes: true,
    });
  });

  it('is settled by dropping it, or by taking its words under the own ones and its status', () => {
    const other = said('theirs', 'bought');
    const record = recordOf({
      note: 'mine',
      status: 'asked',
      otherNotes: [other, { ...other, at: day(9) }, said('third')],
    });
    const rest = [{ ...other, at: day(9) }, said('third')];
    expect(settleOtherNote(record, other, false)).toEqual({ ...record, otherNotes: rest });
    expect(settleOtherNote(record, other, true)).toEqual({
      ...record,
      otherNotes: rest,
      note: 'mine\n\ntheirs',
      status: 'bought',
    });
    expect(settleOtherNote({ ...record, note: '' }, said('third'), true)).toMatchObject({
      note: 'third',
      status: 'asked',
    });
    expect(settleOtherNote(record, said('unknown', 'bought'), true)).toEqual(record);
  });

  it('keeps the date that was settled here, and takes over one where none was', () => {
    const settled = (reads: string) => ({ reads, by: 'receipt', maker: 'Ondrasse', code: 'KV0915', at: now }) as const;
    const [mine, theirs] = [settled('1995-01'), settled('1994')];
    const join = (own: WatchRecord['dated'], other: WatchRecord['dated']) =>
      joinRecords(sampleRecord({ dated: own }), sampleRecord({ id: 'other', dated: other }), 'import', now);
    expect(join(mine, theirs)).toMatchObject({ changed: false, record: { dated: mine } });
    expect(join(null, theirs)).toMatchObject({ changed: true, record: { dated: theirs } });
  });
});
