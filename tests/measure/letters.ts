import type { Point } from '../../src/photo/types';
import type { Grade } from './photographed';
import type { Chance } from './random';

/** Characters as strokes in a box one high and one wide, drawn by us: each a list of polylines, x and y in turn. */
const strokes: Readonly<Record<string, readonly (readonly number[])[]>> = {
  A: [
    [0, 1, 0.5, 0, 1, 1],
    [0.2, 0.62, 0.8, 0.62],
  ],
  E: [
    [1, 0, 0, 0, 0, 1, 1, 1],
    [0, 0.5, 0.8, 0.5],
  ],
  F: [
    [1, 0, 0, 0, 0, 1],
    [0, 0.48, 0.8, 0.48],
  ],
  H: [
    [0, 0, 0, 1],
    [1, 0, 1, 1],
    [0, 0.5, 1, 0.5],
  ],
  K: [
    [0, 0, 0, 1],
    [1, 0, 0.02, 0.55, 1, 1],
  ],
  L: [[0, 0, 0, 1, 1, 1]],
  M: [[0, 1, 0, 0, 0.5, 0.7, 1, 0, 1, 1]],
  N: [[0, 1, 0, 0, 1, 1, 1, 0]],
  R: [
    [0, 1, 0, 0, 0.8, 0, 1, 0.15, 1, 0.35, 0.8, 0.5, 0, 0.5],
    [0.5, 0.5, 1, 1],
  ],
  S: [[1, 0.1, 0.8, 0, 0.2, 0, 0, 0.15, 0, 0.35, 0.2, 0.48, 0.8, 0.52, 1, 0.68, 1, 0.85, 0.8, 1, 0.2, 1, 0, 0.9]],
  T: [
    [0, 0, 1, 0],
    [0.5, 0, 0.5, 1],
  ],
  V: [[0, 0, 0.5, 1, 1, 0]],
  X: [
    [0, 0, 1, 1],
    [1, 0, 0, 1],
  ],
  Z: [[0, 0, 1, 0, 0, 1, 1, 1]],
  '0': [[0.3, 0, 0.7, 0, 1, 0.25, 1, 0.75, 0.7, 1, 0.3, 1, 0, 0.75, 0, 0.25, 0.3, 0]],
  '2': [[0, 0.2, 0.2, 0, 0.8, 0, 1, 0.2, 1, 0.4, 0, 1, 1, 1]],
  '4': [[0.75, 1, 0.75, 0, 0, 0.7, 1, 0.7]],
  '7': [[0, 0, 1, 0, 0.4, 1]],
};

export interface Letter {
  letter: string;
  /** Polylines in the plane of the line, pixels. */
  lines: Point[][];
  /** Outer edges, stroke and all. */
  left: number;
  right: number;
}

export interface Lettering {
  text: string;
  letters: Letter[];
  stroke: number;
  /** From the upper edge of strokes to their lower edge. */
  top: number;
  bottom: number;
  left: number;
  right: number;
}

/** A line of characters around a point; how wide they are, how they stand apart and how thick they are is drawn by chance. */
export function letteringOf(middle: Point, longest: number, grade: Grade, draw: Chance, given?: string): Lettering {
  const all = Object.keys(strokes);
  const text = given ?? Array.from({ length: draw.whole(4, 10) }, () => draw.of(all)).join('');
  const slim = draw.between(0.5, 0.8);
  const gap = draw.between(0.18, 0.45);
  const thick = draw.between(0.09, 0.17);
  const shares = [...text].map(
    (letter) => slim * (letter === 'M' ? 1.25 : letter === 'L' || letter === 'E' ? 0.85 : 1),
  );
  const long = shares.reduce((sum, share) => sum + share, 0) + gap * (text.length - 1);
  const least = { clear: 34, fair: 30, hard: 24 }[grade];
  const height = Math.min(longest / long, draw.between(least, 72));
  const stroke = thick * height;
  let x = middle.x - (long * height) / 2;
  const [top, bottom] = [middle.y - height / 2, middle.y + height / 2];
  const letters = [...text].map((letter, at): Letter => {
    const wide = shares[at]! * height;
    const inner = { x: x + stroke / 2, y: top + stroke / 2, wide: wide - stroke, high: height - stroke };
    const lines = strokes[letter]!.map((flat) => {
      const points: Point[] = [];
      for (let index = 0; index < flat.length; index += 2)
        points.push({ x: inner.x + flat[index]! * inner.wide, y: inner.y + flat[index + 1]! * inner.high });
      return points;
    });
    const own = { letter, lines, left: x, right: x + wide };
    x += wide + gap * height;
    return own;
  });
  return { text, letters, stroke, top, bottom, left: letters[0]!.left, right: letters.at(-1)!.right };
}
