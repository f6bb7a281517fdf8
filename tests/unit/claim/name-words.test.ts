import { describe, expect, it } from 'vitest';
import { findClaims, likelyMakerName, possibleMakerName } from '../../../src/claim';
import { listingOf } from './listing-of';

describe('a name that no file knows', () => {
  const likely = (title: string, text = 'A bag.') => likelyMakerName(listingOf(title, text, null));
  it.each([
    ['黒のバッグ 藤村鞄店 レザー', '藤村鞄店'],
    ['レザー トート 山際製作所', '山際製作所'],
    ['Bag by Oriel Thackeray', 'Oriel Thackeray'],
    ['Brown leather satchel', null],
    ['[VDS] Sac Aubrac 28', 'Aubrac'],
    ['(WTS) Halvard satchel', 'Halvard'],
    ['VDS sac Aubrac 28', 'Aubrac'],
    ['[AFS] brown leather satchel', null],
    // A whole name in brackets is one, also in capitals.
    ['[Aubrac] sac 28', 'Aubrac'],
    ['[AUBRAC] sac 28', 'AUBRAC'],
    ['AFT satchel', 'AFT'],
  ])('in a title: %s', (title, name) => expect(likely(title)).toBe(name));
  it('in a text, behind a word for a brand', () => {
    expect(likely('Brown bag', 'A bag of the brand Thornaby, of leather.')).toBe('Thornaby');
    expect(likely('Brown bag', 'A bag of leather.')).toBeNull();
  });
  it('whatever has the form of a name, where nothing says more', () => {
    const possible = (text: string) => possibleMakerName(listingOf('Brown bag', text, null));
    expect(possible('My old bag comes from a shop in town, Thornaby it was.')).toBe('Thornaby');
    expect(possible('My old bag comes from a shop in town.')).toBeNull();
  });
});

describe('one or two words of a title behind what the piece is', () => {
  const makers = (title: string) =>
    findClaims(listingOf(title, 'Brown.', null), []).flatMap((claim) => (claim.kind === 'maker' ? [claim.maker] : []));
  it.each([
    ['Leather satchel Halvard Finch', ['Halvard Finch']],
    ['Leather satchel Halvard & Finch', ['Halvard & Finch']],
    ['Leather satchel Finch Portugal', []],
    ['Leather satchel Finch brown', ['Finch']],
    ['Borsa in cuoio Brescagli', ['Brescagli']],
    ['Sac en cuir Aubrac', ['Aubrac']],
    ['Tasche aus Leder Bergmoser', ['Bergmoser']],
    ['Borsa in pelle Firenze', []],
    ['Sac en cuir Marron', []],
    ['Leather satchel brown Finch', []],
    ['Halvard Finch', []],
  ])('are a maker where no list knows them, and no place is among them: %s', (title, wanted) =>
    expect(makers(title)).toEqual(wanted),
  );
});
