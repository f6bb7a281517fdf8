import type { BagLook } from './bag-parts';
import { cord, dark, handleSkin, sewn, skinOf } from './bag-parts';
import type { Material } from './material';
import { blend, metal, piping, scale, srgb, twill } from './material';
import { ramp } from './noise';
import type { Layer } from './scene';
import type { Segment } from './shapes';
import { arch, box, disc, polygon, ring, strokesShape } from './shapes';

export function zip(look: BagLook, seed: number): Layer[] {
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

export function strap(look: BagLook, seed: number): Layer[] {
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

export function handle(look: BagLook, seed: number): Layer[] {
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

export function hardware(look: BagLook, seed: number): Layer[] {
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

export function corner(look: BagLook, seed: number): Layer[] {
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
