import { describe, expect, it } from 'vitest';
import { adjustImage } from '../../../src/reader/adjust';

/** A picture whose red channel numbers its pixels from 0, row by row. */
function numbered(width: number, height: number) {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let pixel = 0; pixel < width * height; pixel++) data.set([pixel, 0, 0, 255], pixel * 4);
  return { width, height, data };
}
const reds = ({ data }: { data: Uint8ClampedArray }) => [...data].filter((_, index) => index % 4 === 0);

describe('a photo looked at by hand', () => {
  it.each([
    [0, [0, 1, 2, 3, 4, 5], 3],
    [90, [3, 0, 4, 1, 5, 2], 2],
    [180, [5, 4, 3, 2, 1, 0], 3],
    [270, [2, 5, 1, 4, 0, 3], 2],
  ] as const)('is turned clockwise by %i degrees', (turn, expected, width) => {
    const { image } = adjustImage(numbered(3, 2), { turn, invert: false, crop: null });
    expect({ width: image.width, reds: reds(image) }).toEqual({ width, reds: expected });
  });

  it.each([0, 90, 180, 270] as const)('says where each point lies in the whole photo, turned by %i degrees', (turn) => {
    const whole = numbered(8, 6);
    const { image, toWhole } = adjustImage(whole, { turn, invert: false, crop: [0.25, 0.5, 0.75, 1] });
    for (let y = 0; y < image.height; y++) {
      for (let x = 0; x < image.width; x++) {
        const at = toWhole({ x: x + 0.5, y: y + 0.5 });
        const pixel = Math.floor(at.y) * whole.width + Math.floor(at.x);
        expect(image.data[(y * image.width + x) * 4]).toBe(pixel);
      }
    }
  });

  it('inverts colours and leaves no pixel transparent', () => {
    const { image } = adjustImage(numbered(2, 1), { turn: 0, invert: true, crop: null });
    expect([...image.data]).toEqual([255, 255, 255, 255, 254, 255, 255, 255]);
  });

  it('keeps at least one pixel of any crop', () => {
    const { image } = adjustImage(numbered(4, 4), { turn: 0, invert: false, crop: [1, 1, 1, 1] });
    expect([image.width, image.height]).toEqual([1, 1]);
  });
});
