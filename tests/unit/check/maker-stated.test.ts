import { describe, expect, it } from 'vitest';
import { makerStated } from '../../../src/check/maker-stated';
import { claim, facts, said, stated, withPhotos } from './sample';

describe('maker-stated', () => {
  const maker = (name: string) => ({ ...claim('maker', name, { maker: name }), id: name });
  it('misses a maker', () => {
    expect(said(makerStated, facts())).toEqual(['gap: The listing names no maker.']);
  });
  it('doubts several makers', () => {
    expect(said(makerStated, facts({ claims: [maker('Ondrasse'), maker('Tessaro Vell')] }))).toEqual([
      'doubt: The listing names several makers: “Ondrasse” and “Tessaro Vell”.',
    ]);
  });
  it('takes a longer form of the name for the same', () => {
    const listing = withPhotos(1, { maker: stated('ONDRASSE Bruxelles') });
    expect(said(makerStated, facts({ listing, claims: [maker('Ondrasse')] }))).toEqual(['silent']);
  });
});
