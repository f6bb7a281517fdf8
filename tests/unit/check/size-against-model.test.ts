import { describe, expect, it } from 'vitest';
import { sizeAgainstModel } from '../../../src/check/size-against-model';
import { facts, onlyFinding, said, stated, withPhotos } from './sample';

describe('size-against-model', () => {
  const measure = (dimension: 'width' | 'height' | 'depth', mm: number, words: string, precisionMm = 5) => ({
    dimension,
    mm,
    precisionMm,
    unit: 'cm' as const,
    words,
  });
  const sized = (title: string, ...measures: ReturnType<typeof measure>[]) =>
    facts({ listing: withPhotos(1, { title: stated(title), measures: measures.flatMap((one) => stated(one)) }) });
  it('agrees within the tolerance', () => {
    expect(
      said(
        sizeAgainstModel,
        sized('Ondrasse Carryall 30', measure('width', 305, '30.5 cm'), measure('height', 210, '21 cm')),
      ),
    ).toEqual([
      'agreement: The listing states width 30.5 cm (12 in) and height 21 cm (8.3 in), which a Carryall 30 has.',
    ]);
  });
  it('doubts another width, in both units', () => {
    expect(said(sizeAgainstModel, sized('Ondrasse Carryall 30', measure('width', 254, '10 in', 12.7)))).toEqual([
      'doubt: The listing says Carryall 30, but states width “10 in” = 25.4 cm (10 in) and not 30 cm (11.8 in).',
    ]);
  });
  it('allows a measure as coarse as it is stated', () => {
    expect(onlyFinding(sizeAgainstModel, sized('Carryall 30', measure('width', 279.4, '11 in', 12.7))).kind).toBe(
      'agreement',
    );
  });
  it('does not apply to an unknown model and cannot tell without a measurement', () => {
    expect(said(sizeAgainstModel, sized('A bag', measure('width', 254, '10 in')))).toEqual([
      'not-applicable: the listing names no model of the maker file',
    ]);
    expect(said(sizeAgainstModel, sized('Carryall 30'))).toEqual([
      'cannot-tell: the page does not state width, height or depth',
    ]);
  });
  it('takes a row without names in the order that fits the model best', () => {
    const row = (...sizes: number[]) => {
      const measures = sizes.map((cm) => ({ ...measure('width', cm * 10, `${cm} cm`), dimension: 'unknown' as const }));
      const listing = withPhotos(1, { title: stated('Carryall 30'), measures: measures.flatMap((one) => stated(one)) });
      return facts({ listing });
    };
    expect(onlyFinding(sizeAgainstModel, row(30, 21, 17)).kind).toBe('agreement');
    expect(onlyFinding(sizeAgainstModel, row(21, 30, 17)).kind).toBe('agreement');
    expect(said(sizeAgainstModel, row(40, 21, 17))).toEqual([
      'doubt: The listing says Carryall 30, but states width “40 cm” = 40 cm (15.7 in) and not 30 cm (11.8 in).',
    ]);
  });
});
