import type { CameraPose } from './camera';
import { planePoint } from './camera';
import type { Colour, Material } from './material';
import { blend, scale } from './material';
import { ramp } from './noise';
import type { Distance } from './shapes';

/** One piece of material lying on those before it. Lengths in millimetres. */
export interface Layer {
  covers: Distance;
  material: Material;
  /** Thickness that shows at its edge and casts a shadow; `rounded` is how far in from the edge it rises. */
  thickness: number;
  rounded: number;
}

/** A change pressed into or laid on what is already there (a stamp, a crease). */
export interface Press {
  /** 0 where nothing changes, 1 in the middle of a stroke; a little above 0 on the rim. */
  depth: (x: number, y: number) => { sunk: number; colour: Colour | null; share: number; gloss: number; flat: number };
}

export interface Scene {
  ground: Material;
  layers: Layer[];
  presses: Press[];
}

/** What the camera sees before light falls on it: one entry a pixel. */
export interface Exposure {
  width: number;
  height: number;
  x: Float32Array;
  y: Float32Array;
  relief: Float32Array;
  colour: Float32Array;
  gloss: Float32Array;
  metal: Uint8Array;
  /** Share of the light that reaches the pixel past the layers above it. */
  lit: Float32Array;
}

/** `shadow`: where a thing of 1 mm height throws its shadow, millimetres. */
export function expose(scene: Scene, pose: CameraPose, shadow: { x: number; y: number }): Exposure {
  const { width, height } = pose;
  const size = width * height;
  const exposure: Exposure = {
    width,
    height,
    x: new Float32Array(size),
    y: new Float32Array(size),
    relief: new Float32Array(size),
    colour: new Float32Array(size * 3),
    gloss: new Float32Array(size),
    metal: new Uint8Array(size),
    lit: new Float32Array(size).fill(1),
  };
  const toPlane = planePoint(pose);
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const at = row * width + column;
      const { x, y } = toPlane(column + 0.5, row + 0.5);
      const beside = toPlane(column + 1.5, row + 0.5);
      touchPoint(scene, exposure, at, x, y, Math.hypot(beside.x - x, beside.y - y), shadow);
    }
  }
  return exposure;
}

function touchPoint(
  scene: Scene,
  exposure: Exposure,
  at: number,
  x: number,
  y: number,
  pixel: number,
  shadow: { x: number; y: number },
): void {
  const below = scene.ground(x, y, 99);
  let { colour, height: relief, gloss, metal } = below;
  let lit = 1;
  for (const layer of scene.layers) {
    const inside = -layer.covers(x, y);
    const share = Math.min(1, Math.max(0, inside / pixel + 0.5));
    if (share < 1 && layer.thickness > 0) {
      const thrown = -layer.covers(x - shadow.x * layer.thickness, y - shadow.y * layer.thickness);
      const soft = Math.max(pixel, layer.thickness * 0.5);
      // Contact darkening close to the edge, and the shadow that the light throws.
      const hidden = Math.max(0.75 * ramp(-soft, soft, thrown), 0.45 * ramp(-2.5 * soft, 0, inside));
      lit *= 1 - hidden * (1 - share);
    }
    if (share === 0) continue;
    const touch = layer.material(x, y, inside);
    const edge = layer.rounded > 0 ? Math.min(1, Math.max(0, inside) / layer.rounded) : 1;
    const rise = layer.thickness * Math.sqrt(1 - (1 - edge) ** 2);
    colour = blend(colour, touch.colour, share);
    relief += share * (rise + touch.height - relief);
    gloss += share * (touch.gloss - gloss);
    metal = share > 0.5 ? touch.metal : metal;
    lit += share * (1 - lit);
  }
  for (const press of scene.presses) {
    const change = press.depth(x, y);
    if (change.share === 0 && change.sunk === 0 && change.flat === 0) continue;
    relief = relief * (1 - change.flat) - change.sunk;
    if (change.colour !== null) colour = blend(colour, change.colour, change.share);
    else colour = scale(colour, 1 - change.share);
    gloss += change.gloss * change.share;
  }
  exposure.x[at] = x;
  exposure.y[at] = y;
  exposure.relief[at] = relief;
  exposure.colour.set(colour, at * 3);
  exposure.gloss[at] = Math.max(0, gloss);
  exposure.metal[at] = metal ? 1 : 0;
  exposure.lit[at] = lit;
}
