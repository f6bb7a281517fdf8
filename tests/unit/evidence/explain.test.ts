import { describe, expect, it } from 'vitest';
import { explain } from '../../../src/evidence/explain';
import type { Dating } from '../../../src/evidence/types';
import { yearSpan, yearsSpan } from '../../../src/span';
import { piece } from './samples';

describe('the single facts that explain everything', () => {
  const explained = (...evidence: Dating[]) => explain(evidence).map(({ basis, rest }) => `${basis} ${rest}`);
  const soft = { strength: 'soft' } as const;

  it('are told whole, with the stretch of the rest', () => {
    const [wrong, year] = [piece('a', { basis: 'x' }), piece('b', { spans: [yearSpan(1990)] })];
    const again = piece('c', { basis: 'x', spans: [yearsSpan(1993, 1995)] });
    expect(explain([wrong, year, again])).toEqual([
      { basis: 'x', evidence: ['a', 'c'], rest: 'all', spans: [yearSpan(1990)], places: [] },
      { basis: 'b', evidence: ['b'], rest: 'all', spans: [yearSpan(1994)], places: [] },
    ]);
  });

  it('stand in the order of how easily they are wrong: soft before hard, claims before what was read', () => {
    const from = { kind: 'reading', id: 'r' } as const;
    const [year, other] = [{ spans: [yearSpan(1990)] }, { spans: [yearSpan(1991)] }];
    expect(explained(piece('hard', year), piece('soft', { ...other, ...soft }))).toEqual(['soft all', 'hard all']);
    expect(explained(piece('read', { ...year, from }), piece('said', other))).toEqual(['said all', 'read all']);
    expect(explained(piece('said', year), piece('read', { ...other, from, ...soft }))).toEqual([
      'read all',
      'said all',
    ]);
    expect(explained(piece('a', year), piece('b', other))).toEqual(['a all', 'b all']);
  });

  it('are none of nothing, of what agrees, of one fact alone, and of three that stand apart', () => {
    expect(explained()).toEqual([]);
    expect(explained(piece('a'), piece('b'))).toEqual([]);
    expect(explained(piece('a'), piece('b', { basis: 'a', spans: [yearSpan(1990)] }))).toEqual([]);
    expect(explained(...[1990, 1992, 1994].map((year) => piece(`${year}`, { spans: [yearSpan(year)] })))).toEqual([]);
  });

  it('explain a wrong place as well as a wrong date, each alone', () => {
    const place = (id: string, ...places: string[]) => piece(id, { spans: [], places });
    expect(explained(place('a', 'FR'), place('b', 'BE'), place('c', 'BE'))).toEqual(['a all']);
    expect(explained(place('a', 'FR'), place('b', 'BE'), piece('c'), piece('d', { spans: [yearSpan(1990)] }))).toEqual(
      [],
    );
    const both = piece('x', { spans: [yearSpan(1990)], places: ['FR'] });
    expect(explained(both, piece('y'), place('z', 'BE'))).toEqual(['x all']);
  });

  it('are given the room of the rest, where it holds only with it', () => {
    const room = piece('room', { spans: [yearSpan(1991)], reach: [yearsSpan(1990, 1992)], ...soft });
    const [wrong, year] = [piece('wrong', { spans: [yearSpan(1970)] }), piece('year', { spans: [yearSpan(1992)] })];
    expect(explain([wrong, room, year])).toEqual([
      { basis: 'wrong', evidence: ['wrong'], rest: 'all', spans: [yearSpan(1992)], places: [] },
    ]);
  });

  it('are asked of the hard evidence where none explains all', () => {
    const habits = [1960, 1970].map((year) => piece(`h${year}`, { spans: [yearSpan(year)], ...soft }));
    const [a, b, c] = [
      piece('a', { spans: [yearSpan(1984)] }),
      piece('b', { spans: [yearSpan(1994)] }),
      piece('c', { spans: [yearsSpan(1990, null)] }),
    ];
    expect(explained(...habits, a, b, c)).toEqual(['a hard']);
    // A soft one that has a hard room is asked too, a soft place is not.
    const loose = piece('loose', { spans: [yearSpan(1984)], hardReach: [yearsSpan(1983, 1985)], ...soft });
    expect(explained(...habits, loose, b, c)).toEqual(['loose hard']);
    const place = { spans: [], ...soft };
    expect(
      explained(...habits, a, b, c, piece('p', { ...place, places: ['FR'] }), piece('q', { ...place, places: ['BE'] })),
    ).toEqual(['a hard']);
  });
});
