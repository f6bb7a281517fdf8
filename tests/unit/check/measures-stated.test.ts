import { describe, expect, it } from 'vitest';
import { measuresStated } from '../../../src/check/measures-stated';
import { facts, said, stated, withPhotos } from './sample';

describe('measures-stated', () => {
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

  it('misses measurements, a strap alone being none', () => {
    expect(said(measuresStated, sized(''))).toEqual(['gap: The listing states no width, height or depth.']);
    expect(said(measuresStated, sized('', measure('strap', 900, '90 cm')))).toEqual([
      'gap: The listing states no width, height or depth.',
    ]);
  });
  it('is silent with one side', () => {
    expect(said(measuresStated, sized('', measure('width', 300, '30 cm')))).toEqual(['silent']);
  });
});
