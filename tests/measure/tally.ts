import { type Measure, measureMarks, type PixelImage, type Point, quadSize } from '../../src/photo';
import { changeOfPatch } from '../../src/photo/measure/colour';
import { ciede2000 } from '../../src/photo/measure/colour/ciede2000';
import { colourScene } from './colour-truth';
import type { PanelScene, PanelWish } from './panel-truth';
import { byHand, type Grade } from './photographed';
import { chance } from './random';
import { type Sewing, skipped, worn } from './sewing';
import { lamps } from './spectra';
import type { StitchScene } from './stitch-truth';

/** How many of how many, by name. */
export type Tally = Map<string, { hits: number; of: number }>;

export function count(tally: Tally, name: string, hit: boolean): void {
  const row = tally.get(name) ?? { hits: 0, of: 0 };
  tally.set(name, { hits: row.hits + (hit ? 1 : 0), of: row.of + 1 });
}

/** Half-width in 99 of 100 cases: off is stated only beyond it. */
const surely = ({ value, uncertainty }: Measure): boolean =>
  typeof value === 'number' && Math.abs(value) > (2.576 / 1.96) * uncertainty!;

/** As marked on the holes and edges, and as a hand of up to 1.5% of the photo marks them. */
const hows = ['exact', 'by hand'] as const;
const marked = (how: (typeof hows)[number], image: PixelImage, seed: number) => {
  const draw = chance(seed);
  return (points: readonly Point[]): Point[] => (how === 'exact' ? [...points] : byHand(points, image, draw));
};

type DrawStitches = (seed: number, grade: Grade, stitched: boolean, sewing?: Sewing) => Promise<StitchScene>;
type DrawPanel = (seed: number, grade: Grade, wish: PanelWish) => Promise<PanelScene>;

export async function tallyStitches(tally: Tally, draw: DrawStitches, grade: Grade, seed: number): Promise<void> {
  const scene = await draw(seed, grade, true);
  for (const how of hows) {
    const points = marked(how, scene.image, seed)(scene.line);
    const [own, pitch, gone] = measureMarks(scene.image, [
      { what: 'count', points },
      { what: 'pitch', points },
      { what: 'skipped', points },
    ]) as [Measure, Measure, Measure];
    count(tally, `count right, ${how}`, own.value === scene.count);
    count(tally, 'a stitch missing where none is', (gone.value ?? 0) !== 0);
    if (own.value === null) continue;
    count(
      tally,
      `count within its uncertainty, ${how}`,
      Math.abs((own.value as number) - scene.count) <= own.uncertainty!,
    );
    count(
      tally,
      `pitch within its uncertainty, ${how}`,
      Math.abs((pitch.value as number) - scene.pitch) <= pitch.uncertainty!,
    );
  }
  const bare = await draw(seed, grade, false);
  for (const how of hows) {
    const [own] = measureMarks(bare.image, [{ what: 'count', points: marked(how, bare.image, seed)(bare.line) }]);
    count(tally, 'a count without stitches', own!.value !== null);
  }
}

/** Rows that lack one to three stitches, and rubbed ones that lack none; what is told of them, and what becomes of their count. */
export async function tallySkipped(tally: Tally, draw: DrawStitches, grade: Grade, seed: number): Promise<void> {
  for (const [name, sewing] of [
    ['with gaps', skipped(seed)],
    ['worn', worn(seed)],
  ] as const) {
    const { image, line, count: places, threads } = await draw(seed, grade, true, sewing);
    const missing = places - threads.length;
    for (const how of hows) {
      const points = marked(how, image, seed)(line);
      const [own, gone] = measureMarks(image, [
        { what: 'count', points },
        { what: 'skipped', points },
      ]) as [Measure, Measure];
      count(tally, `count right, ${name}`, own.value === places);
      if (own.value !== null)
        count(
          tally,
          `count within its uncertainty, ${name}`,
          Math.abs((own.value as number) - places) <= own.uncertainty!,
        );
      if (missing === 0) count(tally, 'a stitch missing where none is', (gone.value ?? 0) !== 0);
      else count(tally, 'missing stitches said', (gone.value ?? 0) !== 0);
      if (gone.value === null) continue;
      count(tally, `missing right, ${name}, of what is told`, gone.value === missing);
      count(
        tally,
        `missing within its uncertainty, ${name}`,
        Math.abs((gone.value as number) - missing) <= gone.uncertainty!,
      );
    }
  }
}

