import { corner, handle, hardware, strap, zip } from './bag-details';
import type { BagLook } from './bag-parts';
import { cord, dark, handleSkin, sewn, skinOf } from './bag-parts';
import type { Material } from './material';
import { backdrop, metal, piping, scale, srgb, twill } from './material';
import { ramp } from './noise';
import type { Layer, Scene } from './scene';
import { arch, box, disc, polygon, ring } from './shapes';

export type { BagLook } from './bag-parts';

export type BagView = 'front' | 'back' | 'base' | 'lining' | 'zip' | 'strap' | 'handle' | 'hardware' | 'corner';

export const bagScene = (look: BagLook, view: BagView, seed: number): Scene => ({
  ground: backdrop(srgb(look.backdrop), seed + 11, look.planks),
  layers: views[view](look, seed),
  presses: [],
});

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
