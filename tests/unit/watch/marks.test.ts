import { describe, expect, it } from 'vitest';
import {
  type Inside,
  type Mark,
  markAfterChange,
  markAfterLoss,
  markAtOpening,
  readMark,
} from '../../../src/watch/loss';

const now = '2026-03-01T10:00:00.000Z';
const mark = (over: Partial<Mark> = {}): Mark => ({ identity: 'a', generation: 7, records: 4, loss: null, ...over });
const inside = (over: Partial<Inside> = {}): Inside => ({ identity: 'a', generation: 7, records: 4, ...over });
const lost = { kind: 'older' as const, before: 9, noticedAt: '2026-02-01T10:00:00.000Z' };

describe('what the database says at its opening, against the mark outside it', () => {
  it.each<[string, Partial<Inside>, Partial<Mark>, 'gone' | 'older' | null]>([
    ['as it was', {}, {}, null],
    ['another database', { identity: 'b' }, {}, 'gone'],
    ['another database that went further', { identity: 'b', generation: 8 }, {}, 'gone'],
    ['a mark without an identity', { identity: 'b' }, { identity: null }, null],
    ['one generation less', { generation: 6 }, {}, 'older'],
    ['the first generation', { generation: 1 }, {}, 'older'],
    ['none at all', { generation: 0 }, {}, 'gone'],
    ['one generation more, with fewer records', { generation: 8, records: 3 }, {}, null],
    ['one record less of the same generation', { records: 3 }, {}, 'older'],
    ['one record more of the same generation', { records: 5 }, {}, null],
    ['fewer records where none were counted', { records: 0 }, { records: null }, null],
  ])('%s', (_what, here, there, kind) => {
    const standing = mark(there);
    expect(markAtOpening(inside(here), standing, now)).toEqual(
      kind === null
        ? { ...inside(here), loss: null }
        : { ...standing, loss: { kind, before: standing.records, noticedAt: now } },
    );
  });

  it('a loss that nobody took note of stays, whatever came since', () => {
    const standing = mark({ loss: lost });
    expect(markAtOpening(inside({ generation: 30, records: 30 }), standing, now)).toBe(standing);
  });

  it('without a mark the database is as it should be', () => {
    expect(markAtOpening(inside(), null, now)).toEqual(mark());
  });
});

describe('the mark after a change', () => {
  it.each<[string, Partial<Inside>, Mark | null, boolean]>([
    ['is made where there is none', {}, null, true],
    ['is raised by the next generation', { generation: 8, records: 5 }, mark(), true],
    ['stays for the same generation', { records: 5 }, mark(), false],
    ['is never lowered', { generation: 6 }, mark(), false],
    ['stays while a loss is open', { generation: 8 }, mark({ loss: lost }), false],
    ['stays for another database', { identity: 'b', generation: 8 }, mark(), false],
    ['stays for another database while a loss is open', { identity: 'b', generation: 8 }, mark({ loss: lost }), false],
  ])('%s', (_what, here, standing, isRaised) => {
    expect(markAfterChange(inside(here), standing)).toEqual(isRaised ? { ...inside(here), loss: null } : standing);
  });

  it('falls when the user takes note of a loss', () => {
    expect(markAfterLoss(inside({ generation: 2, records: 1 }))).toEqual(mark({ generation: 2, records: 1 }));
  });
});

it.each<[unknown, Mark | null]>([
  [mark({ loss: lost }), mark({ loss: lost })],
  [7, mark({ identity: null, records: null })],
  [1, mark({ identity: null, generation: 1, records: null })],
  [0, null],
  [-1, null],
  [1.5, null],
  ['7', null],
  [undefined, null],
  [{ ...mark(), more: true }, null],
])('a stored mark is read, and what is none counts as none: %j', (stored, read) => {
  expect(readMark(stored)).toEqual(read);
});