/** What a panel of each seed is to be: a third have no axis, a third of those with one are straight, the others off by 1 to 10%. */
function wishOf(seed: number): PanelWish & { axis: boolean } {
  const draw = chance(seed * 3 + 1);
  const axis = draw.share() < 0.67;
  const off = draw.share() < 0.4 ? 0 : draw.of([0.01, 0.03, 0.03, 0.05, 0.08, 0.1]) * (draw.share() < 0.5 ? -1 : 1);
  const more = draw.of([{}, {}, { back: true }, { seam: true }]);
  return { axis, off, ...more };
}

export async function tallyPanel(tally: Tally, draw: DrawPanel, grade: Grade, seed: number): Promise<void> {
  const wish = wishOf(seed);
  const scene = await draw(seed, grade, wish);
  const { across, down } = quadSize(scene.corners);
  for (const how of hows) {
    const hand = marked(how, scene.image, seed);
    const points = hand(scene.corners);
    const [x, y, mirror, edges, motif] = measureMarks(scene.image, [
      { what: 'repeat-x', points },
      { what: 'repeat-y', points },
      { what: 'mirror-off', points },
      { what: 'edges-off', points },
      { what: 'motif-off', points: [...points, ...hand([scene.motif])] },
    ]) as [Measure, Measure, Measure, Measure, Measure];
    for (const [own, truth] of [
      [x, scene.repeatX * across],
      [y, scene.repeatY * down],
    ] as const) {
      count(tally, `repeat within 2%, ${how}`, typeof own.value === 'number' && Math.abs(own.value / truth - 1) < 0.02);
      if (typeof own.value === 'number')
        count(tally, `repeat within its uncertainty, ${how}`, Math.abs(own.value - truth) <= own.uncertainty!);
    }
    // A step at a seam leaves no pattern of the whole: nothing is asked of its axes.
    if (scene.seam) {
      tallySeam(tally, how, scene, [...points, ...hand(scene.seam.ends)]);
      continue;
    }
    if (!scene.axis) count(tally, 'an axis without one', mirror.value !== null);
    // Drawn in a staggered pattern, the other rows' axes lie between: the nearest is never more than an eighth off.
    else if (wish.off === 0) count(tally, `straight, called off, ${how}`, surely(mirror));
    else if (Math.abs(wish.off) === 0.03) count(tally, `off by 3%, found, ${how}`, surely(mirror));
    else if (Math.abs(wish.off) > 0.03) count(tally, `off by 5 to 10%, found, ${how}`, surely(mirror));
    if (scene.axis && typeof mirror.value === 'number')
      count(tally, `axis within its uncertainty, ${how}`, heldBy(mirror, scene.off, scene.staggered ? 0.25 : 0.5));
    if (scene.axis && typeof edges.value === 'number')
      count(tally, `edges within their uncertainty, ${how}`, heldBy(edges, 2 * scene.off, 1));
    if (!scene.axis || scene.staggered) count(tally, 'edges told that cannot be', edges.value !== null);
    else if (wish.off === 0) count(tally, `edges cut alike, called off, ${how}`, surely(edges));
    if (scene.staggered) count(tally, 'a motif told in a staggered pattern', motif.value !== null);
    else if (scene.axis && typeof motif.value === 'number')
      count(tally, `motif within its uncertainty, ${how}`, heldBy(motif, scene.motifOff, 1));
    if (scene.back) tallyBack(tally, how, scene, [...points, ...hand(scene.back.corners)]);
  }
}

