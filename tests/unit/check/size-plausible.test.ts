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

  it('doubts a width of three metres', () => {
    expect(said(sizePlausible, sized('', measure('width', 3000, '300 cm')))).toEqual([
      'doubt: The width is stated as “300 cm” = 300 cm (118.1 in), which is over 2 m.',
    ]);
  });
  it('doubts a height of a few millimetres', () => {
    expect(said(sizePlausible, sized('', measure('height', 2.1, '2.1 mm')))).toEqual([
      'doubt: The height is stated as “2.1 mm” = 0.2 cm (0.1 in), which is under 1 cm.',
    ]);
  });
  it('is silent on a belt, a key ring, a garment bag and a trunk', () => {
    for (const [words, mm] of [
      ['105 cm', 1050],
      ['2 cm', 20],
      ['130 cm', 1300],
      ['96 cm', 960],
    ] as const)
      expect(said(sizePlausible, sized('', measure('width', mm, words)))).toEqual(['silent']);
  });
  it('is silent on a usual size and cannot tell without any', () => {
    expect(said(sizePlausible, sized('', measure('width', 300, '30 cm')))).toEqual(['silent']);
    expect(said(sizePlausible, sized(''))).toEqual(['cannot-tell: the page does not state the measurements']);
  });
});
