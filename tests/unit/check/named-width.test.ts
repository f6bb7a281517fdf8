import { describe, expect, it } from 'vitest';
import { namedWidth } from '../../../src/check/named-width';
import { facts, said, stated, withPhotos } from './sample';

describe('named-width', () => {
  const measure = (dimension: 'width' | 'height' | 'strap', mm: number, words: string, precisionMm = 5) => ({
    dimension,
    mm,
    precisionMm,
    unit: 'cm' as const,
    words,
  });
  const sized = (model: string, ...measures: ReturnType<typeof measure>[]) =>
    facts({
      listing: withPhotos(1, { model: model ? stated(model) : [], measures: measures.flatMap((one) => stated(one)) }),
    });

  it('agrees with a width near the number, with or without a maker file', () => {
    expect(said(namedWidth, { ...sized('Weekender 50', measure('width', 510, '51 cm')), maker: null })).toEqual([
      'agreement: “Weekender 50” is 51 cm (20.1 in) wide, as its number says.',
    ]);
  });
  it('doubts another width', () => {
    expect(said(namedWidth, sized('Weekender 50', measure('width', 400, '40 cm')))).toEqual([
      'doubt: “Weekender 50” is said to be 40 cm (15.7 in) wide, but its number says about 50 cm.',
    ]);
  });
  it('leaves a model whose size the file gives to its own check', () => {
    expect(said(namedWidth, sized('Carryall 30', measure('width', 400, '40 cm')))[0]).toMatch(/^not-applicable/);
  });
  it('cannot tell without the width and does not apply to a number that is a year', () => {
    expect(said(namedWidth, sized('Weekender 50'))).toEqual(['cannot-tell: the page does not state the width']);
    expect(said(namedWidth, sized('Weekender 1984', measure('width', 400, '40 cm')))[0]).toMatch(/^not-applicable/);
  });
});
