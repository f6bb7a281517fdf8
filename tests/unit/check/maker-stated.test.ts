import { describe, expect, it } from 'vitest';
import { makerStated } from '../../../src/check/maker-stated';
import { claim, facts, onlyFinding, said, stated, withPhotos } from './sample';

describe('maker-stated', () => {
  const maker = (name: string) => ({ ...claim('maker', name, { maker: name }), id: name });
  it('misses a maker', () => {
    const listing = withPhotos(1, {
      title: stated('Vintage brown leather shoulder bag, 1990s, very good condition'),
      description: stated('Brown leather bag of the 1990s, well used. Made in Italy. Width 33 cm.'),
    });
    expect(said(makerStated, facts({ listing }))).toEqual(['gap: The listing names no maker.']);
    const unbranded = { ...listing, maker: stated('Unbranded') };
    expect(said(makerStated, facts({ listing: unbranded }))).toEqual(['gap: The listing names no maker.']);
  });
  it.each([
    ['Velmont Roost bag in brown leather', 'Brown leather, well kept.', 'Velmont'],
    ['velmont tote brown', '', 'velmont'],
    ['Sac Velmont en cuir marron, années 1990', '', 'Velmont'],
    ['Braune Ledertasche Velmont, sehr guter Zustand', '', 'Velmont'],
    ['Brown leather bag', 'A bag by Velmont, bought new.', 'Velmont'],
    ['Brown leather bag', 'Velmont bag in brown leather.', 'Velmont'],
    ['ヴェルモン ハンドバッグ', '', 'ヴェルモン'],
  ])('asks nobody who made a piece whose maker is named and has no file: %s %s', (title, text, name) => {
    const listing = withPhotos(1, { title: stated(title), description: text === '' ? [] : stated(text) });
    expect(said(makerStated, facts({ listing }))).toEqual([
      `cannot-tell: whether “${name}” is the maker: no maker file gives this name`,
    ]);
  });
  it('is silent of a maker in the page’s own field, with or without a file', () => {
    expect(said(makerStated, facts({ listing: withPhotos(1, { maker: stated('Velmont') }) }))).toEqual(['silent']);
  });
  it('does not take a part of a word for the name', () => {
    expect(said(makerStated, facts({ claims: [maker('Tessaro Vell'), maker('Vel')] }))).toEqual([
      'doubt: The listing names several makers: “Tessaro Vell” and “Vel”.',
    ]);
  });
  it('doubts several makers', () => {
    expect(said(makerStated, facts({ claims: [maker('Ondrasse'), maker('Tessaro Vell')] }))).toEqual([
      'doubt: The listing names several makers: “Ondrasse” and “Tessaro Vell”.',
    ]);
  });
  it('takes a longer form of the name for the same', () => {
    const claims = [maker('Ondrasse'), maker('ONDRASSE Bruxelles')];
    expect(said(makerStated, facts({ claims }))).toEqual(['silent']);
    expect(said(makerStated, facts({ claims: claims.reverse() }))).toEqual(['silent']);
  });
  it('names four of many, and rests on what each says', () => {
    const names = ['Ondrasse', 'Tessaro Vell', 'Velmont', 'Roost', 'Harrow'];
    const finding = onlyFinding(makerStated, facts({ claims: names.map(maker) }));
    expect([finding.data, finding.evidence]).toEqual([
      { makers: names.slice(0, 4) },
      names.slice(0, 4).map((name) => `quality-${name}`),
    ]);
    expect(finding.claims).toEqual(names);
  });
});
