import { describe, expect, it } from 'vitest';
import { codeShown } from '../../../src/check/code-shown';
import { claim, facts, kv0915, madeIn, readPhoto, said, unreadPhoto } from './sample';

describe('code-shown', () => {
  it('misses a code that the maker stamped at the claimed time', () => {
    expect(said(codeShown, facts({ claims: [madeIn(1994)] }))).toEqual([
      'gap: The listing says “made in 1994”, when Ondrasse stamped (from 1980). No photo shows a code and the text quotes none.',
    ]);
  });
  it('doubts when the seller says that there is none', () => {
    const none = claim('no-code', 'there is no date code', {});
    expect(said(codeShown, facts({ claims: [madeIn(1994), none], photos: [unreadPhoto('p1')] }))).toEqual([
      'doubt: The listing says “made in 1994”, when Ondrasse stamped (from 1980), but the seller finds no code: “there is no date code”.',
    ]);
  });
  it('cannot tell while a photo is unread or too weak', () => {
    expect(said(codeShown, facts({ claims: [madeIn(1994)], photos: [unreadPhoto('p1')] }))).toEqual([
      'cannot-tell: 1 of 1 photos not read: this file is not an image that can be read: its first bytes are of no known photo format',
    ]);
    expect(said(codeShown, facts({ claims: [madeIn(1994)], photos: [readPhoto('p1', { tooWeak: true })] }))).toEqual([
      'cannot-tell: 1 of 1 photos too small or too blurred to show a stamp',
    ]);
  });
  it('is silent with a code and does not apply before the first stamps', () => {
    expect(said(codeShown, facts({ claims: [madeIn(1994)], decodings: [kv0915] }))).toEqual(['silent']);
    expect(said(codeShown, facts({ claims: [madeIn(1972)] }))).toEqual([
      'not-applicable: Ondrasse did not surely stamp at 1972',
    ]);
  });
});
