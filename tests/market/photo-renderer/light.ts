import type { PixelImage } from '../../../src/photo/types';
import type { Random } from './random';
import { normalFrom } from './random';
import type { Exposure } from './scene';

/** How the room is lit and what the phone makes of it. */
export interface Light {
  /** Direction that the light comes from, degrees: 0 right, 90 bottom of the picture; its height over the plane. */
  from: number;
  elevation: number;
  /** Shares of direct and of scattered light. */
  direct: number;
  scattered: number;
  /** Warmth: red above 1, blue below. */
  warmth: number;
  /** Fall of brightness towards the far side, 0 to 1, and towards the corners. */
  fall: number;
  vignette: number;
  /** Blur in pixels; a hand that moved draws it out along `movedTowards` degrees. */
  blur: number;
  moved?: { pixels: number; towards: number };
  /** Deviation of the sensor's noise, in steps of 255. */
  noise: number;
}

export function shadowOf(light: Light): { x: number; y: number } {
  const angle = (light.from * Math.PI) / 180;
  const length = 1 / Math.tan((Math.max(light.elevation, 15) * Math.PI) / 180);
  return { x: -Math.cos(angle) * length, y: -Math.sin(angle) * length };
}

/** Light on the exposure, the lens, the sensor: pixels with orientation applied, alpha 255. */
export function develop(exposure: Exposure, light: Light, random: Random): PixelImage {
  const { width, height } = exposure;
  let planes = shade(exposure, light);
  if (light.blur > 0) planes = planes.map((plane) => soften(plane, width, height, light.blur));
  const moved = light.moved;
  if (moved !== undefined) planes = planes.map((plane) => drag(plane, width, height, moved.pixels, moved.towards));
  const data = new Uint8ClampedArray(width * height * 4);
  for (let at = 0; at < width * height; at++) {
    const shared = normalFrom(random) * light.noise;
    for (let channel = 0; channel < 3; channel++) {
      const linear = Math.max(0, planes[channel]![at]!);
      const value = linear <= 0.0031308 ? linear * 12.92 : 1.055 * linear ** (1 / 2.4) - 0.055;
      data[at * 4 + channel] = value * 255 + shared + normalFrom(random) * light.noise * 0.4;
    }
    data[at * 4 + 3] = 255;
  }
  return { width, height, data };
}

function shade(exposure: Exposure, light: Light): Float32Array[] {
  const { width, height, relief } = exposure;
  const azimuth = (light.from * Math.PI) / 180;
  const elevation = (light.elevation * Math.PI) / 180;
  const lx = Math.cos(azimuth) * Math.cos(elevation);
  const ly = Math.sin(azimuth) * Math.cos(elevation);
  const lz = Math.sin(elevation);
  const [hx, hy, hz] = unit(lx, ly, lz + 1);
  const planes = [0, 1, 2].map(() => new Float32Array(width * height));
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const at = row * width + column;
      const [nx, ny, nz] = normalAt(exposure, row, column, relief);
      const facing = Math.max(0, nx * lx + ny * ly + nz * lz) / Math.max(0.35, lz);
      const shine = Math.max(0, nx * hx + ny * hy + nz * hz);
      const gloss = exposure.gloss[at]!;
      const across =
        ((column / width - 0.5) * Math.cos(azimuth) + (row / height - 0.5) * Math.sin(azimuth)) * light.fall;
      const corner = (column / width - 0.5) ** 2 + (row / height - 0.5) ** 2;
      const reach = (1 + across) * (1 - light.vignette * corner);
      const lit = exposure.lit[at]!;
      const diffuse = (light.scattered * (0.7 + 0.3 * lit) + light.direct * facing * lit) * reach;
      const glint = gloss * light.direct * lit * reach * (0.9 * shine ** 60 + 0.12 * shine ** 12);
      for (let channel = 0; channel < 3; channel++) {
        const colour = exposure.colour[at * 3 + channel]!;
        const tint = channel === 0 ? light.warmth : channel === 2 ? 2 - light.warmth : 1;
        const own = exposure.metal[at] === 1 ? colour * (0.5 * diffuse + 2.2 * glint + 0.25 * gloss) : colour * diffuse;
        planes[channel]![at] = tint * (own + (exposure.metal[at] === 1 ? 0.25 : 0.55) * glint);
      }
    }
  }
  return planes;
}

/** Normal of the relief in the plane's own axes, from the neighbours' places and heights. */
function normalAt(exposure: Exposure, row: number, column: number, relief: Float32Array): [number, number, number] {
  const { width, height, x, y } = exposure;
  const at = row * width + column;
  const right = column + 1 < width ? at + 1 : at;
  const left = column > 0 ? at - 1 : at;
  const down = row + 1 < height ? at + width : at;
  const up = row > 0 ? at - width : at;
  const xu = x[right]! - x[left]!;
  const yu = y[right]! - y[left]!;
  const xv = x[down]! - x[up]!;
  const yv = y[down]! - y[up]!;
  const hu = relief[right]! - relief[left]!;
  const hv = relief[down]! - relief[up]!;
  const area = xu * yv - yu * xv || 1e-9;
  const limit = (slope: number): number => Math.min(2.5, Math.max(-2.5, slope));
  return unit(-limit((hu * yv - hv * yu) / area), -limit((hv * xu - hu * xv) / area), 1);
}

function unit(x: number, y: number, z: number): [number, number, number] {
  const length = Math.hypot(x, y, z);
  return [x / length, y / length, z / length];
}

function soften(plane: Float32Array, width: number, height: number, sigma: number): Float32Array {
  const radius = Math.ceil(sigma * 2.5);
  const weights = Array.from({ length: radius * 2 + 1 }, (_, at) => Math.exp(-((at - radius) ** 2) / (2 * sigma ** 2)));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const pass = (source: Float32Array, stepX: number, stepY: number): Float32Array => {
    const out = new Float32Array(source.length);
    for (let row = 0; row < height; row++) {
      for (let column = 0; column < width; column++) {
        let sum = 0;
        for (let tap = -radius; tap <= radius; tap++) {
          const c = Math.min(width - 1, Math.max(0, column + tap * stepX));
          const r = Math.min(height - 1, Math.max(0, row + tap * stepY));
          sum += weights[tap + radius]! * source[r * width + c]!;
        }
        out[row * width + column] = sum / total;
      }
    }
    return out;
  };
  return pass(pass(plane, 1, 0), 0, 1);
}

function drag(plane: Float32Array, width: number, height: number, pixels: number, towards: number): Float32Array {
  const out = new Float32Array(plane.length);
  const stepX = Math.cos((towards * Math.PI) / 180);
  const stepY = Math.sin((towards * Math.PI) / 180);
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      let sum = 0;
      for (let tap = 0; tap < pixels; tap++) {
        const c = Math.min(width - 1, Math.max(0, Math.round(column + (tap - pixels / 2) * stepX)));
        const r = Math.min(height - 1, Math.max(0, Math.round(row + (tap - pixels / 2) * stepY)));
        sum += plane[r * width + c]!;
      }
      out[row * width + column] = sum / pixels;
    }
  }
  return out;
}
