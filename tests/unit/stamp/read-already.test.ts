import { describe, expect, it } from 'vitest';
import { type Quad, turnedQuad } from '../../../src/photo';
import {
  type PlaceRead,
  settledFromAskew,
  settledFromOtherSide,
  settledFromSameSide,
} from '../../../src/stamp/read-already';

const box = (degrees: number, x = 300): Quad => turnedQuad({ x, y: 200 }, 120, 30, degrees);

/** A place that was read as this text, or as nothing. */
function read(text: string, probability = 1, quad = box(0)): PlaceRead {
  const free = { text, probability };
  const line = { id: 'l', photoId: 'p', quad, stampScore: 1, engine: 'net' as const, free, measurements: [] };
  return { quad, line: text === '' ? null : { ...line, lattice: { steps: [] } } };
}

describe('a place that a further look finds', () => {
  it('is new where nothing was read, or what was read runs another way', () => {
    for (const settled of [settledFromSameSide, settledFromOtherSide]) {
      expect(settled(box(0), [])).toBe(false);
      expect(settled(box(0), [read('', 1, box(0, 600))])).toBe(false);
      expect(settled(box(90), [read('')])).toBe(false);
      expect(settled(box(180), [read('PELLAM', 0.97)])).toBe(false);
    }
  });

  it('is settled from the same side where all that was read is nothing or surely words', () => {
    expect(settledFromSameSide(box(4), [read('')])).toBe(true);
    expect(settledFromSameSide(box(4), [read('PELLAM', 0.97), read('')])).toBe(true);
    expect(settledFromSameSide(box(4), [read('PELLAM', 0.7)])).toBe(false);
    expect(settledFromSameSide(box(4), [read('KB0917', 0.3), read('')])).toBe(false);
  });

  it('is settled from another side unless a code was all but surely read', () => {
    expect(settledFromOtherSide(box(4), [read('')])).toBe(true);
    expect(settledFromOtherSide(box(4), [read('PELLAM', 0.7)])).toBe(true);
    expect(settledFromOtherSide(box(4), [read('KB0917', 0.79)])).toBe(true);
    expect(settledFromOtherSide(box(4), [read('KB0917', 0.8), read('')])).toBe(false);
  });

  it('is read where it lies straight in the photo turned by an eighth, and left where it lies straight in another look', () => {
    const settled = settledFromAskew(45);
    expect(settled(box(45), [read('KB0917', 0.3, box(42))])).toBe(false);
    expect(settled(box(45), [read('PELLAM', 0.97, box(42))])).toBe(true);
    expect(settled(box(-140), [])).toBe(false);
    expect(settled(box(2), [])).toBe(true);
    expect(settled(box(92), [])).toBe(true);
    expect(settled(box(16), [])).toBe(false);
  });

  it('is read in any turned photo where it was framed from its other side', () => {
    expect(settledFromAskew(45)(box(90), [read('8068', 0.6, box(-90))])).toBe(false);
  });
});
