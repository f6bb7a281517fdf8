import { describe, expect, it } from 'vitest';
import { stampLegible } from '../../../src/check/stamp-legible';
import type { Decoding } from '../../../src/code/types';
import { facts, kv0915, nearest, onlyFinding, said, unreadPhoto } from './sample';

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
  it('guesses what a system reads, else the text that the line has as it stands where something is left open, else the line', () => {
    const unclear = { ...kv0915, accepted: false };
    const near = (how: 'as-written' | 'differs', text: string) => ({ ...nearest(text, 0.5), how });
    const guess = (decoding: Partial<typeof unclear>) =>
      onlyFinding(stampLegible, facts({ decodings: [{ ...unclear, code: 'KV09I5', ...decoding }] })).data.guess;
    expect(guess({})).toBe('KV0915');
    expect(guess({ readings: [] })).toBe('KV09I5');
    const open: Decoding['open'] = [{ kind: 'may-go-on' }];
    const texts = [near('differs', 'KV0815'), near('as-written', 'KV0915')];
    expect(guess({ readings: [], nearest: texts })).toBe('KV09I5');
    expect(guess({ readings: [], nearest: texts, open })).toBe('KV0915');
    expect(guess({ readings: [], nearest: texts.slice(0, 1), open })).toBe('KV09I5');
  });
  it('says first that the line may go on, and asks for the whole of it; else that it may stand upside down', () => {
    const told = (...open: NonNullable<Decoding['open']>) => {
      const { data, asks } = onlyFinding(stampLegible, facts({ decodings: [{ ...kv0915, accepted: false, open }] }));
      return [data.open, data.other, asks.map(({ topic }) => topic)];
    };
    const [goesOn, turned] = [{ kind: 'may-go-on' as const }, { kind: 'upside-down' as const, text: 'S160AK' }];
    expect(told(goesOn)).toEqual(['may-go-on', undefined, ['whole-stamp']]);
    expect(told(turned)).toEqual(['upside-down', 'S160AK', ['stamp-photo']]);
    expect(told(turned, goesOn)).toEqual(['may-go-on', 'S160AK', ['whole-stamp']]);
  });
  it('cannot tell when no photo was read', () => {
    expect(said(stampLegible, facts({ photos: [unreadPhoto('p1')] }))[0]).toMatch(/^cannot-tell/);
  });
});
