import { describe, expect, it } from 'vitest';
import { conditionWordsAgree } from '../../../src/check/condition-words-agree';
import { claim, facts, said, stated, withPhotos } from './sample';

describe('condition-words-agree', () => {
  const text = (words: string) => withPhotos(1, { description: stated(words) });
  const brandNew = claim('condition', 'brand new', { condition: 'new' });
  it('doubts a new piece with scratches', () => {
    expect(
      said(conditionWordsAgree, facts({ listing: text('Brand new, some scratches'), claims: [brandNew] })),
    ).toEqual(['doubt: The listing says “brand new” and also “scratches”.']);
  });
  it('doubts two conditions that exclude each other', () => {
    const used = { ...claim('condition', 'well worn', { condition: 'worn' }), id: 'c2' };
    expect(said(conditionWordsAgree, facts({ claims: [brandNew, used] }))).toEqual([
      'doubt: The listing says “brand new” and also “well worn”.',
    ]);
  });
  it('tells what only the page’s data say as theirs, and quotes no term of theirs', () => {
    const data = {
      ...claim('condition', 'new', { condition: 'new' }),
      at: { field: 'data' as const, start: 0, end: 3 },
    };
    expect(said(conditionWordsAgree, facts({ listing: text('Some scratches'), claims: [data] }))).toEqual([
      'doubt: The page’s data say new, and the listing says “scratches”.',
    ]);
  });
  it('is silent when only the marketplace’s field calls an unworn piece used', () => {
    const used = {
      ...claim('condition', 'used', { condition: 'used' }),
      at: { field: 'data' as const, start: 0, end: 4 },
    };
    const never = claim('condition', 'never worn', { condition: 'unused' });
    expect(said(conditionWordsAgree, facts({ listing: text('Never worn'), claims: [never, used] }))).toEqual([
      'silent',
    ]);
  });
  it('is silent when wear is denied', () => {
    expect(said(conditionWordsAgree, facts({ listing: text('Brand new, no scratches'), claims: [brandNew] }))).toEqual([
      'silent',
    ]);
    expect(said(conditionWordsAgree, facts({ listing: text('Neu, keine Kratzer'), claims: [brandNew] }))).toEqual([
      'silent',
    ]);
  });
  it('does not apply to a used piece', () => {
    expect(said(conditionWordsAgree, facts({ listing: text('Some scratches') }))[0]).toMatch(/^not-applicable/);
  });
});
