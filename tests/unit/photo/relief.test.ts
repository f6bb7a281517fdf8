import { describe, expect, it } from 'vitest';
import { type GreyImage, greyOf, reliefOf } from '../../../src/photo';
import { chance } from '../../measure/random';
import { drawn, held, taken3 } from '../../measure/second/svg';

/** Bars pressed into leather, under light that falls off from left to right; upright and level ones. */
async function pressed(): Promise<GreyImage> {
  const bars = [80, 240, 400, 560].map(
    (x) => `<rect x="${x}" y="120" width="14" height="160" fill="#000" fill-opacity="0.35"/>`,
  );
  const level = [80, 400].map(
    (x) => `<rect x="${x}" y="360" width="160" height="14" fill="#000" fill-opacity="0.35"/>`,
  );
  const light =
    '<linearGradient id="g"><stop offset="0" stop-color="#d8c8b0"/><stop offset="1" stop-color="#4a4238"/></linearGradient>';
  const sheet = await drawn(
    `<defs>${light}</defs><g transform="scale(3)"><rect width="640" height="480" fill="url(#g)"/>${bars.join('')}${level.join('')}</g>`,
    640 * 3,
    480 * 3,
  );
  const draw = chance(71);
  return greyOf(await taken3(sheet, { ...held(640, 480, 'clear', draw), ...straight }, 'clear', draw));
}
const straight = {
  seen: (at: { x: number; y: number }) => at,
  matrix: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
};

const mean = ({ width, data }: GreyImage, x0: number, y0: number, x1: number, y1: number): number => {
  let sum = 0;
  for (let y = y0; y < y1; y++) for (let x = x0; x < x1; x++) sum += data[y * width + x]!;
  return sum / (x1 - x0) / (y1 - y0);
};

describe('the relief view', () => {
  it('takes slow light out, and gives what is pressed in the same contrast in the light and in the dark', async () => {
    const photo = await pressed();
    const even = reliefOf(photo, null);
    const step = (image: GreyImage, x: number) =>
      mean(image, x + 25, 140, x + 45, 260) - mean(image, x + 3, 140, x + 11, 260);
    expect(step(photo, 80) / step(photo, 560)).toBeGreaterThan(2);
    const raised = step(even, 80) / step(even, 560);
    expect(raised).toBeGreaterThan(0.7);
    expect(raised).toBeLessThan(1.4);
    expect(mean(photo, 20, 420, 60, 470) - mean(photo, 590, 420, 630, 470)).toBeGreaterThan(60);
    expect(Math.abs(mean(even, 20, 420, 60, 470) - mean(even, 590, 420, 630, 470))).toBeLessThan(12);
  });

  it('shows slopes from the chosen side: the near wall of what is pressed in is dark, the far one light', async () => {
    const photo = await pressed();
    const walls = (side: 'left' | 'right' | 'top') => {
      const image = reliefOf(photo, side);
      return { near: mean(image, 238, 140, 242, 260), far: mean(image, 252, 140, 256, 260) };
    };
    const left = walls('left');
    expect(left.near).toBeLessThan(100);
    expect(left.far).toBeGreaterThan(156);
    const right = walls('right');
    expect(right.near).toBeGreaterThan(156);
    expect(right.far).toBeLessThan(100);
    // Light along a bar shows nothing of its walls.
    const top = walls('top');
    expect(Math.abs(top.near - 128)).toBeLessThan(12);
    const level = reliefOf(photo, 'top');
    expect(mean(level, 100, 358, 220, 362)).toBeLessThan(100);
    expect(mean(level, 100, 372, 220, 376)).toBeGreaterThan(156);
  });

  it('an even surface stays even', () => {
    const flat: GreyImage = { width: 60, height: 40, data: new Float32Array(2400).fill(90) };
    for (const side of [null, 'left', 'bottom'] as const)
      expect(new Set(reliefOf(flat, side).data)).toEqual(new Set([128]));
  });
});
