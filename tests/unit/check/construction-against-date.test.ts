import { describe, expect, it } from 'vitest';
import { constructionAgainstDate } from '../../../src/check/construction-against-date';
import { yearSpan } from '../../../src/span';
import { claim, facts, kv0915, made, madeIn, ondrasse, onlyFinding, said } from './sample';

describe('construction-against-date', () => {
  const lining = (material: string) => claim('material', `${material} lining`, { part: 'lining', material });
  it('agrees with a lining of the time that the code gives', () => {
    expect(said(constructionAgainstDate, facts({ decodings: [kv0915], claims: [lining('olive twill')] }))).toEqual([
      "agreement: The listing says “olive twill lining”; Ondrasse's lining was olive twill from 1970 to 1999, and the stamp in photo 1 reads KV0915 (January 1995).",
    ]);
  });
  it('only doubts what a soft row speaks against', () => {
    expect(said(constructionAgainstDate, facts({ claims: [madeIn(1994), lining('suede')] }))).toEqual([
      "doubt: The listing says “suede lining”, but Ondrasse's lining was olive twill from 1970 to 1999, and it is said to be of “made in 1994”.",
    ]);
  });
  it('contradicts a part that a hard row dates years later', () => {
    const zip = claim('material', 'coil zip', { part: 'zip', material: 'coil zip' });
    expect(said(constructionAgainstDate, facts({ decodings: [kv0915], claims: [zip] }))).toEqual([
      'contradiction: The listing says “coil zip”, but Ondrasse used coil zip from 2001, and the stamp in photo 1 reads KV0915 (January 1995).',
    ]);
  });
  it('says that a part is later where the seller says so, and asks nothing of it', () => {
    const zip = claim('material', 'coil zip', { part: 'zip', material: 'coil zip' });
    const replaced = { parts: ['zip' as const], span: yearSpan(2016), invoice: true as const };
    const event = claim('replaced', 'zip replaced', replaced);
    const given = facts({ decodings: [kv0915], claims: [zip, event] });
    expect(said(constructionAgainstDate, given)).toEqual([
      'agreement: The listing says “coil zip”, and Ondrasse used coil zip from 2001, and the stamp in photo 1 reads KV0915 (January 1995): the part is later, as the seller says with “zip replaced” (2016, with an invoice or receipt).',
    ]);
    expect(onlyFinding(constructionAgainstDate, given)).toMatchObject({
      asks: [],
      claims: expect.arrayContaining([event.id]),
    });
    const plain = claim('replaced', 'zip replaced', { parts: ['zip'] });
    expect(said(constructionAgainstDate, facts({ decodings: [kv0915], claims: [zip, plain] }))[0]).toMatch(
      /as the seller says with “zip replaced”\.$/,
    );
  });
  it('says nothing of a replaced part that is of the time of the piece, nor of one that was mended, dyed or only supposed to be replaced', () => {
    const zip = claim('material', 'coil zip', { part: 'zip', material: 'coil zip' });
    const outcome = (event: Parameters<typeof claim<'replaced'>>[2], claims = [zip], more = {}) =>
      said(
        constructionAgainstDate,
        facts({ decodings: [kv0915], claims: [...claims, { ...claim('replaced', 'zip', event), ...more }] }),
      );
    expect(outcome({ parts: ['zip'], how: 'repaired' })).toEqual(['silent']);
    expect(outcome({ parts: ['zip'], how: 're-dyed' })).toEqual(['silent']);
    expect(outcome({ parts: ['zip'] }, [zip], { confidence: 0.4 })).toEqual(['silent']);
    expect(outcome({ parts: ['lining'] }, [lining('olive twill')])).toEqual(['silent']);
  });
  it('does not excuse another part than the one that was replaced', () => {
    const zip = claim('material', 'coil zip', { part: 'zip', material: 'coil zip' });
    const strap = claim('replaced', 'strap replaced', { parts: ['strap'] });
    expect(onlyFinding(constructionAgainstDate, facts({ decodings: [kv0915], claims: [zip, strap] })).kind).toBe(
      'contradiction',
    );
  });
  it('does not apply where the file says nothing of what the replaced parts are of', () => {
    const both = claim('replaced', 'zip and lining replaced', { parts: ['zip', 'lining'] });
    expect(said(constructionAgainstDate, facts({ decodings: [kv0915], claims: [lining('cotton'), both] }))).toEqual([
      'not-applicable: the listing says that these parts were replaced: “zip and lining replaced”',
    ]);
  });
  it('only doubts a part of a piece that was restored nobody says where', () => {
    const zip = claim('material', 'coil zip', { part: 'zip', material: 'coil zip' });
    const restored = claim('replaced', 'restored in 2019', { parts: [] });
    expect(onlyFinding(constructionAgainstDate, facts({ decodings: [kv0915], claims: [zip, restored] })).kind).toBe(
      'doubt',
    );
  });
  it('only doubts the same against a hedged date', () => {
    const zip = claim('material', 'coil zip', { part: 'zip', material: 'coil zip' });
    const nineties = made('1990s', '1990', '1998', { precision: 'decade' });
    expect(onlyFinding(constructionAgainstDate, facts({ claims: [nineties, zip] })).kind).toBe('doubt');
  });
  it('is silent on a material that the file does not name', () => {
    expect(said(constructionAgainstDate, facts({ claims: [madeIn(1994), lining('cotton')] }))).toEqual(['silent']);
  });
  it('cannot tell without any date and does not apply without a material', () => {
    expect(said(constructionAgainstDate, facts({ claims: [lining('suede')] }))).toEqual([
      'cannot-tell: neither a code nor the listing gives a date',
    ]);
    expect(said(constructionAgainstDate, facts())).toEqual(['not-applicable: the listing names no material of a part']);
  });
  it('only doubts a second material of a part whose right one the listing names too', () => {
    const maker = {
      ...ondrasse,
      construction: [
        {
          part: 'hardware' as const,
          is: 'solid brass',
          also: ['brass'],
          not: ['nickel'],
          used: ['1970', null] as [string, null],
          strength: 'hard' as const,
          sources: ['invented'],
        },
      ],
    };
    const metal = (material: string) => ({
      ...claim('material', material, { part: 'hardware', material }),
      id: material,
    });
    const kinds = (...materials: string[]) =>
      said(constructionAgainstDate, facts({ maker, decodings: [kv0915], claims: materials.map(metal) })).map(
        (one) => one.split(':')[0],
      );
    expect(kinds('nickel hardware')).toEqual(['contradiction']);
    expect(kinds('nickel hardware', 'brass hardware')).toEqual(['doubt', 'agreement']);
  });
});
