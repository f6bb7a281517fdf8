import { describe, expect, it } from 'vitest';
import { sizePlausible } from '../../../src/check/size-plausible';
import { facts, said, stated, withPhotos } from './sample';

describe('size-plausible', () => {
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

  it('doubts a width of nearly a metre and more', () => {
    expect(said(sizePlausible, sized('', measure('width', 3000, '300 cm')))).toEqual([
      'doubt: The width is stated as “300 cm” = 300 cm (118.1 in).',
    ]);
  });
  it('doubts a height of two centimetres', () => {
    expect(said(sizePlausible, sized('', measure('height', 21, '21 mm')))).toEqual([
      'doubt: The height is stated as “21 mm” = 2.1 cm (0.8 in).',
    ]);
  });
  it('is silent on a usual size and cannot tell without any', () => {
    expect(said(sizePlausible, sized('', measure('width', 300, '30 cm')))).toEqual(['silent']);
    expect(said(sizePlausible, sized(''))).toEqual(['cannot-tell: the page does not state the measurements']);
  });
});
