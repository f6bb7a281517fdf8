import { describe, expect, it } from 'vitest';
import { type Measure, measureMarks, quadSize } from '../../../../src/photo';
import { panelScene } from '../../../measure/panel-truth';
import { byHand } from '../../../measure/photographed';
import { chance } from '../../../measure/random';
import { wallpaperScene } from '../../../measure/second/wallpaper';
import { turnsOf } from '../../../measure/tally-groups';

const holds = ({ value, uncertainty }: Measure, truth: number) => Math.abs((value as number) - truth) <= uncertainty!;
/** Half-width in 99 of 100 cases, of one that holds in 95. */
const surely = ({ value, uncertainty }: Measure) => Math.abs(value as number) > 1.314 * uncertainty!;

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
      const data = new Uint8ClampedArray(300 * 280 * 4).fill(255);
      for (let y = 0; y < 280; y++)
        for (let x = 0; x < 300; x++)
          data.fill(
            120 + 20 * Math.sin((2 * Math.PI * y) / 40) + motif(x, y),
            (y * 300 + x) * 4,
            (y * 300 + x) * 4 + 3,
          );
      const points = [
        [10, 10],
        [290, 10],
        [290, 270],
        [10, 270],
      ].map(([x, y]) => ({ x: x!, y: y! }));
      return measureMarks({ width: 300, height: 280, data }, [{ what: 'mirror-off', points, within: 0 }])[0];
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

  it('is not measured on bare cloth, nor with marks that are not a panel', () => {
    const data = new Uint8ClampedArray(200 * 200 * 4).fill(120);
    const points = [
      { x: 20, y: 20 },
      { x: 180, y: 20 },
      { x: 180, y: 180 },
      { x: 20, y: 180 },
    ];
    const image = { width: 200, height: 200, data };
    expect(measureMarks(image, [{ what: 'repeat-x', points }])).toMatchObject([{ value: null, why: 'no-repeat' }]);
    expect(measureMarks(image, [{ what: 'repeat-x', points: points.slice(1) }])).toMatchObject([
      { value: null, why: 'points' },
    ]);
    const far = points.map(({ x, y }) => ({ x: x + 500, y }));
    expect(measureMarks(image, [{ what: 'mirror-off', points: far }])).toMatchObject([{ value: null, why: 'outside' }]);
  });
});
