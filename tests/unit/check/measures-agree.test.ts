import { describe, expect, it } from 'vitest';
import { measuresAgree } from '../../../src/check/measures-agree';
import { facts, said, stated, withPhotos } from './sample';

describe('measures-agree', () => {
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

  it('doubts one side with two lengths', () => {
    expect(
      said(measuresAgree, sized('', measure('width', 300, '30 cm'), measure('width', 355.6, '14 in', 12.7))),
    ).toEqual(['doubt: The width is stated as “30 cm” = 30 cm (11.8 in) and as “14 in” = 35.6 cm (14 in).']);
  });
  it('is silent when rounding explains it, and on different sides', () => {
    expect(
      said(measuresAgree, sized('', measure('width', 300, '30 cm'), measure('width', 304.8, '12 in', 12.7))),
    ).toEqual(['silent']);
    expect(said(measuresAgree, sized('', measure('width', 300, '30 cm'), measure('height', 200, '20 cm')))).toEqual([
      'silent',
    ]);
  });
});
