import { describe, expect, it } from 'vitest';
import { partsShown } from '../../../src/check/parts-shown';
import { facts, onlyFinding, said, stated, withPhotos } from './sample';

describe('parts-shown', () => {
  it('names the parts of the model that there are too few photos for', () => {
    expect(said(partsShown, facts({ listing: withPhotos(3, { title: stated('Ondrasse Carryall 30') }) }))).toEqual([
      'gap: 3 photos for 5 parts to be seen: the front, the base, the inside, the handles and the stamp.',
    ]);
  });
  it('is silent with a photo for each part', () => {
    expect(said(partsShown, facts({ listing: withPhotos(5, { title: stated('Ondrasse Carryall 30') }) }))).toEqual([
      'silent',
    ]);
  });
  it('asks for the parts of any bag when the model or the maker is unknown', () => {
    const finding = onlyFinding(partsShown, facts({ maker: null, listing: withPhotos(1) }));
    expect(finding.statement).toMatch(/^1 photo for 8 parts to be seen: the front, the back,/);
  });
});
