import { describe, expect, it } from 'vitest';
import { type Cells, dateCells, piecesByCell, placeCells } from '../../../src/evidence/cells';
import { type Span, yearSpan, yearsSpan } from '../../../src/span';

const bits = ({ count, allowed }: Cells) => allowed.map((one) => one.toString(2).padStart(count, '0'));
const any: Span = { from: null, to: null, precision: 'range' };

describe('cells of time and ground', () => {
  const dates = (...spans: Span[][]) => bits(dateCells(spans.map((one) => ({ spans: one }))));
  const places = (...sets: string[][]) => bits(placeCells(sets.map((one) => ({ places: one }))));

  it('of time are cut at the start of each span and on the day after its end', () => {
    expect(dates([yearSpan(1990)])).toEqual(['010']);
    expect(dates([yearSpan(1990)], [yearSpan(1991)])).toEqual(['0010', '0100']);
    expect(dates([yearSpan(1990)], [yearSpan(1992)])).toEqual(['00010', '01000']);
    expect(dates([yearSpan(1990), yearSpan(1992)], [yearsSpan(1991, null)])).toEqual(['01010', '11100']);
    expect(dates([yearsSpan(null, 1990)], [], [any])).toEqual(['01', '11', '11']);
  });

  it('of ground are the countries of today, and one for everywhere else', () => {
    expect(places(['FR'], ['BE'], [])).toEqual(['001', '010', '111']);
    expect(places(['CSHH'], ['SK'], ['FR', 'CZ'])).toEqual(['0011', '0010', '0101']);
    // A code that the table does not know stands for itself.
    expect(places(['QQ'], ['QQ', 'FR'])).toEqual(['001', '011']);
    expect(places([], [])).toEqual(['1', '1']);
  });

  it('are turned into the pieces that allow each', () => {
    expect(piecesByCell({ count: 3, allowed: [0b001n, 0b011n, 0b111n] })).toEqual([0b111n, 0b110n, 0b100n]);
  });
});
