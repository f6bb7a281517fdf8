import { looks } from './photo-looks';
import type { BagLook, BagView } from './photo-renderer/bag-scene';
import type { CameraPose } from './photo-renderer/camera';
import type { Light } from './photo-renderer/light';
import { srgb } from './photo-renderer/material';
import type { PhotoSpec } from './photo-renderer/photograph';
import type { StampedLine, StampScene } from './photo-renderer/stamp-scene';

const room: Light = {
  from: 215,
  elevation: 48,
  direct: 0.72,
  scattered: 0.38,
  warmth: 1.03,
  fall: 0.3,
  vignette: 0.35,
  blur: 0.7,
  noise: 2.2,
};

/** Low light from the side, as one holds a lamp to show a blind stamp. */
const oblique: Light = { ...room, from: 245, elevation: 27, direct: 0.62, scattered: 0.3, blur: 0.8, noise: 2.6 };

const closeUp: CameraPose = { width: 1100, height: 825, shows: 62, yaw: 6, pitch: -9, roll: 2.5 };

const line = (text: string, part: Partial<StampedLine> = {}): StampedLine => ({
  text,
  technique: 'blind',
  capHeight: 5.2,
  weight: 0.15,
  spacing: 0.34,
  narrow: 1,
  x: 0,
  y: 0,
  turn: 0,
  jitter: 0.008,
  depth: 0.42,
  worn: 0.12,
  uneven: 0,
  ...part,
});

function stampPhoto(
  listing: keyof typeof looks,
  stamp: StampScene,
  pose: Partial<CameraPose> = {},
  light: Partial<Light> = {},
): PhotoSpec {
  return {
    file: `${listing}-stamp.jpg`,
    subject: { kind: 'stamp', stamp },
    pose: { ...closeUp, ...pose },
    light: { ...oblique, ...light },
    quality: 76,
  };
}

/** Width that a view shows: a share of the piece's width below 10, millimetres from there on. */
const framing: Record<BagView, { shows: number; aim?: { x: number; y: number } }> = {
  front: { shows: 1.75, aim: { x: 0, y: -0.22 } },
  back: { shows: 1.75, aim: { x: 0, y: -0.22 } },
  base: { shows: 1.35 },
  lining: { shows: 1.25 },
  zip: { shows: 150 },
  strap: { shows: 330 },
  handle: { shows: 210, aim: { x: 0, y: 10 } },
  hardware: { shows: 170 },
  corner: { shows: 230 },
};

/** A view of the whole piece or of a part; the seller's hand varies with `turn`. */
function bagPhoto(file: string, look: BagLook, view: BagView, turn: number): PhotoSpec {
  const { shows, aim } = framing[view];
  const unit = shows < 10 ? look.width : 1;
  return {
    file,
    subject: { kind: 'bag', look, view },
    pose: {
      width: 960,
      height: 720,
      shows: shows * unit,
      yaw: Math.sin(turn * 2.1) * 9,
      pitch: -6 - Math.cos(turn * 1.3) * 6,
      roll: Math.sin(turn * 3.7) * 2,
      ...(aim === undefined ? {} : { aim: { x: aim.x * unit, y: aim.y * (unit === 1 ? 1 : look.height) } }),
    },
    light: { ...room, from: 215 + Math.sin(turn) * 40, warmth: 1.02 + Math.sin(turn * 1.7) * 0.05, blur: 0.9 },
    quality: 66,
  };
}

const views = (listing: keyof typeof looks, wanted: readonly BagView[]): PhotoSpec[] =>
  wanted.map((view, at) =>
    bagPhoto(`${listing}-${view}.jpg`, looks[listing], view, at + Number(listing.slice(1)) * 1.37),
  );

const bare = (look: BagLook): StampScene['leather'] => ({ ...look.leather, patina: look.leather.patina * 0.6 });
const tan: StampScene['leather'] = { colour: srgb('#a9713f'), grain: 0.9, relief: 0.05, gloss: 0.16, patina: 0.16 };
const tabOn = (look: BagLook): StampScene['tab'] => ({
  halfWidth: 27,
  halfHeight: 13,
  lining: look.lining,
  thread: look.thread,
});
const gold = { technique: 'foil', colour: '#d8b45c', depth: 0.12 } as const;
const ink = { technique: 'inked', colour: '#1d1613', depth: 0.08 } as const;

