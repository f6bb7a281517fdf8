import { describe, expect, it } from 'vitest';
import { caseOf } from '../../../src/watch';
import { joinRecords } from '../../../src/watch/join';
import { good, testBench } from './open-for-test';
import { sampleCase, sampleRecord } from './sample-case';

const opened = async () => {
  const list = await testBench().open();
  const { id } = good(await list.save(sampleCase(), []));
  return { list, id };
};

describe('a reply of the seller', () => {
  it('is kept in the latest look with its day, and its claims are the seller’s words', async () => {
    const { list, id } = await opened();
    good(await list.addReply(id, '  Hello, it was made in 1994 and made in Belgium.  '));
    const saved = good(await list.get(id));
    expect(saved.looks).toHaveLength(1);
    const kase = caseOf(saved)!;
    expect(kase.replies).toEqual([
      { at: '2026-03-01T10:02:00.000Z', text: 'Hello, it was made in 1994 and made in Belgium.' },
    ]);
    const said = kase.claims.map(({ kind, at }) => [kind, at.field]);
    expect(said).toContainEqual(['made', 'reply']);
    expect(said).toContainEqual(['origin', 'reply']);
  });

  it('stands beside the earlier ones, and is kept once', async () => {
    const { list, id } = await opened();
    good(await list.addReply(id, 'First.'));
    good(await list.addReply(id, 'Second.'));
    expect(await list.addReply(id, 'Second.')).toMatchObject({ ok: false, problem: { code: 'record-refused' } });
    expect(await list.addReply(id, '   ')).toMatchObject({ ok: false });
    expect(caseOf(good(await list.get(id)))?.replies?.map(({ text }) => text)).toEqual(['First.', 'Second.']);
  });

  it('goes with the look into a file and out of it, and is given to the next look', async () => {
    const { list, id } = await opened();
    good(await list.addReply(id, 'It was made in 1994.'));
    const file = good(await list.exportText());
    const other = await testBench().open();
    expect(good(await other.importText(file))).toMatchObject({ added: 1, refused: [] });
    expect(caseOf(good(await other.get(id)))?.replies).toHaveLength(1);
    const earlier = good(await other.earlier(sampleCase().listing.url));
    expect(earlier?.replies.map(({ text }) => text)).toEqual(['It was made in 1994.']);
    expect(earlier?.look.claims.map(({ kind }) => kind)).toContain('made');
  });
});

describe('questions that were asked', () => {
  it('are kept with the time at which each was asked last', async () => {
    const { list, id } = await opened();
    good(await list.setAsked(id, ['made-date', 'stamp-photo']));
    good(await list.setAsked(id, ['stamp-photo']));
    expect(good(await list.get(id)).record.asked).toEqual([
      { id: 'made-date', at: '2026-03-01T10:02:00.000Z' },
      { id: 'stamp-photo', at: '2026-03-01T10:03:00.000Z' },
    ]);
    good(await list.save(sampleCase(undefined, undefined, '2026-03-02T10:00:00.000Z'), []));
    expect(good(await list.get(id)).record.asked).toHaveLength(2);
  });

  it('of two records are those of both', () => {
    const own = sampleRecord({ asked: [{ id: 'a', at: '2026-03-01T10:00:00.000Z' }] });
    const other = sampleRecord({
      asked: [
        { id: 'a', at: '2026-03-02T10:00:00.000Z' },
        { id: 'b', at: '2026-03-01T09:00:00.000Z' },
      ],
    });
    const { record, changed } = joinRecords(own, other, 'import', '2026-03-03T10:00:00.000Z');
    expect(changed).toBe(true);
    expect(record.asked).toEqual(other.asked);
    expect(joinRecords(record, other, 'import', '2026-03-04T10:00:00.000Z').changed).toBe(false);
  });
});
