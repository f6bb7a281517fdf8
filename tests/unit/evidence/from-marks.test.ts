import { describe, expect, it } from 'vitest';
import type { Claim, Part } from '../../../src/claim/types';
import { fromClaims } from '../../../src/evidence/from-claims';
import { fromMarks, isOnReplacedPart } from '../../../src/evidence/from-marks';
import type { MarkRead } from '../../../src/mark/types';
import { claim } from '../check/sample';
import { mark } from './samples';

const of = (marks: MarkRead[], claims: Claim[] = []) => fromMarks(marks, claims, fromClaims(claims));

describe('a mark', () => {
  it('is told whole, as it was read on a photo and as the listing words it', () => {
    const said = {
      about: 'date-and-place',
      from: { kind: 'mark', id: 'm1' },
      spans: [{ from: '1949-05-23', to: '1990-10-03', precision: 'range' }],
      places: ['DE'],
      source: { kind: 'published', text: 'a document' },
    };
    const says = { kind: 'mark', words: ' Made  in\nWest Germany ', tells: mark('m1').says };
    const words = says.words;
    expect(of([mark('m1', { words })])).toEqual([
      {
        ...said,
        id: 'mark-m1',
        basis: 'mark:made in west germany',
        strength: 'hard',
        says: { ...says, inText: false },
      },
    ]);
    expect(of([mark('m1', { words, foundIn: 'listing', photoId: null })])).toEqual([
      { ...said, id: 'mark-m1', basis: 'mark:made in west germany', strength: 'soft', says: { ...says, inText: true } },
    ]);
  });

  it('is as strong as it was read where it is on the piece and verified', () => {
    const strength = (over: Partial<MarkRead>) => of([mark('m1', over)])[0]?.strength;
    expect(strength({})).toBe('hard');
    expect(strength({ strength: 'soft' })).toBe('soft');
    expect(strength({ verified: false })).toBe('soft');
    expect(strength({ foundIn: 'listing' })).toBe('soft');
  });

  it('tells of a date or of a place, or is not told', () => {
    const about = (over: Partial<MarkRead>) => of([mark('m1', over)]).map((piece) => piece.about);
    expect(about({ spans: [] })).toEqual(['place']);
    expect(about({ places: [] })).toEqual(['date']);
    expect(about({ spans: [], places: [] })).toEqual([]);
  });

  it('of a fastener is none of the piece where a zip, a lock or the metal parts were replaced', () => {
    const on = (...parts: Part[]) => isOnReplacedPart({ mark: 'fastener' }, new Set(parts));
    expect((['zip', 'lock', 'hardware', 'handle', 'lining'] as const).map((part) => on(part))).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
    expect(on()).toBe(false);
    expect(isOnReplacedPart({ mark: 'origin-wording' }, new Set(['zip']))).toBe(false);
    const replaced = claim('replaced', 'r', { parts: ['handle', 'zip'] });
    expect(of([mark('m1', { mark: 'fastener' }), mark('m2')], [replaced]).map(({ id }) => id)).toEqual(['mark-m2']);
  });

  it('in the words of the listing is one fact with the origin that they claim, as far as the words go', () => {
    const origin = (words: string, id = 'o') => claim('origin', words, { place: 'DE' }, id);
    const basis = (words: string, claims: Claim[], over: Partial<MarkRead> = {}) =>
      of([mark('m1', { words, foundIn: 'listing', photoId: null, ...over })], claims)[0]?.basis;
    expect(basis('made in West Germany', [origin('Made  in west germany')])).toBe('claimed-origin:DE');
    expect(basis('West Germany', [origin('made in West Germany')])).toBe('claimed-origin:DE');
    expect(basis('made in West Germany 1970', [origin('West Germany')])).toBe('claimed-origin:DE');
    expect(basis('Made in Spain', [origin('West Germany')])).toBe('mark:made in spain');
    expect(basis('Made in Spain', [claim('origin', 'Italy', { place: 'IT' }, 'a'), origin('Spain', 'b')])).toBe(
      'claimed-origin:DE',
    );
    expect(basis('West Germany', [origin('West Germany')], { foundIn: 'photo' })).toBe('mark:west germany');
    expect(basis('West Germany', [claim('model', 'West Germany', { model: 'x' })])).toBe('mark:west germany');
  });
});