/** Every photograph of the demo marketplace; `truth.json` says what each listing's code is. */
export const photoSpecs: PhotoSpec[] = [
  ...views('l1', ['front', 'back', 'base', 'lining', 'handle', 'hardware']),
  stampPhoto('l1', { leather: tan, lines: [line('KV0915')], tab: tabOn(looks.l1) }),

  ...views('l2', ['front', 'back', 'lining', 'hardware']),
  stampPhoto(
    'l2',
    {
      leather: bare(looks.l2),
      lines: [line('KV0978', { ...gold, capHeight: 4.6, turn: -2 })],
      seam: { y: -13, thread: looks.l2.thread },
    },
    { shows: 58, yaw: -8, pitch: 6, roll: -1 },
    { from: 200 },
  ),

  ...views('l3', ['front', 'back', 'base', 'lining', 'hardware', 'strap']),
  stampPhoto(
    'l3',
    {
      leather: { ...bare(looks.l3), colour: srgb('#b58a5e') },
      lines: [line('B1382640', { ...ink, capHeight: 4.2, weight: 0.13, narrow: 0.86, spacing: 0.3 })],
      seam: { y: -15, thread: looks.l3.thread },
    },
    { shows: 66, yaw: 10, pitch: -4, roll: -3 },
    { from: 300, elevation: 40 },
  ),

  ...views('l4', ['front', 'back', 'base', 'lining', 'handle', 'zip']),
  stampPhoto(
    'l4',
    { leather: bare(looks.l4), lines: [line('14F11M32', { capHeight: 5.6, weight: 0.17, depth: 0.5, narrow: 0.92 })] },
    { shows: 70, yaw: -7, pitch: -10, roll: 4 },
    { from: 150, elevation: 24 },
  ),

  ...views('l5', ['front', 'back', 'handle']),

  ...views('l6', ['front', 'lining', 'hardware', 'handle']),
  stampPhoto(
    'l6',
    { leather: { ...tan, colour: srgb('#8c5a34') }, lines: [line('KV1953', { depth: 0.46 })], tab: tabOn(looks.l6) },
    { shows: 60, yaw: -9, pitch: -6, roll: -4 },
    { from: 290, elevation: 29 },
  ),

  ...views('l7', ['front', 'back', 'base', 'lining', 'handle']),
  stampPhoto(
    'l7',
    {
      leather: { ...tan, colour: srgb('#b98a56'), patina: 0.3 },
      lines: [line('834', { ...ink, capHeight: 6.5, weight: 0.17, worn: 0.2 })],
      tab: { halfWidth: 24, halfHeight: 14, lining: looks.l7.lining, thread: looks.l7.thread },
    },
    { shows: 64, yaw: 5, pitch: 8, roll: 3 },
    { from: 230, elevation: 42 },
  ),

  ...views('l8', ['front', 'back', 'base', 'lining', 'hardware']),
  stampPhoto(
    'l8',
    {
      leather: bare(looks.l8),
      lines: [
        line('ONDRASSE', { ...gold, capHeight: 5, y: -8, weight: 0.13 }),
        line('LD2112', { ...gold, capHeight: 4.4, y: 5 }),
      ],
    },
    { shows: 74, yaw: 8, pitch: 7, roll: -2 },
    { from: 260, elevation: 36 },
  ),

  ...views('l9', ['front', 'back', 'lining', 'hardware']),
  // A shallow, worn stamp that the phone did not focus on: nobody should claim to read it.
  stampPhoto(
    'l9',
    {
      leather: { ...bare(looks.l9), grain: 1.2, relief: 0.09 },
      lines: [line('KV0922', { capHeight: 4.2, depth: 0.34, worn: 0.5, uneven: 0.4 })],
    },
    { shows: 85, yaw: 14, pitch: -12, roll: 7 },
    { blur: 4, moved: { pixels: 20, towards: 25 }, noise: 5, elevation: 36 },
  ),
];
