import { describe, expect, it } from 'vitest';
import { stampEvenness } from '../../../src/check/stamp-evenness';
import { facts, kv0915, readPhoto, said, stampLine } from './sample';

describe('stamp-evenness', () => {
  const measured = (what: 'depth-slope' | 'pitch-spread', value: number, uncertainty: number) =>
    facts({
      decodings: [kv0915],
      photos: [
        readPhoto('p1', {
          lines: [stampLine('p1', 'KV0915', { measurements: [{ what, value, uncertainty, unit: 'share' }] })],
        }),
      ],
    });
  it('leaves open depth that surely changes along the stamp', () => {
    expect(said(stampEvenness, measured('depth-slope', -0.9, 0.1))).toEqual([
      'gap: The stamp in photo 1 looks uneven: its depth changes from one end to the other. One photo cannot tell whether that is the light, wear or the way it was struck.',
    ]);
  });
  it('leaves open surely uneven spacing', () => {
    expect(said(stampEvenness, measured('pitch-spread', 0.6, 0.1))).toEqual([
      'gap: The stamp in photo 1 looks uneven: its characters are unevenly spaced. One photo cannot tell whether that is the light, wear or the way it was struck.',
    ]);
  });
  it('is silent when the measurement is unsure or small', () => {
    expect(said(stampEvenness, measured('depth-slope', 0.9, 0.3))).toEqual(['silent']);
    expect(said(stampEvenness, measured('pitch-spread', 0.1, 0.01))).toEqual(['silent']);
  });
  it('cannot tell without a read stamp', () => {
    expect(said(stampEvenness, facts())).toEqual(['cannot-tell: no stamp was read from a photo']);
  });
});
