import { describe, expect, it } from 'vitest';
import { codeFitsMaker } from '../../../src/check/code-fits-maker';
import { monthSpan } from '../../../src/span';
import { decoded, facts, kv0915, misfit, nearest, ondrasse, onlyFinding, reading, said, unreadPhoto } from './sample';

describe('code-fits-maker', () => {
  it('agrees with a code that reads, naming photo, date and place', () => {
    expect(said(codeFitsMaker, facts({ decodings: [kv0915] }))).toEqual([
      "agreement: The stamp in photo 1 reads KV0915: January 1995, Belgium, by Ondrasse's system “interleaved month”.",
    ]);
  });
  it('doubts a code that fits no system and names the nearest one', () => {
    const code = decoded('QX77', [], { nearest: [nearest('KV0915', 0.1)] });
    expect(said(codeFitsMaker, facts({ decodings: [code] }))).toEqual([
      "doubt: The stamp in photo 1 reads QX77, which fits none of Ondrasse's code systems. The nearest code that does is KV0915.",
    ]);
  });
  it('leaves an impossible month to its own check', () => {
    expect(said(codeFitsMaker, facts({ decodings: [decoded('KV1995', [], { misfits: [misfit('KV1995')] })] }))).toEqual(
      ['silent'],
    );
  });
  it('does not count the reading of another maker', () => {
    const other = reading('KV0915', monthSpan(1995, 1), { system: { maker: 'Tessaro Vell', id: 'x' } });
    expect(onlyFinding(codeFitsMaker, facts({ decodings: [decoded('KV0915', [other])] })).kind).toBe('doubt');
  });
  it('cannot tell from a stamp that is not certain enough', () => {
    expect(said(codeFitsMaker, facts({ decodings: [{ ...kv0915, accepted: false }] }))).toEqual([
      'cannot-tell: the stamp in photo 1 could not be read with enough certainty',
    ]);
  });
  it('cannot tell when the photo was not read', () => {
    expect(said(codeFitsMaker, facts({ photos: [unreadPhoto('p1')] }))).toEqual([
      'cannot-tell: 1 of 1 photos not read: this file is not an image that can be read: its first bytes are of no known photo format',
    ]);
  });
  it('does not apply without a code in photos that were all read', () => {
    expect(said(codeFitsMaker, facts())).toEqual(['not-applicable: no code is shown or quoted']);
  });
  it('cannot tell without a maker file', () => {
    expect(said(codeFitsMaker, facts({ maker: null, decodings: [kv0915] }))).toEqual([
      'cannot-tell: no maker file is known for this piece',
    ]);
  });
  it('does not apply where the file has no code systems', () => {
    const maker = { ...ondrasse, codeSystems: [] };
    expect(codeFitsMaker.judge(facts({ maker, decodings: [kv0915] })).outcome).toBe('not-applicable');
  });
});
