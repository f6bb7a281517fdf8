import { describe, expect, it } from 'vitest';
import { stampLegible } from '../../../src/check/stamp-legible';
import { facts, kv0915, onlyFinding, said, unreadPhoto } from './sample';

describe('stamp-legible', () => {
  it('asks for a sharper photo of an unclear stamp', () => {
    const finding = onlyFinding(stampLegible, facts({ decodings: [{ ...kv0915, accepted: false }] }));
    expect(finding.statement).toBe(
      'The stamp in photo 1 is too unclear to read. The best guess, KV0915, is not certain enough to count.',
    );
    expect(finding.asks.map(({ topic, wants }) => [topic, wants])).toEqual([['stamp-photo', 'photo']]);
  });
  it('is silent once a code is read, or when none is shown', () => {
    expect(said(stampLegible, facts({ decodings: [kv0915, { ...kv0915, id: 'd2', accepted: false }] }))).toEqual([
      'silent',
    ]);
    expect(said(stampLegible, facts())).toEqual(['silent']);
  });
  it('cannot tell when no photo was read', () => {
    expect(said(stampLegible, facts({ photos: [unreadPhoto('p1')] }))[0]).toMatch(/^cannot-tell/);
  });
});
