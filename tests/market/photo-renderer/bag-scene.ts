import type { Colour, LeatherLook, Material } from './material';
import { backdrop, blend, leather, metal, piping, scale, srgb, thread, twill } from './material';
import { ramp } from './noise';
import type { Layer, Scene } from './scene';
import type { Segment } from './shapes';
import { arch, box, disc, polygon, ring, segmentsOf, stitchesAlong, strokesShape } from './shapes';

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

export type BagView = 'front' | 'back' | 'base' | 'lining' | 'zip' | 'strap' | 'handle' | 'hardware' | 'corner';

const skinOf = (look: BagLook, seed: number): Material => leather({ ...look.leather, seed });
const handleSkin = (look: BagLook, seed: number): Material =>
  leather({ colour: srgb(look.handle), grain: 0.8, relief: 0.02, gloss: 0.2, patina: 0.2, seed: seed + 40 });

export const bagScene = (look: BagLook, view: BagView, seed: number): Scene => ({
  ground: backdrop(srgb(look.backdrop), seed + 11, look.planks),
  layers: views[view](look, seed),
  presses: [],
});

function sewn(points: number[], colour: string, stitch = 3.2): Layer {
  return {
    covers: strokesShape(stitchesAlong(points, stitch, stitch * 0.35), stitch * 0.22, stitch * 0.08, stitch * 0.8),
    material: thread(srgb(colour)),
    thickness: 0.2,
    rounded: 0.3,
  };
}

function cord(points: number[], width: number, material: Material, thickness: number): Layer {
  const segments: Segment[] = segmentsOf(points);
  return { covers: strokesShape(segments, width, width / 14, width * 1.6), material, thickness, rounded: width / 2 };
}

function outline(look: BagLook): number[] {
  const w = look.width / 2;
  const h = look.height / 2;
  if (look.model === 'tote') return [-w, -h, w, -h, w * 0.86, h, -w * 0.86, h];
  if (look.model === 'bucket')
    return [-w * 0.78, -h, w * 0.78, -h, w, h * 0.55, w * 0.84, h, -w * 0.84, h, -w, h * 0.55];
  return [-w, -h * 0.9, -w * 0.94, -h, w * 0.94, -h, w, -h * 0.9, w * 0.97, h, -w * 0.97, h];
}

function body(look: BagLook, seed: number): Layer[] {
  const points = outline(look);
  const closed = [...points, points[0]!, points[1]!];
  const inner = closed.map((value, at) => value * (at % 2 === 0 ? 0.96 : 0.95));
  return [
    { covers: polygon(points, 9), material: skinOf(look, seed), thickness: 16, rounded: 24 },
    cord(
      closed.map((value) => value * 1.015),
      5,
      piping(srgb(look.trim), 5),
      2.2,
    ),
    sewn(inner, look.thread, 5),
  ];
}

function handles(look: BagLook, seed: number): Layer[] {
  const span = look.width * (look.model === 'satchel' ? 0.16 : 0.26);
  const foot = -look.height * 0.36;
  const rise = look.height * (look.model === 'satchel' ? 0.3 : 0.62);
  const curve = arch(-span, span, foot, rise);
  const tabs = [-span, span].flatMap((x): Layer[] => [
    {
      covers: box(x - 9, foot - 6, x + 9, foot + 26, 5),
      material: handleSkin(look, seed),
      thickness: 2,
      rounded: 2,
    },
    sewn([x - 6, foot + 2, x - 6, foot + 22, x + 6, foot + 22, x + 6, foot + 2], look.thread, 3),
    {
      covers: ring(x, foot - 8, 8, 3),
      material: metal(srgb(look.metal), look.dullness, seed),
      thickness: 1.5,
      rounded: 1.5,
    },
  ]);
  return [cord(curve, 13, handleSkin(look, seed), 6), ...tabs];
}

function flap(look: BagLook, seed: number): Layer[] {
  const w = look.width / 2;
  const h = look.height / 2;
  const points = [
    -w * 0.98,
    -h,
    w * 0.98,
    -h,
    w * 0.96,
    h * 0.05,
    w * 0.55,
    h * 0.3,
    -w * 0.55,
    h * 0.3,
    -w * 0.96,
    h * 0.05,
  ];
  const inner = points.map((value, at) => value * (at % 2 === 0 ? 0.965 : 0.9) + (at % 2 === 0 ? 0 : -1));
  return [
    { covers: polygon(points, 8), material: skinOf(look, seed + 2), thickness: 3.5, rounded: 4 },
    sewn([...inner, inner[0]!, inner[1]!], look.thread, 5),
    {
      covers: box(-17, h * 0.16, 17, h * 0.16 + 40, 4),
      material: metal(srgb(look.metal), look.dullness, seed),
      thickness: 3,
      rounded: 3,
    },
    { covers: box(-3, h * 0.16 + 8, 3, h * 0.16 + 32, 2), material: () => dark, thickness: 0, rounded: 0 },
  ];
}

