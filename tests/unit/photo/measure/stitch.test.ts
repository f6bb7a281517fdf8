import { describe, expect, it } from 'vitest';
import { measureMarks } from '../../../../src/photo';
import { byHand } from '../../../measure/photographed';
import { chance } from '../../../measure/random';
import { stitchScene } from '../../../measure/stitch-truth';

const seeds = [501, 502, 504, 505, 507, 508];

describe('stitches along a line', () => {
  it('are counted, with marks on the holes and with those of a hand', async () => {
    const told: unknown[] = [];
    const truth: unknown[] = [];
    for (const seed of seeds) {
      const { image, line, count } = await stitchScene(seed, 'clear', true);
      const hand = byHand(line, image, chance(seed));
      const measures = measureMarks(image, [
        { what: 'count', points: line },
        { what: 'count', points: hand },
      ]);
      told.push(
        ...measures.map(({ value, uncertainty }) => Math.abs((value as number) - count) <= (uncertainty ?? -1)),
      );
      truth.push(true, true);
    }
    expect(told.filter((right) => right).length).toBeGreaterThanOrEqual(truth.length - 1);
  });

  it('are counted right or not at all where a hand set the marks, on twill too and with threads darker than the leather', async () => {
    const told: boolean[] = [];
    for (const seed of [511, 512, 513, 514, 515, 516, 517, 518]) {
      const { image, line, count, ground } = await stitchScene(seed, 'clear', true);
      const [own] = measureMarks(image, [{ what: 'count', points: byHand(line, image, chance(seed)) }]);
      if (own!.value !== null) expect(own!.value, `${ground} ${seed}`).toBe(count);
      told.push(own!.value !== null);
    }
    expect(told.filter((one) => one).length).toBeGreaterThanOrEqual(7);
  });

  it('are no stitches where there are none: leather, twill, canvas, print and ribs give no count', async () => {
    for (const seed of seeds) {
      const { image, line, ground } = await stitchScene(seed, 'fair', false);
      expect(measureMarks(image, [{ what: 'count', points: line }]), ground).toMatchObject([
        { value: null, why: 'no-stitches' },
      ]);
    }
  });

  it('have a pitch within its uncertainty, an evenness and a slant', async () => {
    const { image, line, pitch } = await stitchScene(502, 'clear', true);
    const measures = measureMarks(
      image,
      (['pitch', 'evenness', 'slant'] as const).map((what) => ({ what, points: line })),
    );
    expect(measures.map(({ unit }) => unit)).toEqual(['px', 'share', 'degree']);
    expect(Math.abs((measures[0]!.value as number) - pitch)).toBeLessThanOrEqual(measures[0]!.uncertainty!);
    expect(measures[1]!.value).toBeLessThan(0.12);
  });
});
