import { describe, expect, it } from 'vitest';
import { freeTexts } from '../../../src/stamp';
import { placedCharacters } from '../../../src/stamp/align';
import { plusSigns, withSignsOpen } from '../../../src/stamp/plus-signs';
import type { Lattice } from '../../../src/stamp/types';

/** Dark strokes on light ground, 48 pixels high, a character every 30 pixels from column 45. */
function drawn(...glyphs: ((x: number, y: number) => boolean)[]) {
  const width = 60 + 30 * glyphs.length;
  const data = new Float32Array(width * 48).fill(190);
  glyphs.forEach((isStroke, at) => {
    for (let y = 0; y < 48; y++) {
      for (let x = -15; x < 15; x++) if (isStroke(x, y - 24)) data[y * width + 45 + 30 * at + x] = 60;
    }
  });
  return { crop: { width, height: 48, data }, middles: glyphs.map((_, at) => (45 + 30 * at) / width) };
}
const within = (value: number, from: number, to: number): boolean => value >= from && value <= to;
const plus = (x: number, y: number) =>
  (within(x, -2, 2) && within(y - 2, -9, 9)) || (within(y - 2, -2, 2) && within(x, -9, 9));
const four = (x: number, y: number) =>
  (within(x, 2, 5) && within(y, -15, 15)) ||
  (within(y, 4, 7) && within(x, -10, 9)) ||
  (within(y, -15, 6) && within(x - (-10 + ((6 - y) * 13) / 21), -2, 2));
const five = (x: number, y: number) =>
  (within(y, -15, -11) && within(x, -8, 8)) ||
  (within(x, -8, -5) && within(y, -15, 0)) ||
  (within(y, -2, 1) && within(x, -8, 8)) ||
  (within(x, 5, 8) && within(y, 0, 15)) ||
  (within(y, 12, 15) && within(x, -8, 8));

const sharp = (text: string): Lattice => ({
  steps: [...text].flatMap((one) => [{ [one]: 0.99, '': 0.01 }, { '': 1 }]),
});

describe('a plus that is read as a 4', () => {
  it('is told from a 4 by its arms', () => {
    const placed = placedCharacters(sharp('5454'));
    const { crop, middles } = drawn(five, four, five, plus);
    expect(plusSigns(crop, placed, middles)).toEqual([3]);
  });

  it('is not looked for among other characters', () => {
    const { crop, middles } = drawn(five, plus, five);
    expect(plusSigns(crop, placedCharacters(sharp('575')), middles)).toEqual([]);
  });

  it('is left open: the code may do without it', () => {
    const lattice = sharp('54');
    const texts = freeTexts(withSignsOpen(lattice, [placedCharacters(lattice)[1]!]));
    expect(
      texts
        .slice(0, 2)
        .map(({ text }) => text)
        .sort(),
    ).toEqual(['5', '54']);
    for (const { probability } of texts.slice(0, 2)) expect(probability).toBeCloseTo(0.5, 1);
  });

  it('is left open as much where it takes several steps', () => {
    const lattice: Lattice = { steps: [{ 5: 1 }, { '': 1 }, { 4: 1 }, { 4: 1 }, { 4: 1 }] };
    const texts = freeTexts(withSignsOpen(lattice, [placedCharacters(lattice)[1]!]));
    expect(texts.find(({ text }) => text === '5')?.probability).toBeCloseTo(0.5, 2);
  });
});
