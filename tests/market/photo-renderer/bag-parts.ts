import type { Colour, LeatherLook, Material } from './material';
import { leather, srgb, thread } from './material';
import type { Layer } from './scene';
import type { Segment } from './shapes';
import { segmentsOf, stitchesAlong, strokesShape } from './shapes';

/** What a piece is made of; colours as #rrggbb, sizes in millimetres. */
export interface BagLook {
  model: 'tote' | 'satchel' | 'bucket';
  width: number;
  height: number;
  leather: Omit<LeatherLook, 'seed'>;
  handle: string;
  trim: string;
  thread: string;
  lining: string;
  metal: string;
  /** 0 bright, 1 dull with verdigris. */
  dullness: number;
  backdrop: string;
  planks: boolean;
}

export const skinOf = (look: BagLook, seed: number): Material => leather({ ...look.leather, seed });
export const handleSkin = (look: BagLook, seed: number): Material =>
  leather({ colour: srgb(look.handle), grain: 0.8, relief: 0.02, gloss: 0.2, patina: 0.2, seed: seed + 40 });

export function sewn(points: number[], colour: string, stitch = 3.2): Layer {
  return {
    covers: strokesShape(stitchesAlong(points, stitch, stitch * 0.35), stitch * 0.22, stitch * 0.08, stitch * 0.8),
    material: thread(srgb(colour)),
    thickness: 0.2,
    rounded: 0.3,
  };
}

export function cord(points: number[], width: number, material: Material, thickness: number): Layer {
  const segments: Segment[] = segmentsOf(points);
  return { covers: strokesShape(segments, width, width / 14, width * 1.6), material, thickness, rounded: width / 2 };
}

/** The hollow of a lock. */
export const dark = { colour: [0.02, 0.02, 0.02] as Colour, height: 0, gloss: 0, metal: false };
