import type { PixelImage, Point, Quad } from '../../../src/photo/types';
import { type Grade, seenBox } from '../photographed';
import { type Chance, chance } from '../random';
import {
  type Basis,
  hasHalfTurn,
  operationsOf,
  type PlaneGroup,
  placeOf,
  type StepTruth,
  stepTruth,
  systemOf,
  uprightAxes,
} from './plane-groups';
import { drawn, held, hex, taken3 } from './svg';

const fine = 3;
const [width, height] = [920, 580];

export interface WallpaperScene {
  image: PixelImage;
  front: Quad;
  back: Quad;
  /** Steps of the repeat across and down, shares of the panel's width and height. */
  across: StepTruth;
  down: StepTruth;
  /** How far the nearest upright mirror axis lies off the front's middle, shares of the repeat; null without one. */
  axisOff: number | null;
  /** How the back's pattern stands; null where it stands on its head as it does upright. */
  stands: 'turned' | 'upright' | null;
}

/** A lattice as the group asks for, its first step `long` pixels, turned by degrees. */
function basisOf(group: PlaneGroup, long: number, degrees: number, draw: Chance): Basis {
  const rectangular = { x: 0, y: long * draw.between(0.75, 1.3) };
  const other = {
    oblique: { x: long * draw.of([0.25, 1 / 3, 0.5, -0.25]), y: long * draw.between(0.45, 0.7) },
    rectangular,
    square: { x: 0, y: long },
    hexagonal: { x: -long / 2, y: (long * Math.sqrt(3)) / 2 },
  }[systemOf(group)];
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const turned = ({ x, y }: Point): Point => ({ x: c * x - s * y, y: s * x + c * y });
  return { one: turned({ x: long, y: 0 }), other: turned(other) };
}

interface Shape {
  ink: 0 | 1;
  /** Outline in shares of the lattice's steps. */
  points: Point[];
}

/** Outlines that no mirror or turn brings onto themselves: a hook and a sail, about the middle of one of them. */
const outlines = [
  [-0.5, -1, 0.1, -1, 0.1, 0.3, 0.9, 0.1, 0.7, 0.9, -0.5, 0.8],
  [-0.8, 0.7, -0.3, -0.9, 0.9, 0.5],
] as const;

function shapesOf(group: PlaneGroup, basis: Basis, draw: Chance): Shape[] {
  const { one, other } = basis;
  const area = Math.abs(one.x * other.y - one.y * other.x);
  // Each shape has about the share of the plane that one position of the group has.
  const reach = 0.42 * Math.sqrt(area / operationsOf(group).length);
  return ([0, 1] as const).map((ink) => {
    const [u, v, turn] = [draw.share(), draw.share(), draw.between(0, 2 * Math.PI)];
    const outline = outlines[ink]!;
    const points: Point[] = [];
    for (let at = 0; at < outline.length; at += 2) {
      const [x, y] = [outline[at]! * reach, outline[at + 1]! * reach];
      const [px, py] = [x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn)];
      const whole = one.x * other.y - one.y * other.x;
      points.push({ x: u + (px * other.y - py * other.x) / whole, y: v + (one.x * py - one.y * px) / whole });
    }
    return { ink, points };
  });
}

/** Every copy of the shapes that meets a panel, ink by ink: which lies over which is the same under every symmetry. */
function copies(
  group: PlaneGroup,
  basis: Basis,
  shapes: readonly Shape[],
  inks: readonly string[],
  from: Point,
): string {
  const reach =
    Math.ceil(700 / Math.min(Math.hypot(basis.one.x, basis.one.y), Math.hypot(basis.other.x, basis.other.y))) + 3;
  const wide = Array.from({ length: 2 * reach + 1 }, (_, at) => at - reach);
  return shapes
    .map(({ ink, points }) => {
      const outlines = operationsOf(group).flatMap(([a, b, c, d, e, f]) =>
        wide.flatMap((i) =>
          wide.flatMap((j) => {
            const placed = points.map(({ x, y }) => placeOf(basis, a * x + b * y + c + i, d * x + e * y + f + j));
            const [first] = placed;
            if (!first || Math.hypot(first.x, first.y) > 560) return [];
            return `M${placed.map(({ x, y }) => `${(x + from.x).toFixed(2)} ${(y + from.y).toFixed(2)}`).join('L')}Z`;
          }),
        ),
      );
      return `<path d="${outlines.join('')}" fill="${inks[ink]}"/>`;
    })
    .join('');
}