const dark = { colour: [0.02, 0.02, 0.02] as Colour, height: 0, gloss: 0, metal: false };

function front(look: BagLook, seed: number): Layer[] {
  const layers = [...handles(look, seed).slice(0, 1), ...body(look, seed)];
  if (look.model === 'satchel') return [...layers, ...flap(look, seed)];
  const rivets = [-1, 1].map(
    (side): Layer => ({
      covers: disc(side * look.width * 0.4, -look.height * 0.42, 4.5),
      material: metal(srgb(look.metal), look.dullness, seed),
      thickness: 2,
      rounded: 4,
    }),
  );
  return [...layers, ...handles(look, seed).slice(1), ...rivets];
}

function back(look: BagLook, seed: number): Layer[] {
  const w = look.width * 0.36;
  const pocket = look.height * 0.1;
  const lip: Layer = {
    covers: box(-w, -pocket, w, look.height * 0.38, 6),
    material: skinOf(look, seed + 5),
    thickness: 2,
    rounded: 2.5,
  };
  return [
    ...handles(look, seed).slice(0, 1),
    ...body(look, seed),
    lip,
    sewn([-w + 5, -pocket + 6, w - 5, -pocket + 6], look.thread, 4),
  ];
}

function base(look: BagLook, seed: number): Layer[] {
  const w = look.width / 2;
  const d = look.width * 0.2;
  const feet = [
    [-w * 0.82, -d * 0.6],
    [w * 0.82, -d * 0.6],
    [w * 0.82, d * 0.6],
    [-w * 0.82, d * 0.6],
  ].map(
    ([x, y]): Layer => ({
      covers: disc(x!, y!, 7),
      material: metal(srgb(look.metal), look.dullness, seed),
      thickness: 5,
      rounded: 7,
    }),
  );
  const edge = [-w, -d, w, -d, w, d, -w, d, -w, -d];
  return [
    { covers: box(-w, -d, w, d, 14), material: skinOf(look, seed + 7), thickness: 8, rounded: 14 },
    cord(edge, 5, piping(srgb(look.trim), 5), 2),
    sewn(
      edge.map((value) => value * 0.94),
      look.thread,
      5,
    ),
    ...feet,
  ];
}

function lining(look: BagLook, seed: number): Layer[] {
  const w = look.width * 0.46;
  const h = look.height * 0.42;
  const cloth = twill(srgb(look.lining), 1.8, seed);
  const deep: Material = (x, y, inside) => {
    const touch = cloth(x, y, inside);
    return { ...touch, colour: scale(touch.colour, 0.35 + 0.65 * ramp(0, 60, inside)) };
  };
  return [
    { covers: box(-w - 14, -h - 14, w + 14, h + 14, 22), material: skinOf(look, seed), thickness: 6, rounded: 8 },
    sewn([-w - 7, -h - 7, w + 7, -h - 7, w + 7, h + 7, -w - 7, h + 7, -w - 7, -h - 7], look.thread, 4),
    { covers: box(-w, -h, w, h, 16), material: deep, thickness: 0, rounded: 0 },
    { covers: box(-w * 0.6, -h * 0.1, w * 0.6, h * 0.9, 3), material: cloth, thickness: 1.4, rounded: 1.5 },
    cord([-w * 0.6, -h * 0.1, w * 0.6, -h * 0.1], 5, handleSkin(look, seed), 1.2),
  ];
}

