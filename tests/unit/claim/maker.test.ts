import { describe, expect, it } from 'vitest';
import { findClaims, judgingFiles, statedMaker } from '../../../src/claim';
import { listingOf, ondrasse } from './listing-of';

describe('what the page has in its field for the maker', () => {
  const stated = (value: string) =>
    findClaims(
      listingOf('A bag', 'Brown.', 'en', { maker: [{ value, origin: 'json-ld', where: 'x', confidence: 0.9 }] }),
      [ondrasse],
    ).flatMap((claim) => (claim.kind === 'maker' ? [claim.maker] : []));
  it.each([
    ['Ondrasse', 'Ondrasse'],
    ['House of Ondrasse 1994', 'Ondrasse'],
    ['Ondrasse Bruxelles Ltd', 'Ondrasse'],
    ['Ondrasse, ondrasse bruxelles', 'Ondrasse'],
    ['Ondrasse bags by Tavistock', 'Ondrasse bags by Tavistock'],
    ['Tavistock', 'Tavistock'],
  ])('%s: %s', (value, maker) => expect(stated(value)).toEqual([maker]));
  it('nobody', () => expect(stated('unbranded')).toEqual([]));
});

describe('who is stated as the maker', () => {
  const velmont = { ...ondrasse, maker: 'Velmont', aliases: [] };
  const said = (maker: string, field: string) => ({ kind: 'maker', maker, at: { field, start: 0, end: 1 } }) as never;
  const stated = (...claims: never[]) => statedMaker(claims, [ondrasse, velmont]);

  it('by the buyer, else by the page’s field, else in the title, else in the text', () => {
    const all = [said('Velmont', 'text'), said('Ondrasse', 'title'), said('Holt', 'data'), said('Velmont', 'user')];
    expect(stated(...all)?.names).toEqual(['Velmont']);
    expect(stated(...all.slice(0, 3))).toEqual({ names: ['Holt'], file: null });
    expect(stated(...all.slice(0, 2))).toEqual({ names: ['Ondrasse'], file: ondrasse });
    expect(stated(...all.slice(0, 1))).toEqual({ names: ['Velmont'], file: velmont });
    expect(stated()).toBeNull();
  });

  it('one name however it is written; of two no file may judge', () => {
    expect(stated(said('Ondrasse', 'title'), said('ONDRASSE', 'title'))?.file).toBe(ondrasse);
    const two = stated(said('Ondrasse', 'description'), said('Velmont', 'reply'));
    expect(two).toEqual({ names: ['Ondrasse', 'Velmont'], file: null });
    expect(judgingFiles(two, [ondrasse, velmont])).toEqual([]);
  });

  it('all files judge where nobody is stated, and the stated maker’s own where somebody is', () => {
    expect(judgingFiles(null, [ondrasse, velmont])).toEqual([ondrasse, velmont]);
    expect(judgingFiles({ names: ['Velmont'], file: velmont }, [ondrasse, velmont])).toEqual([velmont]);
  });
});
