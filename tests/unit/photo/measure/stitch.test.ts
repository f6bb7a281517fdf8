import { describe, expect, it } from 'vitest';
import { measureMarks } from '../../../../src/photo';
import { painted } from '../../../measure/painted';
import { byHand } from '../../../measure/photographed';
import { chance } from '../../../measure/random';
import { stitchScene } from '../../../measure/stitch-truth';

interface Sewn {
  count: number;
  pitch: number;
  /** Degrees, clockwise positive. */
  slant: number;
  /** Brightness of the thread over the leather's 110. */
  thread: number;
  /** Standard deviation of where stitches lie, share of the pitch. */
  uneven?: number;
}

/** Soft threads, with dark holes between them where they are even. */
function sewn({ count, pitch, slant, thread, uneven = 0 }: Sewn) {
  const draw = chance(count * 97 + Math.round(slant));
  const left = 60;
  const [c, s] = [Math.cos((slant * Math.PI) / 180), Math.sin((slant * Math.PI) / 180)];
  const moved = Array.from({ length: count }, () => uneven * pitch * Math.max(-2, Math.min(2, draw.normal())));
  const soft = (inside: number) => 1 / (1 + Math.exp(-2 * inside));
  const image = painted(Math.ceil(2 * left + count * pitch), 160, (x, y) => {
    const place = Math.min(count - 1, Math.max(0, Math.floor((x - left) / pitch)));
    const [u, v] = [x - left - (place + 0.5) * pitch - moved[place]!, y - 80];
    const [along, across] = [u * c + v * s, v * c - u * s];
    const hole = Math.round((x - left) / pitch);
    const deep =
      uneven === 0 && hole >= 0 && hole <= count ? Math.exp(-((x - left - hole * pitch) ** 2 + v ** 2) / 4) : 0;
    return (
      110 + thread * soft(pitch * 0.36 - Math.abs(along)) * soft(2.4 - Math.abs(across)) - 45 * deep + 2 * draw.normal()
    );
  });
  return {
    image,
    line: [left, left + count * pitch].map((x) => ({ x, y: 80 })),
    count,
    off: deviationOf(moved) / pitch,
  };
}

const deviationOf = (values: readonly number[]): number => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
};

const stitchRow = (seed: number) =>
  sewn({
    count: 8 + (seed % 17),
    pitch: 9 + (seed % 5) * 4,
    slant: (seed % 7) * 6 - 18,
    thread: seed % 2 === 0 ? 60 : -50,
  });

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

  it('are counted where blur has made short threads rounder', async () => {
    for (const seed of [1803, 1836]) {
      const { image, line, count, pitch } = await stitchScene(seed, 'hard', true);
      expect(pitch).toBeLessThan(9);
      expect(measureMarks(image, [{ what: 'count', points: line }])[0]!.value, `${seed}`).toBe(count);
    }
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

  it('lean as their threads do, in light thread and in dark, and not as their holes stand', () => {
    for (const slant of [-35, -18, 0, 12, 28]) {
      for (const thread of [70, -60]) {
        const { image, line } = sewn({ count: 14, pitch: 19, slant, thread });
        const [own] = measureMarks(image, [{ what: 'slant', points: line }]);
        expect(Math.abs((own!.value as number) - slant), `${slant} ${thread}`).toBeLessThanOrEqual(own!.uncertainty!);
      }
    }
  });

  it('are as uneven as they were sewn', () => {
    const uneven = (by: number) => {
      const { image, line, off } = sewn({ count: 16, pitch: 20, slant: 0, thread: 70, uneven: by });
      const [own] = measureMarks(image, [{ what: 'evenness', points: line }]);
      expect(Math.abs((own!.value as number) - off), `${by}`).toBeLessThanOrEqual(own!.uncertainty!);
      return own!.value as number;
    };
    const [even, little, much] = [0, 0.04, 0.08].map(uneven) as [number, number, number];
    expect(even).toBeLessThan(0.03);
    expect(little).toBeGreaterThan(even);
    expect(much).toBeGreaterThan(little);
  });

  it('are counted one by one where the marks are said to be exact, to the pixel or less', () => {
    for (const seed of seeds) {
      const { image, line, count } = stitchRow(seed);
      for (const within of [0, 0.5, 1]) {
        const [own] = measureMarks(image, [{ what: 'count', points: line, within }]);
        expect(own!.value, `${seed} ${within}`).toBe(count);
      }
    }
  });

  it('are no letters, no border of motifs, and no stairs of pixels at an edge', () => {
    const line = [
      { x: 60, y: 100 },
      { x: 360, y: 100 },
    ];
    const count = (toneAt: (x: number, y: number) => number, points = line) =>
      measureMarks(painted(420, 200, toneAt), [{ what: 'count', points }])[0];
    const none = { value: null, why: 'no-stitches' };
    for (const high of [9, 14, 20]) {
      const letters = (x: number, y: number) => {
        const [place, u, v] = [Math.floor(x / 25), x % 25, (y - 100) / high];
        const stem = u > 4 && u < 8;
        const bar =
          u > 4 &&
          u < 17 &&
          [-0.85, 0, 0.85].some((at, bar) => (place * 7 + bar * 3) % 4 > 0 && Math.abs(v - at) < 0.15);
        return Math.abs(v) < 1 && (stem || bar) ? 60 : 120;
      };
      expect(count(letters), `letters ${high}`).toMatchObject(none);
    }
    for (const leaves of [3, 4, 5]) {
      const border = (x: number, y: number) => {
        const [u, v] = [(x % 25) - 12.5, y - 100];
        return Math.hypot(u, v) < 7 + 2 * Math.cos(leaves * Math.atan2(v, u)) ? 65 : 120;
      };
      expect(count(border), `leaves ${leaves}`).toMatchObject(none);
    }
    const edge = (x: number, y: number) => (y - 100 > Math.floor((x - 210) * 0.09) ? 150 : 70);
    const along = [
      { x: 60, y: 87 },
      { x: 360, y: 114 },
    ];
    expect(count(edge, along)).toMatchObject(none);
  });
});
