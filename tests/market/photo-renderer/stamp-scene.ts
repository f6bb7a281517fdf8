import type { Setting } from './lettering';
import { letteringShape } from './lettering';
import type { Colour, LeatherLook } from './material';
import { leather, piping, scale, srgb, thread, twill } from './material';
import { ramp, smoothNoise } from './noise';
import type { Random } from './random';
import type { Press, Scene } from './scene';
import { box, stitchesAlong, strokesShape } from './shapes';

export type Technique = 'blind' | 'inked' | 'foil';

/** A line pressed or printed on the leather. */
export interface StampedLine extends Setting {
  technique: Technique;
  /** Millimetres that a blind stamp sinks in. */
  depth: number;
  /** Colour of ink or foil; blind stamps only darken. */
  colour?: string;
  /** Share of the strokes that is worn away, 0 to 1. */
  worn: number;
  /** How much shallower the line ends than it begins, -1 to 1. */
  uneven: number;
}

/** A patch of leather with its stamp: on the bare leather, or on a sewn tab on the lining. */
export interface StampScene {
  leather: Omit<LeatherLook, 'seed'>;
  lines: StampedLine[];
  /** Half sizes of a sewn tab in millimetres; the whole picture is leather when absent. */
  tab?: { halfWidth: number; halfHeight: number; lining: string; thread: string };
  /** A seam with stitches beside the stamp: its height over the middle, millimetres. */
  seam?: { y: number; thread: string };
}

export function stampScene(spec: StampScene, seed: number, random: Random): Scene {
  const skin = leather({ ...spec.leather, seed });
  const layers: Scene['layers'] = [];
  if (spec.tab !== undefined) {
    const { halfWidth: w, halfHeight: h } = spec.tab;
    layers.push({ covers: box(-w, -h, w, h, 3), material: skin, thickness: 1.2, rounded: 0.9 });
    const inset = 2.6;
    const around = [
      [-w + inset, -h + inset, w - inset, -h + inset],
      [w - inset, -h + inset, w - inset, h - inset],
      [w - inset, h - inset, -w + inset, h - inset],
      [-w + inset, h - inset, -w + inset, -h + inset],
    ];
    const stitches = around.flatMap((side) => stitchesAlong(side, 2.4, 0.8));
    layers.push({
      covers: strokesShape(stitches, 0.55, 0.15, 1.5),
      material: thread(srgb(spec.tab.thread)),
      thickness: 0.2,
      rounded: 0.25,
    });
  }
  if (spec.seam !== undefined) {
    const { y } = spec.seam;
    layers.push({
      covers: box(-200, y - 30, 200, y, 0.5),
      material: skin,
      thickness: 1.1,
      rounded: 1.1,
    });
    layers.push({
      covers: strokesShape(stitchesAlong([-120, y - 3, 120, y - 3], 2.8, 0.9), 0.6, 0.2, 1.5),
      material: thread(srgb(spec.seam.thread)),
      thickness: 0.2,
      rounded: 0.25,
    });
    layers.push({
      covers: box(-200, y - 0.5, 200, y + 0.5, 0.4),
      material: piping(scale(spec.leather.colour, 0.55), 1),
      thickness: 0.2,
      rounded: 0.4,
    });
  }
  return {
    ground: spec.tab === undefined ? skin : twill(srgb(spec.tab.lining), 1.3, seed + 1),
    layers,
    presses: spec.lines.map((line, index) => press(line, seed + 1000 + index * 17, random)),
  };
}

function press(line: StampedLine, seed: number, random: Random): Press {
  const shape = letteringShape(line, random);
  const ink: Colour | null = line.colour === undefined ? null : srgb(line.colour);
  const soft = line.capHeight * 0.03;
  const reach = line.capHeight * 0.6;
  return {
    depth: (x, y) => {
      const outside = shape(x, y);
      if (outside > reach) return { sunk: 0, colour: null, share: 0, gloss: 0, flat: 0 };
      const wear = ramp(
        0.25,
        0.75,
        smoothNoise(x / 1.1, y / 1.1, seed) * 0.5 + 0.5 * smoothNoise(x / 5, y / 5, seed + 1) + 0.5,
      );
      const kept = 1 - line.worn * wear;
      const along = Math.min(1, Math.max(0, (x - line.x) / (line.capHeight * 8) + 0.5));
      const strength = Math.max(0.1, 1 - line.uneven * along) * kept;
      const inside = ramp(soft, -soft * 1.5, outside) * strength;
      const rim = Math.exp(-((outside - soft * 2.5) ** 2) / (2 * (soft * 2) ** 2)) * 0.16 * strength;
      if (line.technique === 'blind') {
        return {
          sunk: line.depth * (inside - rim),
          colour: null,
          share: 0.3 * inside,
          gloss: 0.25,
          flat: 0.75 * inside,
        };
      }
      const sunk = line.depth * (inside - rim);
      const speckle = 0.9 + 0.1 * smoothNoise(x * 9, y * 9, seed + 5);
      const covers = Math.min(1, inside * (line.technique === 'foil' ? 0.95 : 0.85) * speckle);
      return { sunk, colour: ink, share: covers, gloss: line.technique === 'foil' ? 0.8 : 0, flat: 0.5 * inside };
    },
  };
}
