import { describe, expect, it } from 'vitest';
import { conditionWordsAgree } from '../../../src/check/condition-words-agree';
import { findClaims } from '../../../src/claim';
import { claim, facts, said, stated, withPhotos } from './sample';

describe('condition-words-agree', () => {
  const wearIn = (words: string) =>
    findClaims(withPhotos(1, { description: stated(words) }), []).filter(({ kind }) => kind === 'wear');
  const brandNew = claim('condition', 'brand new', { condition: 'new' });
  it('doubts a new piece with scratches', () => {
    expect(said(conditionWordsAgree, facts({ claims: [brandNew, ...wearIn('Brand new, some scratches')] }))).toEqual([
      'doubt: The listing says “brand new” and also “scratches”.',
    ]);
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
    expect(said(conditionWordsAgree, facts({ claims: [data, ...wearIn('Some scratches')] }))).toEqual([
      'doubt: The page’s data say new, and the listing says “scratches”.',
    ]);
  });
  it('is silent when only the marketplace’s field calls an unworn piece used', () => {
    const used = {
      ...claim('condition', 'used', { condition: 'used' }),
      at: { field: 'data' as const, start: 0, end: 4 },
    };
    const never = claim('condition', 'never worn', { condition: 'unused' });
    expect(said(conditionWordsAgree, facts({ claims: [never, used] }))).toEqual(['silent']);
  });
  it('is silent when wear is denied', () => {
    expect(said(conditionWordsAgree, facts({ claims: [brandNew, ...wearIn('Brand new, no scratches')] }))).toEqual([
      'silent',
    ]);
    expect(said(conditionWordsAgree, facts({ claims: [brandNew, ...wearIn('Neu, keine Kratzer')] }))).toEqual([
      'silent',
    ]);
  });
  it('does not apply to a used piece', () => {
    expect(said(conditionWordsAgree, facts({ claims: wearIn('Some scratches') }))[0]).toMatch(/^not-applicable/);
  });
});
