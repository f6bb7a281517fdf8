import type { PixelImage, Point, Quad } from '../../src/photo/types';
import { type Lettering, letteringOf } from './letters';
import { smoothNoise } from './noise';
import { aslant, type Grade, photograph, seenBox, type View } from './photographed';
import { chance } from './random';
import { drawn, held, hex, taken3 } from './second/svg';

export interface LetteringScene extends Lettering {
  image: PixelImage;
  corners: Quad;
}

const [width, height] = [720, 420];
const contrasts: Readonly<Record<Grade, [number, number]>> = { clear: [50, 110], fair: [32, 70], hard: [20, 45] };

/** A line printed on leather; `given`: its text. */
export async function letteringScene(seed: number, grade: Grade, given?: string): Promise<LetteringScene> {
  const draw = chance(seed * 11 + 7);
  const view = aslant(width, height, grade, draw);
  const lettering = letteringOf({ x: width / 2, y: height / 2 }, width * 0.75, grade, draw, given);
  const base = draw.between(60, 190);
  const apart = draw.between(...contrasts[grade]) * (base > 125 ? -1 : 1);
  const [grain, fine] = [smoothNoise(draw.whole(1, 1e6)), smoothNoise(draw.whole(1, 1e6))];
  const lines = lettering.letters.flatMap((letter) => letter.lines);
  const image = await photograph(
    view,
    ({ x, y }) => {
      const inked = lines.some((line) => away(line, x, y) < lettering.stroke / 2);
      const value = base + (inked ? apart : 0) + 5 * grain(x / 9, y / 9) + 3 * fine(x / 3, y / 3);
      return [value, value * 0.85, value * 0.7];
    },
    grade,
    draw,
  );
  return { ...lettering, image, corners: cornersOf(lettering, view) };
}

/** The same as a vector picture under the other camera. */
export async function secondLetteringScene(seed: number, grade: Grade, given?: string): Promise<LetteringScene> {
  const draw = chance(seed * 19 + 4);
  const lettering = letteringOf({ x: width / 2, y: height / 2 }, width * 0.72, grade, draw, given);
  const base = draw.between(60, 190);
  const ink = base + draw.between(...contrasts[grade]) * (base > 125 ? -1 : 1);
  const colour = (value: number): string => hex(value, value * 0.86, value * 0.74);
  const paths = lettering.letters
    .flatMap((letter) => letter.lines)
    .map((line) => `<path d="M${line.map(({ x, y }) => `${x} ${y}`).join('L')}"/>`)
    .join('');
  const specks = Array.from(
    { length: 500 },
    () =>
      `<circle cx="${draw.between(0, width)}" cy="${draw.between(0, height)}" r="${draw.between(0.5, 1.6)}" fill="${colour(base + draw.between(-9, 9))}"/>`,
  ).join('');
  const sheet = await drawn(
    `<g transform="scale(3)"><rect x="-400" y="-400" width="1800" height="1400" fill="${colour(base)}"/>${specks}<g fill="none" stroke="${colour(ink)}" stroke-width="${lettering.stroke}" stroke-linecap="round" stroke-linejoin="round">${paths}</g></g>`,
    width * 3,
    height * 3,
  );
  const camera = held(width, height, grade, draw);
  const image = await taken3(sheet, camera, grade, draw);
  return { ...lettering, image, corners: cornersOf(lettering, camera) };
}

const cornersOf = ({ left, right, top, bottom }: Lettering, camera: Pick<View, 'seen'>): Quad =>
  seenBox(camera, left, top, right, bottom);

function away(line: readonly Point[], x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let at = 1; at < line.length; at++) {
    const [a, b] = [line[at - 1]!, line[at]!];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const share = Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy)));
    least = Math.min(least, Math.hypot(x - a.x - share * dx, y - a.y - share * dy));
  }
  return least;
}
