import { describe, expect, it } from 'vitest';
import type { GreyImage, Quad } from '../../../src/photo';
import { turnedQuad } from '../../../src/photo';
import type { Lattice } from '../../../src/stamp';
import { lineAround, placedCharacters } from '../../../src/stamp/align';
import { measureLine } from '../../../src/stamp/measure';

/** Six upright strokes on even ground; strengths and places as given, 600 × 80 pixels. */
function strokes(places: readonly number[], strengths: readonly number[], drop: readonly number[] = []): GreyImage {
  const data = new Float32Array(600 * 80).fill(150);
  places.forEach((place, at) => {
    for (let row = 20 + (drop[at] ?? 0); row < 60 + (drop[at] ?? 0); row++) {
      for (let column = place - 8; column < place + 8; column++) data[row * 600 + column] = 150 - strengths[at]!;
    }
  });
  return { width: 600, height: 80, data };
}

const even = [50, 150, 250, 350, 450, 550];
const quad: Quad = turnedQuad({ x: 400, y: 300 }, 300, 40, 4);
const of = (image: GreyImage, places: readonly number[]) => {
  const measured = measureLine(
    image,
    quad,
    places.map((place) => place / 600),
  );
  return (what: string) => measured.find((one) => one.what === what)!;
};

describe('the geometry of a stamped line', () => {
  it('measures pitch and tilt in the photo, not in the crop', () => {
    const find = of(strokes(even, [60, 60, 60, 60, 60, 60]), even);
    expect(find('pitch').value).toBeCloseTo(50, 3);
    expect(find('pitch-spread').value).toBeCloseTo(0, 6);
    expect(find('tilt').value).toBeCloseTo(4, 3);
    expect(find('height').value).toBeCloseTo(40, 3);
  });

  it('sees crowded characters', () => {
    const crowded = [50, 120, 250, 310, 470, 550];
    const spread = of(strokes(crowded, [60, 60, 60, 60, 60, 60]), crowded)('pitch-spread');
    expect(spread.value).toBeGreaterThan(0.25);
    expect(spread.uncertainty).toBeLessThan(spread.value);
  });

  it('sees depth that falls off from left to right, and none where there is none', () => {
    const falling = of(strokes(even, [90, 80, 70, 60, 50, 40]), even)('depth-slope');
    expect(falling.value).toBeLessThan(-0.5);
    expect(falling.uncertainty).toBeLessThan(0.2);
    const level = of(strokes(even, [60, 60, 60, 60, 60, 60]), even);
    expect(Math.abs(level('depth-slope').value)).toBeLessThan(0.02);
    expect(level('depth-spread').value).toBeLessThan(0.02);
  });

  it('sees characters off the line', () => {
    const dancing = of(strokes(even, [60, 60, 60, 60, 60, 60], [0, 9, -8, 7, -9, 0]), even)('baseline-spread');
    const straight = of(strokes(even, [60, 60, 60, 60, 60, 60]), even)('baseline-spread');
    expect(dancing.value).toBeGreaterThan(0.05);
    expect(straight.value).toBeLessThan(0.02);
  });

  it('measures only height and tilt of two characters', () => {
    const measured = measureLine(strokes([50, 150], [60, 60]), quad, [0.1, 0.3]);
    expect(measured.map(({ what }) => what)).toEqual(['height', 'tilt']);
  });
});

describe('where characters stand in a lattice', () => {
  it('takes the middle of each run and leaves spaces out', () => {
    const lattice: Lattice = {
      steps: [{ '': 1 }, { K: 0.9 }, { K: 0.9 }, { '': 1 }, { ' ': 0.8 }, { '0': 0.7 }, { '': 1 }, { '0': 0.9 }],
    };
    expect(placedCharacters(lattice).map(({ middle }) => middle)).toEqual([2 / 8, 5.5 / 8, 7.5 / 8]);
  });

  it('finds them again in the quad, whose ends the lattice reaches past', () => {
    // A line 200 × 40: half a height more at each end makes the lattice cover 240, 20 of it before the quad.
    const line = turnedQuad({ x: 200, y: 100 }, 200, 40, 0);
    const { quad: same, middles } = lineAround(line, [40 / 240, 120 / 240, 200 / 240], 0.5);
    expect(same).toEqual(line);
    expect(middles.map((middle) => middle * 200)).toEqual([20, 100, 180].map((place) => expect.closeTo(place, 6)));
  });

  it('draws the quad out where a character lies past its end', () => {
    const line = turnedQuad({ x: 200, y: 100 }, 200, 40, 0);
    const { quad: longer, middles } = lineAround(
      line,
      [10, 70, 130, 190].map((place) => place / 280),
      1,
    );
    // The first stands 30 before the quad's left end, and 0.4 heights more belong to it.
    expect(longer.map(({ x }) => Math.round(x))).toEqual([54, 300, 300, 54]);
    expect(middles.map((middle) => Math.round(middle * 246))).toEqual([16, 76, 136, 196]);
  });
});
