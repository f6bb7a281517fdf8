import type { PixelImage, Point } from '../../src/photo/types';
import { smoothNoise } from './noise';
import { aslant, type Grade, type Paint, photograph, seenBox, type View } from './photographed';
import { type Chance, chance } from './random';

type Four = [Point, Point, Point, Point];

export interface PanelScene {
  image: PixelImage;
  corners: Four;
  /** Shares of the panel's width and height. */
  repeatX: number;
  repeatY: number;
  /** Whether the pattern has upright mirror axes. */
  axis: boolean;
  /** How far the nearest upright axis lies off the middle, shares of the repeat; with an axis only. */
  off: number;
  staggered: boolean;
  /** Middle of one motif, in the photo, and how far the nearest motif lies off the middle, shares of the repeat. */
  motif: Point;
  motifOff: number;
  /** A second panel beside it where asked for: its corners, and how its pattern stands; null where both ways look alike. */
  back: { corners: Four; stands: 'turned' | 'upright' | null } | null;
  /** A seam in the panel where asked for, and the pattern's step along it, shares of the repeat along it. */
  seam: { ends: [Point, Point]; step: number } | null;
}

export interface PanelWish {
  axis: boolean;
  /** Shares of the repeat by which the nearest axis is off the middle. */
  off: number;
  back?: boolean;
  seam?: boolean;
}

/** Ink at a place of one repeat, −0.5 to 0.5 both ways: 0 none, 1 or 2 one of two inks. */
type Motif = (x: number, y: number) => 0 | 1 | 2;

/** Motifs of discs, bars and leaves laid out at random in half a repeat, and mirrored onto the other where an axis is wanted. */
function motifOf(draw: Chance, axis: boolean, halfTurn: boolean): Motif {
  const shapes = Array.from({ length: draw.whole(3, 6) }, () => ({
    x: draw.between(axis ? 0 : -0.36, 0.36),
    y: draw.between(-0.38, 0.38),
    long: draw.between(0.06, 0.2),
    wide: draw.between(0.03, 0.09),
    turn: draw.between(0, Math.PI),
    ink: draw.share() < 0.6 ? (1 as const) : (2 as const),
  }));
  // What makes it no mirror picture must be large enough to be seen.
  if (!axis)
    shapes.push({ x: 0.17, y: draw.between(-0.2, 0.2), long: 0.2, wide: 0.06, turn: draw.between(0.5, 1.1), ink: 1 });
  if (!axis)
    shapes.push({ x: -0.16, y: draw.between(-0.2, 0.2), long: 0.14, wide: 0.09, turn: draw.between(0.4, 1.0), ink: 2 });
  const inside = (x: number, y: number): 0 | 1 | 2 => {
    for (const { x: sx, y: sy, long, wide, turn, ink } of shapes) {
      const [dx, dy] = [x - sx, y - sy];
      const a = (dx * Math.cos(turn) + dy * Math.sin(turn)) / long;
      const b = (dy * Math.cos(turn) - dx * Math.sin(turn)) / wide;
      if (a * a + b * b < 1) return ink;
    }
    return 0;
  };
  return (x, y) =>
    inside(x, y) || (axis ? inside(-x, y) : 0) || (halfTurn ? inside(-x, -y) || (axis ? inside(x, -y) : 0) : 0);
}