/** Whether the truth lies within the uncertainty, places that come every `every` being the same. */
function heldBy({ value, uncertainty }: Measure, truth: number, every: number): boolean {
  const off = (value as number) - truth;
  return Math.abs(off - Math.round(off / every) * every) <= uncertainty!;
}

function tallySeam(tally: Tally, how: string, { image, seam, staggered }: PanelScene, points: Point[]): void {
  const [own] = measureMarks(image, [{ what: 'seam-off', points }]);
  count(tally, `seam told, ${how}`, own!.value !== null);
  if (own!.value !== null)
    count(tally, `seam within its uncertainty, ${how}`, heldBy(own!, seam!.step, staggered ? 0.5 : 1));
}

function tallyBack(tally: Tally, how: string, { image, back }: PanelScene, points: Point[]): void {
  const [own] = measureMarks(image, [{ what: 'back', points }]);
  const { stands } = back!;
  if (stands === null) count(tally, 'a way told where both are alike', own!.value !== null);
  else {
    count(tally, `back right, ${how}`, own!.value === stands);
    count(tally, 'back wrong', own!.value !== null && own!.value !== stands);
  }
}

/** A pair of patches under a lamp, with their marks, that of the white, and the patches' true colours. */
function markedColours(seed: number, lamp: string) {
  const { image, patches, white, labs } = colourScene(seed, lamp);
  const points = (of: number[][]): Point[] => of.map(([x, y]) => ({ x: x!, y: y! }));
  const [one, other] = patches.map(points) as [Point[], Point[]];
  return { image, one, other, white: points(white), labs: labs as unknown as [Lab, Lab] };
}
type Lab = [number, number, number];

export function tallyColour(tally: Tally, lamp: string, seed: number): void {
  const { image, one, other, white, labs } = markedColours(seed, lamp);
  const truth = ciede2000(...labs);
  const [first, second, without] = [
    ...measureMarks(image, [
      { what: 'white', points: white },
      { what: 'lab', points: one },
      { what: 'difference', points: [...one, ...other] },
    ]),
    ...measureMarks(image, [{ what: 'difference', points: [...one, ...other] }]),
  ] as [Measure, Measure, Measure];
  if (Array.isArray(first.value)) {
    const off = ciede2000(first.value, labs[0]);
    count(tally, 'colour within 4, with a white', off < 4);
    count(tally, 'colour within its uncertainty', off <= first.uncertainty!);
  } else count(tally, 'refused', true);
  for (const [name, own] of [
    ['with a white', second],
    ['without', without],
  ] as const) {
    if (typeof own.value !== 'number') continue;
    if (truth < 10) count(tally, `difference under 10 within 1, ${name}`, Math.abs(own.value - truth) < 1);
    count(tally, `difference within its uncertainty, ${name}`, Math.abs(own.value - truth) <= own.uncertainty!);
  }
}

/** How much darker and greener one of two patches is: the uncertainty, and whether a direction that is stated is the true one. */
export function tallyChange(tally: Tally, lamp: string, seed: number): void {
  const { image, one, other, white, labs } = markedColours(seed, lamp);
  for (const [name, known] of [
    ['with a white', white],
    ['without', null],
  ] as const) {
    for (const [at, which] of (['darker', 'greener'] as const).entries()) {
      const told = changeOfPatch(image, one, other, known, which);
      if (typeof told === 'string') continue;
      const truth = labs[0][at]! - labs[1][at]!;
      count(tally, `${which} within its uncertainty, ${name}`, Math.abs(told.value - truth) <= told.uncertainty);
      if (Math.abs(told.value) > told.uncertainty + 2)
        count(tally, `${which}, the wrong way`, Math.sign(told.value) !== Math.sign(truth));
    }
  }
}

export const lampNames = Object.keys(lamps);
