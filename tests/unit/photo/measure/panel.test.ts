import { describe, expect, it } from 'vitest';
import { type Measure, measureMarks, type Point, quadSize } from '../../../../src/photo';
import { painted } from '../../../measure/painted';
import { panelScene } from '../../../measure/panel-truth';
import { byHand } from '../../../measure/photographed';
import { chance } from '../../../measure/random';
import { wallpaperScene } from '../../../measure/second/wallpaper';
import { turnsOf } from '../../../measure/tally-groups';

const holds = ({ value, uncertainty }: Measure, truth: number) => Math.abs((value as number) - truth) <= uncertainty!;
/** Half-width in 99 of 100 cases, of one that holds in 95. */
const surely = ({ value, uncertainty }: Measure) => Math.abs(value as number) > 1.314 * uncertainty!;

const boxOf = (left: number, top: number, right: number, bottom: number): Point[] => [
  { x: left, y: top },
  { x: right, y: top },
  { x: right, y: bottom },
  { x: left, y: bottom },
];

describe('a pattern on a panel', () => {
  it('has a repeat and an axis where a hand set the corners', async () => {
    const scene = await panelScene(701, 'fair', { axis: true, off: 0.05 });
    const points = byHand(scene.corners, scene.image, chance(701));
    const [x, y, off] = measureMarks(scene.image, [
      { what: 'repeat-x', points },
      { what: 'repeat-y', points },
      { what: 'mirror-off', points },
    ]) as [Measure, Measure, Measure];
    const { across, down } = quadSize(scene.corners);
    expect(holds(x, scene.repeatX * across)).toBe(true);
    expect(holds(y, scene.repeatY * down)).toBe(true);
    expect(holds(off, scene.off)).toBe(true);
    expect(surely(off)).toBe(true);
  });

  it('is not called off where it is straight, and has no axis where it has none', async () => {
    for (const seed of [711, 712, 713]) {
      const straight = await panelScene(seed, 'clear', { axis: true, off: 0 });
      const [off] = measureMarks(straight.image, [{ what: 'mirror-off', points: straight.corners }]);
      expect(off!.value === null || !surely(off!), `seed ${seed}`).toBe(true);
      const chiral = await panelScene(seed, 'clear', { axis: false, off: 0 });
      const [none] = measureMarks(chiral.image, [{ what: 'mirror-off', points: chiral.corners }]);
      expect(none, `seed ${seed}`).toMatchObject({ value: null, why: 'no-axis' });
    }
  });

  it('is cut by its left and right edges at mirrored places, or by so much beside them', async () => {
    for (const [seed, off] of [
      [701, 0],
      [701, 0.05],
      [701, -0.1],
      [717, 0.08],
    ] as const) {
      const scene = await panelScene(seed, 'fair', { axis: true, off });
      const points = byHand(scene.corners, scene.image, chance(seed));
      const [edges] = measureMarks(scene.image, [{ what: 'edges-off', points }]) as [Measure];
      expect(edges.unit).toBe('share');
      expect(holds(edges, 2 * off), `${seed} ${off}`).toBe(true);
      expect(surely(edges), `${seed} ${off}`).toBe(off !== 0);
    }
  });

  it('is cut at places that cannot be told where it has no axis, or where every other row stands aside', () => {
    const edges = (motif: (x: number, y: number) => boolean) => {
      const image = painted(340, 280, (x, y) => (motif(x - 10, y - 10) ? 160 : 110));
      return measureMarks(image, [{ what: 'edges-off', points: boxOf(10, 10, 330, 270), within: 0 }])[0];
    };
    const leaf = (x: number, y: number) => Math.abs(x - 20 - (y - 15) * 0.8) < 4 && Math.abs(y - 15) < 10;
    const disc = (x: number, y: number) => Math.hypot(x - 20, y - 15) < 8 - (y > 15 ? 3 : 0);
    const every = (motif: typeof leaf, aside: number) => (x: number, y: number) =>
      motif((x + (Math.floor(y / 30) % 2) * aside + 40) % 40, y % 30);
    expect(edges(every(leaf, 0))).toMatchObject({ value: null, why: 'no-axis' });
    expect(edges(every(disc, 20))).toMatchObject({ value: null, why: 'staggered' });
    expect(edges(every(disc, 0))).toMatchObject({ value: expect.closeTo(0, 1) });
  });

  it('has no axis where it only turns about points, however round its motif', async () => {
    for (const [seed, group] of [
      [356, 'p6'],
      [951, 'p6'],
      [952, 'p4'],
      [953, 'p3'],
    ] as const) {
      for (const degrees of turnsOf(group)) {
        const { image, front } = await wallpaperScene(group, degrees, seed, 'clear');
        const [off] = measureMarks(image, [{ what: 'mirror-off', points: front }]);
        expect(off, `${group} ${degrees} ${seed}`).toMatchObject({ value: null, why: 'no-axis' });
      }
    }
  });

  it('has the axis of its motif and not of the bands behind it', () => {
    const bars = (lean: number) => (x: number, y: number) => {
      const [u, v] = [(x % 50) - 25, (y % 40) - 20];
      return Math.abs(v) < 10 && Math.abs(u - lean * v) < 4 ? 30 : 0;
    };
    const off = (motif: (x: number, y: number) => number) => {
      const image = painted(300, 280, (x, y) => 120 + 20 * Math.sin((2 * Math.PI * y) / 40) + motif(x, y));
      return measureMarks(image, [{ what: 'mirror-off', points: boxOf(10, 10, 290, 270), within: 0 }])[0];
    };
    expect(off(bars(0))).toMatchObject({ value: expect.closeTo(0, 1) });
    expect(off(bars(0.4))).toMatchObject({ value: null, why: 'no-axis' });
  });

  it('stands upright, on its head, or cannot be told, on the back', async () => {
    for (const seed of [721, 722, 723, 724]) {
      const scene = await panelScene(seed, 'clear', { axis: true, off: 0, back: true });
      const [told] = measureMarks(scene.image, [{ what: 'back', points: [...scene.corners, ...scene.back!.corners] }]);
      expect(told!.value, `seed ${seed}`).toBe(scene.back!.stands);
    }
  });

  it('steps at a seam', async () => {
    const { image, corners, seam } = await panelScene(734, 'fair', { axis: true, off: 0, seam: true });
    const [told] = measureMarks(image, [{ what: 'seam-off', points: [...corners, ...seam!.ends] }]);
    expect(holds(told!, seam!.step)).toBe(true);
  });

  it('has no repeat where bars lie at random, though some of them are alike', () => {
    for (const seed of [1, 2, 3, 4, 5, 6, 7, 8]) {
      const draw = chance(seed * 71);
      const bars = (side: number) =>
        Array.from({ length: 14 }, () => ({ from: draw.between(0, side), wide: draw.between(0.01, 0.05) * side }));
      const [upright, level] = [bars(360), bars(300)];
      const on = (at: number, all: typeof upright) => all.some(({ from, wide }) => at >= from && at < from + wide);
      const image = painted(360, 300, (x, y) => (on(x, upright) || on(y, level) ? 90 : 150));
      const points = boxOf(5, 5, 355, 295);
      const measures = measureMarks(image, [
        { what: 'repeat-x', points },
        { what: 'repeat-y', points },
      ]);
      expect(measures, `seed ${seed}`).toMatchObject([{ value: null }, { value: null }]);
    }
  });

  it('keeps to the marked motif’s own axis, unless the one beside it lies as near as a hand is off', () => {
    const motif = (x: number, y: number) => Math.hypot(((x + 12) % 40) - 20, (y % 30) - 12) < 9;
    const band = (x: number, y: number) => Math.abs(((x + 12) % 40) - 20) < 3 + (y % 30) / 6;
    const print = (x: number, y: number) => 120 + (motif(x, y) ? 60 : 0) - (band(x, y) ? 25 : 0);
    const image = painted(400, 300, (x, y) => (x >= 20 && x < 380 && y >= 15 && y < 285 ? print(x, y) : 10));
    const points = [...boxOf(20, 15, 380, 285), { x: 208 + 4, y: 162 }];
    const told = (within: number) => measureMarks(image, [{ what: 'motif-off', points, within }])[0];
    expect(told(6)!.value).toBeCloseTo(8 / 40, 1);
    expect(told(18)).toMatchObject({ value: null, why: 'either-axis' });
  });

  it('is not measured where corners cross or run the other way round, which would be its mirror picture', async () => {
    const { image, corners, back } = await panelScene(721, 'clear', { axis: true, off: 0, back: true });
    const [a, b, c, d] = corners as unknown as [Point, Point, Point, Point];
    const [e, f, g, h] = back!.corners as unknown as [Point, Point, Point, Point];
    for (const points of [
      [d, c, b, a],
      [a, c, b, d],
    ])
      expect(measureMarks(image, [{ what: 'repeat-x', points }])).toMatchObject([{ value: null, why: 'corners' }]);
    expect(measureMarks(image, [{ what: 'back', points: [a, b, c, d, h, g, f, e] }])).toMatchObject([
      { value: null, why: 'corners' },
    ]);
    const within = 0.06 * Math.max(image.width, image.height);
    expect(measureMarks(image, [{ what: 'repeat-x', points: [a, b, c, d], within }])).toMatchObject([
      { value: null, why: 'loose' },
    ]);
  });

  it('is not measured on bare cloth, nor with marks that are not a panel', () => {
    const image = painted(200, 200, () => 120);
    const points = boxOf(20, 20, 180, 180);
    expect(measureMarks(image, [{ what: 'repeat-x', points }])).toMatchObject([{ value: null, why: 'no-repeat' }]);
    expect(measureMarks(image, [{ what: 'repeat-x', points: points.slice(1) }])).toMatchObject([
      { value: null, why: 'points' },
    ]);
    const far = points.map(({ x, y }) => ({ x: x + 500, y }));
    expect(measureMarks(image, [{ what: 'mirror-off', points: far }])).toMatchObject([{ value: null, why: 'outside' }]);
  });
});