/** A panel of printed cloth on a table, seen aslant; both motif and camera are drawn by chance. */
export async function panelScene(seed: number, grade: Grade, wish: PanelWish): Promise<PanelScene> {
  const draw = chance(seed * 13 + 5);
  const [width, height] = wish.back ? [900, 560] : [720, 600];
  const view = aslant(width, height, grade, draw);
  const wide = wish.back ? 380 : draw.between(440, 600);
  const high = draw.between(360, 480);
  const left = (wish.back ? 40 : (width - wide) / 2) + draw.between(-10, 10);
  const top = (height - high) / 2 + draw.between(-10, 10);
  const p = wide / draw.between(wish.back ? 3.2 : 3.6, 11);
  const q = Math.min(high / 3.2, Math.max(high / 13, p * draw.between(0.7, 1.4)));
  const staggered = draw.share() < 0.3;
  const halfTurn = draw.share() < (wish.back ? 0.15 : 0.3);
  const motif = motifOf(draw, wish.axis, halfTurn);
  const onAxis = draw.share() < 0.5 ? 0 : 0.5;
  const phase = { x: left + wide / 2 + (onAxis + wish.off) * p, y: draw.between(0, q) };
  const stands = wish.back ? (draw.share() < 0.5 ? 'turned' : 'upright') : null;
  const back = { left: left + wide + 40, phase: { x: draw.between(0, p), y: draw.between(0, q) } };
  const step = wish.seam ? draw.of([0, 0.01, 0.03, 0.06, 0.1, 0.2, 0.35]) * (draw.share() < 0.5 ? -1 : 1) : 0;
  const seamAt = left + wide * draw.between(0.4, 0.6);
  const cloth = clothOf(draw, grade);
  const at = (x: number, y: number, by: Point): 0 | 1 | 2 => {
    const v = (y - by.y) / q;
    const row = Math.round(v);
    const u = (x - by.x) / p;
    if (!staggered) return motif(u - Math.round(u), v - row);
    // Half a repeat down, the same motif stands half a repeat aside, both at 0.7 of their size.
    for (const [du, dv] of [
      [0, 0],
      [0.5, 0.5],
    ] as const) {
      const [a, b] = [u - du - Math.round(u - du), v - dv - Math.round(v - dv)];
      const ink = motif(a / 0.72, b / 0.72);
      if (ink) return ink;
    }
    return 0;
  };
  const paint: Paint = ({ x, y }) => {
    if (x >= left && x < left + wide && y >= top && y < top + high) {
      if (wish.seam && Math.abs(x - seamAt) < 1.2) return cloth.seam;
      const moved = wish.seam && x > seamAt ? step * q : 0;
      return cloth.of(at(x, y - moved, phase), x, y);
    }
    if (wish.back && x >= back.left && x < back.left + wide && y >= top && y < top + high) {
      const ink = stands === 'turned' ? at(-x, -y, { x: -back.phase.x, y: -back.phase.y }) : at(x, y, back.phase);
      return cloth.of(ink, x, y);
    }
    return cloth.table(x, y);
  };
  const image = await photograph(view, paint, grade, draw);
  const box = (x: number): Four => seenBox(view, x, top, x + wide, top + high);
  const near = (value: number, every: number): number => value - Math.round(value / every) * every;
  const column = Math.round((left + wide / 2 - phase.x) / p);
  const row = Math.round((top + high / 2 - phase.y) / q);
  return {
    image,
    corners: box(left),
    repeatX: p / wide,
    repeatY: q / high,
    axis: wish.axis,
    off: near(onAxis + wish.off, 0.5),
    staggered,
    motif: view.seen({ x: phase.x + column * p, y: phase.y + row * q }),
    motifOff: near(onAxis + wish.off, 1),
    back: wish.back ? { corners: box(back.left), stands: halfTurn ? null : (stands as 'turned' | 'upright') } : null,
    seam: wish.seam ? { ends: seamEnds(view, seamAt, top, high), step } : null,
  };
}

const seamEnds = (view: View, x: number, top: number, high: number): [Point, Point] => [
  view.seen({ x, y: top }),
  view.seen({ x, y: top + high }),
];

type Rgb = readonly [number, number, number];

function clothOf(draw: Chance, grade: Grade) {
  const noise = smoothNoise(draw.whole(1, 1e6));
  const weave = smoothNoise(draw.whole(1, 1e6));
  const tone = draw.between(60, 190);
  const apart = { clear: draw.between(45, 90), fair: draw.between(28, 60), hard: draw.between(16, 40) }[grade];
  const sign = tone > 125 ? -1 : 1;
  const tint = [draw.between(0.8, 1.1), draw.between(0.7, 1), draw.between(0.5, 1)];
  const table = tone > 125 ? draw.between(40, tone - 35) : draw.between(tone + 45, 235);
  const colour = (value: number): Rgb => [value * tint[0]!, value * tint[1]!, value * tint[2]!];
  const grain = draw.between(2, 6);
  return {
    of: (ink: 0 | 1 | 2, x: number, y: number): Rgb => {
      const inked = ink === 0 ? 0 : ink === 1 ? apart : apart * 0.5;
      return colour(tone + sign * inked + grain * weave(x / 2.5, y / 2.5) + 4 * noise(x / 90, y / 90));
    },
    seam: colour(tone * 0.5),
    table: (x: number, y: number): Rgb => {
      const value = table + 4 * noise(x / 60, y / 60) + 2 * weave(x / 4, y / 4);
      return [value, value * 0.98, value * 0.95];
    },
  };
}
