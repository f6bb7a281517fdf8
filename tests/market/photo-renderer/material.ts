import { layeredNoise, mix, pebbles, ramp, smoothNoise } from './noise';

/** Linear light, 0 to 1. */
export type Colour = [red: number, green: number, blue: number];

/** What one point of a piece looks like: colour, height in millimetres, and gloss from 0 to 1. */
export interface Touch {
  colour: Colour;
  height: number;
  gloss: number;
  /** Metal reflects its own colour. */
  metal: boolean;
}

/** A material's touch at a point; `inside` is the distance from the shape's edge, millimetres, positive inside. */
export type Material = (x: number, y: number, inside: number) => Touch;

export function srgb(hex: string): Colour {
  const value = Number.parseInt(hex.slice(1), 16);
  const linear = (channel: number): number => {
    const share = channel / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  return [linear((value >> 16) & 255), linear((value >> 8) & 255), linear(value & 255)];
}

export const scale = (colour: Colour, by: number): Colour => [colour[0] * by, colour[1] * by, colour[2] * by];
export const blend = (a: Colour, b: Colour, share: number): Colour => [
  mix(a[0], b[0], share),
  mix(a[1], b[1], share),
  mix(a[2], b[2], share),
];

export interface LeatherLook {
  colour: Colour;
  /** Width of a pebble, millimetres, and its height; smooth leather has flat ones. */
  grain: number;
  relief: number;
  gloss: number;
  /** Darkening and lightening in large patches, 0 to 1. */
  patina: number;
  seed: number;
}

export function leather(look: LeatherLook): Material {
  return (x, y) => {
    const warpX = x + 0.4 * look.grain * smoothNoise(x / look.grain / 2, y / look.grain / 2, look.seed + 3);
    const warpY = y + 0.4 * look.grain * smoothNoise(x / look.grain / 2, y / look.grain / 2, look.seed + 4);
    const pebble = pebbles(warpX / look.grain, warpY / look.grain, look.seed);
    const pores = smoothNoise(x / look.grain / 0.24, y / look.grain / 0.24, look.seed + 5);
    const patch = layeredNoise(x / 38, y / 38, look.seed + 9, 3);
    const tone = 1 + look.patina * patch + 0.1 * (pebble - 0.6) * Math.min(1, look.relief * 12) + 0.025 * pores;
    return {
      colour: scale(look.colour, Math.max(0.1, tone)),
      height: look.relief * (pebble + 0.18 * pores) + 0.05 * patch,
      gloss: look.gloss,
      metal: false,
    };
  };
}

/** A ribbed cloth with its diagonal, `thread` millimetres wide. */
export function twill(colour: Colour, thread: number, seed: number): Material {
  return (x, y) => {
    const rib = Math.sin(((x + y) * Math.PI) / thread);
    const weft = Math.sin(((x - y) * Math.PI) / (thread * 0.5));
    const fold = layeredNoise(x / 55, y / 45, seed, 2);
    return {
      colour: scale(colour, 0.9 + 0.1 * rib + 0.05 * weft + 0.08 * smoothNoise(x, y, seed + 1)),
      height: 0.09 * rib + 0.03 * weft + 5 * fold,
      gloss: 0.02,
      metal: false,
    };
  };
}

export function metal(colour: Colour, dullness: number, seed: number): Material {
  return (x, y, inside) => {
    const stain = ramp(0.1, 0.6, layeredNoise(x / 5, y / 5, seed, 3)) * dullness;
    return {
      colour: blend(colour, srgb('#4d5a3c'), stain * 0.6),
      height: 1.6 * Math.sqrt(Math.min(1, Math.max(0, inside) / 2.2)) + 0.02 * smoothNoise(x * 2, y * 2, seed),
      gloss: 0.9 - 0.6 * dullness,
      metal: true,
    };
  };
}

export function thread(colour: Colour): Material {
  return (_x, _y, inside) => ({
    colour,
    height: 0.45 * Math.sqrt(Math.min(1, Math.max(0, inside) / 0.35)),
    gloss: 0.08,
    metal: false,
  });
}

/** Cut edge or piping: rounded across its width. */
export function piping(colour: Colour, width: number): Material {
  return (x, y, inside) => ({
    colour: scale(colour, 0.95 + 0.08 * smoothNoise(x / 6, y / 6, 71)),
    height: (width / 2) * Math.sqrt(Math.max(0, 1 - (1 - Math.min(1, (2 * Math.max(0, inside)) / width)) ** 2)),
    gloss: 0.25,
    metal: false,
  });
}

/** The table, wall or bedspread that the piece stands on. */
export function backdrop(colour: Colour, seed: number, grained: boolean): Material {
  return (x, y) => {
    const plank = grained ? smoothNoise(x / 90, y / 4, seed) * 0.12 + smoothNoise(x / 200, y / 14, seed + 1) * 0.14 : 0;
    const soft = layeredNoise(x / 120, y / 120, seed + 2, 2) * 0.12;
    return { colour: scale(colour, 1 + plank + soft), height: 0, gloss: grained ? 0.06 : 0, metal: false };
  };
}
