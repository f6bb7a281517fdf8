import { describe, expect, it } from 'vitest';
import { type Measure, measureMarks, type PixelImage, type Point } from '../../../../src/photo';
import { byHand } from '../../../measure/photographed';
import { chance } from '../../../measure/random';
import { secondStitchScene } from '../../../measure/second/stitches';
import { skipped, sound, type Thread, worn } from '../../../measure/sewing';
import { stitchScene } from '../../../measure/stitch-truth';

const measured = (image: PixelImage, points: readonly Point[]) =>
  measureMarks(image, [
    { what: 'count', points: [...points] },
    { what: 'skipped', points: [...points] },
  ]) as [Measure, Measure];

/** Where threads are missing or lie over a hole, as shares of the row. */
const gapsOf = (threads: readonly Thread[], places: number): [number, number][] => {
  const gaps: [number, number][] = threads.flatMap(({ from, to }) => (to - from > 1 ? [[from, to]] : []));
  threads.forEach(({ to }, at) => {
    const next = threads[at + 1]?.from ?? to;
    if (next > to) gaps.push([to, next]);
  });
  return gaps.map(([from, to]) => [from / places, to / places]);
};

const along = ([from, to]: readonly [Point, Point], { x, y }: Point): number =>
  ((x - from.x) * (to.x - from.x) + (y - from.y) * (to.y - from.y)) / ((to.x - from.x) ** 2 + (to.y - from.y) ** 2);

describe('stitches that are missing in a row', () => {
  it('are told with their number and where, and the count goes over them', async () => {
    const told: { held: boolean; right: boolean; counted: boolean; placed: boolean }[] = [];
    for (const seed of [1811, 1814, 1829, 1838, 1841, 1850]) {
      const { image, line, count, threads } = await secondStitchScene(seed, 'clear', true, skipped(seed));
      const [own, gone] = measured(image, byHand(line, image, chance(seed)));
      const missing = count - threads.length;
      if (gone.value === null) continue;
      const gaps = gapsOf(threads, count);
      const points = gone.where!.points;
      const held = Math.abs((gone.value as number) - missing) <= gone.uncertainty!;
      told.push({
        held,
        right: gone.value === missing,
        counted: Math.abs((own.value as number) - count) <= own.uncertainty!,
        placed: points.every((point) =>
          gaps.some(([from, to]) => along(line, point) > from - 1.2 / count && along(line, point) < to + 1.2 / count),
        ),
      });
    }
    expect(told.length).toBeGreaterThanOrEqual(4);
    expect(told.every(({ held, counted, placed }) => held && counted && placed)).toBe(true);
    expect(told.filter(({ right }) => right).length).toBeGreaterThanOrEqual(told.length - 1);
  });

  it('are none in sound rows, also where light is uneven, threads are worn or the photo is blurred', async () => {
    const told: unknown[] = [];
    for (const grade of ['clear', 'fair', 'hard'] as const) {
      for (const seed of [904, 907]) {
        for (const sewing of [sound, worn(seed)]) {
          const { image, line } = await stitchScene(seed, grade, true, sewing);
          told.push(measured(image, byHand(line, image, chance(seed)))[1].value);
        }
      }
    }
    expect(new Set(told)).toEqual(new Set([0, null]));
  });

  it('are not told where a row has too few to say what is usual, or no stitches', async () => {
    const few = await stitchScene(1854, 'clear', true);
    expect(measured(few.image, few.line)).toMatchObject([{ value: few.count }, { value: null, why: 'not-each' }]);
    const none = await stitchScene(504, 'fair', false);
    expect(measured(none.image, none.line)[1]).toMatchObject({ value: null, why: 'no-stitches' });
  });
});
