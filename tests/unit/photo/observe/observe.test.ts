import { describe, expect, it } from 'vitest';
import { type Observation, observe, type PixelImage } from '../../../../src/photo';
import { greyOf } from '../../../../src/photo/grey';
import { differenceHash } from '../../../../src/photo/hash';
import { observationSchema } from '../../../../src/photo/observation-types';
import { all } from '../../../../src/photo/observe';
import { defineObserver } from '../../../../src/photo/observe/observer';
import { strokes } from './strokes';

const seenIn = (image: PixelImage, printed: string[] = []) =>
  observe(image, { photoId: 'p1', grey: greyOf(image), printed });
const valuesOf = (seen: readonly Observation[], what: string) =>
  seen.filter((one) => one.what === what).map(({ value }) => value);

describe('observers', () => {
  const image = strokes(640, 480);
  const seen = seenIn(image, ['09:41 5G 87%', 'www.cellar-finds.example', 'photos.attic-arcade.example']);

  it('give observations that JSON holds, each under a name of its own', () => {
    expect(JSON.parse(JSON.stringify(seen)).map((one: unknown) => observationSchema.parse(one))).toEqual(seen);
    expect(new Set(seen.map(({ id }) => id)).size).toBe(seen.length);
    expect(seen.every(({ id, by }) => id.startsWith('p1-') && by === 'machine')).toBe(true);
  });

  it('give what they say they give, and no two the same', () => {
    const given = all.flatMap(({ gives }) => [...gives] as string[]);
    expect(new Set(given).size).toBe(given.length);
    expect(seen.map(({ what }) => what).filter((what) => !given.includes(what))).toEqual([]);
  });

  it('measure size, sharpness, ground and hash', () => {
    expect(valuesOf(seen, 'longer-side')).toEqual([640]);
    expect(valuesOf(seen, 'shorter-side')).toEqual([480]);
    expect(valuesOf(seen, 'too-weak')).toEqual([false]);
    expect(valuesOf(seen, 'sharpness')[0]).toBeGreaterThan(0.05);
    expect(valuesOf(seen, 'hash')).toEqual([differenceHash(greyOf(image))]);
    expect(valuesOf(seen, 'ground-lightness')).toEqual([200]);
    expect(valuesOf(seen, 'ground-noise')).toEqual([0]);
  });

  it('say of a small photo that it is too weak', () => {
    expect(valuesOf(seenIn(strokes(200, 150)), 'too-weak')).toEqual([true]);
  });

  it('find every host that is written in the photo', () => {
    expect(valuesOf(seen, 'watermark')).toEqual(['cellar-finds.example', 'photos.attic-arcade.example']);
    expect(seen.filter(({ what }) => what === 'watermark').map(({ id }) => id)).toEqual([
      'p1-watermark',
      'p1-watermark-2',
    ]);
  });

  it.each([
    [1750, 1000, ['09:41 5G 87%'], ['09:41 5G 87%']],
    [1000, 2300, ['09:41', '87 %'], ['09:41 … 87 %']],
    [1749, 1000, ['09:41 5G 87%'], []],
    [1000, 2301, ['09:41 5G 87%'], []],
    [1170, 2532, ['09:41'], []],
    [1170, 2532, ['5G 87%'], []],
  ])('see the bars of a screen in %i × %i with %j: %j', (width, height, printed, bars) => {
    const blank = { width, height, data: new Uint8ClampedArray(width * height * 4).fill(255) };
    expect(valuesOf(seenIn(blank, printed), 'screen-bars')).toEqual(bars);
  });

  it('one that breaks has measured nothing, and the others stand', () => {
    const broken = defineObserver({
      id: 'broken',
      gives: ['one', 'other'],
      measure: () => {
        throw new Error('out of memory');
      },
    });
    const [size] = all;
    const context = { photoId: 'p1', grey: greyOf(image), printed: [] };
    expect(observe(image, context, [broken, size]).map(({ id, value }) => [id, value])).toEqual([
      ['p1-one', null],
      ['p1-other', null],
      ['p1-longer-side', 640],
      ['p1-shorter-side', 480],
    ]);
  });
});
