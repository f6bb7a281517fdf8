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
    ).toEqual(['agreement: The stated width 30.5 cm (12 in) and height 21 cm (8.3 in) are those of a Carryall 30.']);
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
});