function zip(look: BagLook, seed: number): Layer[] {
  const gold = metal(srgb(look.metal), look.dullness, seed);
  const teeth: Segment[] = [];
  for (let tooth = -60; tooth < 60; tooth++) {
    const side = tooth % 2 === 0 ? -1 : 1;
    teeth.push([tooth * 1.5, side * 0.3, tooth * 1.5, side * 2.6]);
  }
  return [
    { covers: box(-130, -90, 130, 90, 2), material: skinOf(look, seed), thickness: 0, rounded: 0 },
    {
      covers: box(-130, -9, 130, 9, 1),
      material: twill(scale(srgb(look.lining), 0.6), 0.8, seed),
      thickness: 0,
      rounded: 0,
    },
    sewn([-120, -13, 120, -13], look.thread),
    sewn([-120, 13, 120, 13], look.thread),
    { covers: strokesShape(teeth, 1, 0.12, 1.4), material: gold, thickness: 0.6, rounded: 0.5 },
    { covers: box(2, -5, 16, 5, 3), material: gold, thickness: 2.5, rounded: 2 },
    { covers: ring(20, 1, 4.5, 2.2), material: gold, thickness: 1.5, rounded: 1 },
    { covers: box(20, -3.5, 52, 5.5, 4), material: handleSkin(look, seed), thickness: 1.6, rounded: 1.2 },
    sewn([26, -1.6, 49, -1.6], look.thread, 2.2),
    sewn([26, 3.6, 49, 3.6], look.thread, 2.2),
  ];
}

function strap(look: BagLook, seed: number): Layer[] {
  const curve = arch(-110, 110, 60, 120);
  const gold = metal(srgb(look.metal), look.dullness, seed);
  return [
    cord(curve, 22, handleSkin(look, seed), 3),
    sewn(arch(-102, 102, 60, 112), look.thread, 3),
    sewn(arch(-118, 118, 60, 128), look.thread, 3),
    { covers: ring(-110, 74, 15, 5), material: gold, thickness: 3, rounded: 2.5 },
    { covers: ring(110, 74, 15, 5), material: gold, thickness: 3, rounded: 2.5 },
    { covers: box(-18, -68, 18, -44, 4), material: gold, thickness: 2.5, rounded: 2 },
    { covers: box(-12, -63, 12, -49, 3), material: handleSkin(look, seed), thickness: 0, rounded: 0 },
  ];
}

function handle(look: BagLook, seed: number): Layer[] {
  const skin = handleSkin(look, seed);
  const darker: Material = (x, y, inside) => {
    const touch = skin(x, y, inside);
    return { ...touch, colour: blend(touch.colour, scale(touch.colour, 0.5), ramp(20, -50, y) * 0.7) };
  };
  return [
    { covers: box(-140, -10, 140, 120, 3), material: skinOf(look, seed), thickness: 4, rounded: 5 },
    cord([-36, 40, -34, -40, -24, -110], 18, darker, 6),
    { covers: box(-52, 4, -20, 76, 12), material: skin, thickness: 2.4, rounded: 2 },
    // Five stitches a side: what handle tabs are said to carry.
    sewn([-47, 18, -47, 62], look.thread, 6.8),
    sewn([-25, 18, -25, 62], look.thread, 6.8),
    { covers: disc(-36, 68, 4), material: metal(srgb(look.metal), look.dullness, seed), thickness: 2, rounded: 4 },
    {
      covers: ring(-36, 0, 15, 5),
      material: metal(srgb(look.metal), look.dullness, seed + 1),
      thickness: 3,
      rounded: 2.5,
    },
  ];
}

function hardware(look: BagLook, seed: number): Layer[] {
  const gold = metal(srgb(look.metal), look.dullness, seed);
  return [
    { covers: box(-160, -120, 160, 120, 2), material: skinOf(look, seed), thickness: 0, rounded: 0 },
    { covers: box(-34, -46, 34, 46, 9), material: gold, thickness: 4, rounded: 4 },
    { covers: box(-6, -26, 6, 26, 5), material: () => dark, thickness: 0, rounded: 0 },
    {
      covers: box(-20, -6, 20, 6, 5),
      material: metal(srgb(look.metal), look.dullness, seed + 2),
      thickness: 5,
      rounded: 4,
    },
    ...[-1, 1].map((side): Layer => ({ covers: disc(side * 25, -37, 4), material: gold, thickness: 1.5, rounded: 4 })),
    sewn([-90, -60, 90, -60], look.thread),
  ];
}

function corner(look: BagLook, seed: number): Layer[] {
  return [
    {
      covers: polygon([-140, -120, 60, -120, 48, 66, -140, 70], 8),
      material: skinOf(look, seed),
      thickness: 12,
      rounded: 18,
    },
    cord([66, -130, 55, 72, -150, 77], 6, piping(srgb(look.trim), 6), 2.6),
    sewn([50, -120, 40, 57, -140, 61], look.thread, 4),
  ];
}

const views: Record<BagView, (look: BagLook, seed: number) => Layer[]> = {
  front,
  back,
  base,
  lining,
  zip,
  strap,
  handle,
  hardware,
  corner,
};