/** Two panels printed with a pattern of the group, the second upright or on its head; `degrees`: how the pattern is turned. */
export async function wallpaperScene(
  group: PlaneGroup,
  degrees: number,
  seed: number,
  grade: Grade,
): Promise<WallpaperScene> {
  const draw = chance(seed * 29 + 3);
  const [wide, high] = [draw.between(365, 385), draw.between(380, 450)];
  const [left, top] = [55 + draw.between(-8, 8), (height - high) / 2 + draw.between(-8, 8)];
  const basis = basisOf(group, wide / draw.between(4.2, 6.5), degrees, draw);
  const shapes = shapesOf(group, basis, draw);
  const tone = draw.between(70, 185);
  const sign = tone > 128 ? -1 : 1;
  const apart = { clear: draw.between(50, 85), fair: draw.between(30, 60), hard: draw.between(18, 40) }[grade] * sign;
  const colour = (value: number): string => hex(value, value * 0.9, value * 0.78);
  const inks = [colour(tone + apart), colour(tone + apart * 0.55)];
  const origin = { x: left + wide / 2 + draw.between(-40, 40), y: top + high / 2 + draw.between(-40, 40) };
  const other = left + wide + 45;
  const stands = draw.share() < 0.5 ? 'turned' : 'upright';
  const backOrigin = { x: other + wide / 2 + draw.between(-40, 40), y: top + high / 2 + draw.between(-40, 40) };
  const panel = (x: number, from: Point, id: string, turn: number): string =>
    `<clipPath id="${id}"><rect x="${x}" y="${top}" width="${wide}" height="${high}"/></clipPath>
     <rect x="${x}" y="${top}" width="${wide}" height="${high}" fill="${colour(tone)}"/>
     <g transform="rotate(${turn} ${x + wide / 2} ${top + high / 2})"><g clip-path="url(#${id})">${copies(group, basis, shapes, inks, from)}</g></g>`;
  const table = tone > 128 ? hex(tone - 60, tone - 62, tone - 66) : hex(tone + 70, tone + 68, tone + 60);
  const sheet = await drawn(
    `<g transform="scale(${fine})"><rect width="${width}" height="${height}" fill="${table}"/>${panel(left, origin, 'a', 0)}${panel(other, backOrigin, 'b', stands === 'turned' ? 180 : 0)}</g>`,
    width * fine,
    height * fine,
  );
  const camera = held(width, height, grade, draw);
  const image = await taken3(sheet, camera, grade, draw);
  const box = (x: number): Quad => seenBox(camera, x, top, x + wide, top + high);
  const shareOf = ({ x, y }: Point): Point => ({ x: x / wide, y: y / high });
  const shares = ({ sure, may }: StepTruth): StepTruth => ({ sure: shareOf(sure), may: may.map(shareOf) });
  const across = stepTruth(basis, true);
  const offs = uprightAxes(group, basis).map((x) => origin.x + x - (left + wide / 2));
  const nearest = offs.sort((a, b) => Math.abs(a) - Math.abs(b))[0];
  return {
    image,
    front: box(left),
    back: box(other),
    across: shares(across),
    down: shares(stepTruth(basis, false)),
    axisOff: nearest === undefined ? null : nearest / across.sure.x,
    stands: hasHalfTurn(group) ? null : stands,
  };
}
