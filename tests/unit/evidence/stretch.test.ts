import { describe, expect, it } from 'vitest';
import { stretchOf } from '../../../src/evidence/stretch';
import { daySpan, type Span, yearSpan, yearsSpan } from '../../../src/span';
import { piece } from './samples';

const any: Span = { from: null, to: null, precision: 'range' };

describe('what all allow together', () => {
  const stretch = (...spans: Span[][]) => stretchOf(spans.map((one, at) => piece(`e${at}`, { spans: one })))?.spans;
  const ground = (...places: string[][]) =>
    stretchOf(places.map((one, at) => piece(`e${at}`, { spans: [], places: one })))?.places;

  it('is as fine as its ends: a day, a year as it was said, and no longer about', () => {
    expect(stretch([yearsSpan(1990, 1994)], [yearsSpan(1994, 1999)])).toEqual([
      { from: '1994-01-01', to: '1994-12-31', precision: 'range' },
    ]);
    expect(stretch([yearSpan(1994)], [yearsSpan(1990, 1999)])).toEqual([yearSpan(1994)]);
    expect(stretch([{ ...yearSpan(1994), about: true }])).toEqual([{ ...yearSpan(1994), precision: 'range' }]);
    const [first, second] = [yearSpan(1990), { from: '1990-12-31', to: '1992-01-01', precision: 'range' } as const];
    expect(stretch([first], [second])).toEqual([daySpan('1990-12-31')]);
    expect(stretch([any])).toEqual([any]);
  });

  it('is nothing where no date or no ground is shared, and silent on what nobody says', () => {
    expect(stretch([yearSpan(1990)], [yearSpan(1991)])).toBeUndefined();
    expect(ground(['FR'], ['BE'])).toBeUndefined();
    expect(stretchOf([])).toEqual({ spans: [], places: [] });
    expect(stretchOf([piece('a', { places: ['FR'] }), piece('b', { places: ['BE'] })])).toBeNull();
    expect(stretchOf([piece('a'), piece('b', { spans: [], places: ['BE'] })])).toEqual({
      spans: [yearSpan(1994)],
      places: ['BE'],
    });
  });

  it('is on the ground of a former country where exactly that is shared, else of its heirs', () => {
    expect(ground(['CSHH'])).toEqual(['CSHH']);
    expect(ground(['CSHH', 'FR'])).toEqual(['CZ', 'FR', 'SK']);
    expect(ground(['CSHH'], ['SK', 'FR'])).toEqual(['SK']);
    expect(ground(['CSHH'], ['CZ', 'SK'])).toEqual(['CSHH']);
    expect(ground(['CSHH'], ['FR', 'BE'])).toBeUndefined();
    expect(ground(['FR', 'BE'], ['BE', 'FR', 'IT'])).toEqual(['BE', 'FR']);
    expect(ground(['CSHH', 'FR'], ['FR', 'BE'])).toEqual(['FR']);
  });
});
