import { describe, expect, it } from 'vitest';
import type { Quad } from '../../../src/photo';
import { mayGoOn } from '../../../src/stamp/at-edge';

const photo = { width: 640, height: 480 };
/** Six characters, 20 pixels from middle to middle, their line 120 × 30 pixels, its upper left corner here. */
const middles = [0, 1, 2, 3, 4, 5].map((at) => (at + 0.5) / 6);
const line = (x: number, y: number): Quad => [
  { x, y },
  { x: x + 120, y },
  { x: x + 120, y: y + 30 },
  { x, y: y + 30 },
];

describe('a line that may go on outside the photo', () => {
  it('is one past whose end no further character would be seen', () => {
    expect(mayGoOn(line(640 - 120, 200), middles, photo)).toBe(true);
    expect(mayGoOn(line(640 - 120 - 14, 200), middles, photo)).toBe(true);
    expect(mayGoOn(line(0, 200), middles, photo)).toBe(true);
  });

  it('is none where a further character would have shown at both ends', () => {
    expect(mayGoOn(line(640 - 120 - 18, 200), middles, photo)).toBe(false);
    expect(mayGoOn(line(18, 200), middles, photo)).toBe(false);
  });

  it('may lie close along an edge, but not be cut by it', () => {
    expect(mayGoOn(line(200, 0), middles, photo)).toBe(false);
    expect(mayGoOn(line(200, -8), middles, photo)).toBe(true);
  });

  it('is judged in its own direction', () => {
    const downwards: Quad = [
      { x: 230, y: 350 },
      { x: 230, y: 470 },
      { x: 200, y: 470 },
      { x: 200, y: 350 },
    ];
    expect(mayGoOn(downwards, middles, photo)).toBe(true);
    expect(mayGoOn(downwards.map(({ x, y }) => ({ x, y: y - 10 })) as Quad, middles, photo)).toBe(false);
  });

  it('is judged by the distance of characters within a group, not by the gap between two groups', () => {
    const grouped = [0.06, 0.16, 0.26, 0.66, 0.76, 0.86].map((middle) => middle + 0.04);
    expect(mayGoOn(line(640 - 120 - 8, 200), grouped, photo)).toBe(false);
    expect(mayGoOn(line(640 - 120 + 1, 200), grouped, photo)).toBe(true);
  });

  it('takes three quarters of its height for a character where it has only one', () => {
    expect(mayGoOn(line(640 - 125, 200), [0.5], photo)).toBe(false);
    expect(mayGoOn(line(640 - 40, 200), [0.5], { width: 560, height: 480 })).toBe(true);
  });
});
