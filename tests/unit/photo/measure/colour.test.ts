import { describe, expect, it } from 'vitest';
import { measureDifference, measureLab } from '../../../../src/photo/measure/colour';
import { ciede2000 } from '../../../../src/photo/measure/colour/ciede2000';
import type { PixelImage } from '../../../../src/photo/types';
import { colourScene } from '../../../measure/colour-truth';

const points = (corners: number[][]) => corners.map(([x, y]) => ({ x: x!, y: y! }));
const plain = (width: number, height: number, colour: (x: number) => number[]): PixelImage => {
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let at = 0; at < width * height; at++) data.set(colour(at % width), at * 4);
  return { width, height, data };
};
const [left, right] = [
  [
    { x: 5, y: 5 },
    { x: 35, y: 35 },
  ],
  [
    { x: 45, y: 5 },
    { x: 75, y: 35 },
  ],
];

describe('colour of a patch', () => {
  it('is not told without a white', () => {
    expect(
      measureLab(
        plain(80, 40, () => [90, 60, 40]),
        left!,
        null,
      ),
    ).toMatchObject({ value: null, why: 'no-white' });
  });

  it('is refused where the white has lost its light, or where the patch is no one colour', () => {
    const burnt = plain(80, 40, (x) => (x < 40 ? [90, 60, 40] : [255, 255, 250]));
    expect(measureLab(burnt, left!, right!)).toMatchObject({ value: null, why: 'clipped' });
    const striped = plain(80, 40, (x) => (x < 40 ? (x % 4 < 2 ? [20, 20, 20] : [200, 200, 200]) : [230, 230, 230]));
    expect(measureLab(striped, left!, right!)).toMatchObject({ value: null, why: 'uneven' });
  });

  it('is refused where it is more vivid than the photo can hold, and told where it is only dark', () => {
    const card = (x: number) => [228, 228, 228].map((step) => step + (x % 2));
    const red = plain(80, 40, (x) => (x < 40 ? [170, 0, 30] : card(x)));
    expect(measureLab(red, left!, right!)).toMatchObject({ value: null, why: 'clipped' });
    expect(measureDifference(red, [...left!, ...right!], null)).toMatchObject({ value: null, why: 'clipped' });
    const black = plain(80, 40, (x) => (x < 40 ? [24, 14, 1] : card(x)));
    expect(measureLab(black, left!, right!).why).toBeUndefined();
  });

  it.each(['daylight', 'evening', 'tungsten', 'led', 'tube'])(
    'differs from another by what it truly does, within the uncertainty, under %s, with a white and without',
    (lamp) => {
      let [held, told] = [0, 0];
      for (let seed = 1101; seed <= 1130; seed++) {
        const scene = colourScene(seed, lamp);
        const pair = scene.patches.flatMap(points);
        const [[l1, a1, b1], [l2, a2, b2]] = scene.labs as [number[], number[]];
        const truth = ciede2000([l1!, a1!, b1!], [l2!, a2!, b2!]);
        for (const white of [points(scene.white), null]) {
          const { value, uncertainty } = measureDifference(scene.image, pair, white);
          if (typeof value !== 'number') continue;
          told++;
          if (Math.abs(value - truth) <= uncertainty!) held++;
        }
      }
      expect(told).toBeGreaterThan(50);
      expect(held / told).toBeGreaterThanOrEqual(0.94);
    },
  );

  it('differs more surely where it is only darker than where it is of another hue', () => {
    const off = (other: number[]) =>
      measureDifference(
        plain(80, 40, (x) => (x < 40 ? [120, 90, 60] : other)),
        [...left!, ...right!],
        null,
      );
    const [darker, redder] = [off([92, 68, 44]), off([132, 70, 60])];
    const shareOf = ({ value, uncertainty }: typeof darker) => uncertainty! / (value as number);
    expect(shareOf(darker)).toBeLessThan(shareOf(redder) / 1.5);
  });

  it.each(['daylight', 'shade', 'evening', 'tungsten', 'led', 'tube'])(
    'lies within its uncertainty under %s',
    (lamp) => {
      let [held, told] = [0, 0];
      for (let seed = 1001; seed <= 1030; seed++) {
        const scene = colourScene(seed, lamp);
        scene.patches.forEach((patch, at) => {
          const { value, uncertainty } = measureLab(scene.image, points(patch), points(scene.white));
          if (!Array.isArray(value)) return;
          told++;
          const [l, a, b] = scene.labs[at as 0 | 1];
          if (ciede2000(value, [l!, a!, b!]) <= uncertainty!) held++;
        });
      }
      expect(told).toBeGreaterThan(35);
      expect(held / told).toBeGreaterThan(0.9);
    },
  );

  it('differs by nothing from itself and by much from another, white or no white', () => {
    const image = plain(80, 40, (x) => (x < 40 ? [90, 60, 40] : [150, 60, 40]));
    expect(measureDifference(image, [...left!, ...left!], null).value).toBe(0);
    const { value, uncertainty } = measureDifference(image, [...left!, ...right!], null);
    expect(value).toBeGreaterThan(15);
    expect(uncertainty).toBeLessThan(value as number);
  });
});
