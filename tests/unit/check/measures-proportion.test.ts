import { describe, expect, it } from 'vitest';
import { measuresProportion } from '../../../src/check/measures-proportion';
import type { Measure } from '../../../src/listing/types';
import { facts, ondrasse, onlyFinding, said, stated, withPhotos } from './sample';

type Sizes = Partial<Record<'width' | 'height' | 'depth', number>>;
/** A listing that states sides in millimetres, each as coarse as `precisionMm`. */
const sized = (title: string, sizes: Sizes, unit: Measure['unit'] = 'cm', precisionMm = 1, maker = ondrasse) =>
  facts({
    maker,
    listing: withPhotos(1, {
      title: stated(title),
      measures: Object.entries(sizes).flatMap(([dimension, mm]) =>
        stated<Measure>({ dimension: dimension as keyof Sizes, mm, precisionMm, unit, words: `${mm / 10} cm` }),
      ),
    }),
  });

describe('measures-proportion, the model’s size known', () => {
  it('names inches written as centimetres when all three sides are 2.54 times too small', () => {
    expect(said(measuresProportion, sized('Carryall 30', { width: 118, height: 83, depth: 67 }))).toEqual([
      'doubt: The listing states width 11.8 cm (4.6 in), height 8.3 cm (3.3 in) and depth 6.7 cm (2.6 in), each smaller by a factor of 2.54 than the side of a Carryall 30: inches written as centimetres would explain it.',
    ]);
  });
  it('names centimetres written as inches, and millimetres written as centimetres', () => {
    const inches = sized('Carryall 30', { width: 762, height: 533, depth: 432 }, 'in');
    expect(onlyFinding(measuresProportion, inches).statement).toMatch(
      /each 2\.54 times the side of a Carryall 30: centimetres written as inches/,
    );
    expect(onlyFinding(measuresProportion, sized('Carryall 30', { width: 3000, height: 2100 })).statement).toMatch(
      /millimetres written as centimetres/,
    );
  });
  it('is silent when the sides fit, and when no single unit explains them', () => {
    expect(said(measuresProportion, sized('Carryall 30', { width: 300, height: 212, depth: 165 }))).toEqual(['silent']);
    expect(said(measuresProportion, sized('Carryall 30', { width: 118, height: 210, depth: 170 }))).toEqual(['silent']);
    expect(said(measuresProportion, sized('Carryall 30', { width: 380, height: 260, depth: 190 }))).toEqual(['silent']);
  });
  it('cannot tell from one side', () => {
    expect(said(measuresProportion, sized('Carryall 30', { width: 118 }))).toEqual([
      'cannot-tell: the page does not state two of width, height and depth',
    ]);
  });
});

describe('measures-proportion, the model’s own size unknown', () => {
  it('doubts a shape that no size of the model has', () => {
    expect(said(measuresProportion, sized('Ondrasse Carryall 40', { width: 400, height: 120, depth: 220 }))).toEqual([
      'doubt: Width 40 cm (15.7 in) is 3.3 times the height 12 cm (4.7 in); Carryall 30 has 1.4 times.',
    ]);
  });
  it('is silent on the same shape in another size, and on one that is a fifth off', () => {
    expect(said(measuresProportion, sized('Carryall 40', { width: 400, height: 280, depth: 226 }))).toEqual(['silent']);
    expect(said(measuresProportion, sized('Carryall 40', { width: 400, height: 245, depth: 200 }))).toEqual(['silent']);
  });
  it('holds a model of the file without a size against its relatives', () => {
    const maker = { ...ondrasse, models: [...ondrasse.models, { name: 'Carryall 50' }] };
    expect(
      onlyFinding(measuresProportion, sized('Carryall 50', { width: 500, height: 150 }, 'cm', 1, maker)).kind,
    ).toBe('doubt');
  });
  it('does not apply to a model that nothing on file is named like', () => {
    expect(said(measuresProportion, sized('A bag', { width: 400, height: 100 }))).toEqual([
      'not-applicable: the maker file gives no size of the model or of one named like it',
    ]);
  });
});
