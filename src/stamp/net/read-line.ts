import { type GreyImage, type Point, type Quad, quadSize, warpQuad } from '../../photo';
import { growQuad } from '../crop';
import type { Lattice } from '../types';
import type { ModelCard } from './card';
import { evenOut } from './even-out';
import type { NetSession } from './nets';

/** Characters less likely than this in a step are left out of the lattice. */
const leastShare = 1e-5;

/**
 * The line seen in each of the card's views, step by step averaged: a view's slips are its own, and where a wider one
 * sees more characters past the ends, the shorter text is no longer sure.
 */
export async function readLine(
  { recogniser: steps, alphabet, temperature }: ModelCard,
  net: NetSession,
  grey: GreyImage,
  quad: Quad,
): Promise<Lattice> {
  const { across, down } = quadSize(growQuad(quad, steps.beside, steps.above));
  if (!(across >= 1) || !(down >= 1)) return { steps: [] };
  const slices = Math.round(((across / down) * steps.height) / steps.multiple);
  const widest = Math.max(...steps.views.map(({ wider }) => wider));
  const sum: Record<string, number>[] = Array.from({ length: slices + 2 * widest }, () => ({}));
  const views: number[] = new Array(sum.length).fill(0);
  for (const { wider, lift } of steps.views) {
    const read = await readView({ steps, alphabet, temperature }, net, grey, quad, slices + 2 * wider, wider, lift);
    // Lines beyond the widest that is read are pressed together, and then no two views lie over each other.
    if (read.length !== slices + 2 * wider) return { steps: read };
    read.forEach((shares, at) => {
      const step = sum[at + widest - wider]!;
      views[at + widest - wider]!++;
      for (const [character, share] of Object.entries(shares)) step[character] = (step[character] ?? 0) + share;
    });
  }
  return {
    steps: sum.map((step, at) =>
      Object.fromEntries(Object.entries(step).map(([character, share]) => [character, share / views[at]!])),
    ),
  };
}

async function readView(
  { steps, alphabet, temperature }: { steps: ModelCard['recogniser']; alphabet: string; temperature: number },
  net: NetSession,
  grey: GreyImage,
  quad: Quad,
  slices: number,
  wider: number,
  lift: number,
): Promise<Record<string, number>[]> {
  const beside = steps.beside + wider * sliceOf(steps);
  const width = Math.min(steps.widest, Math.max(steps.narrowest, slices * steps.multiple));
  const crop = warpQuad(grey, liftQuad(growQuad(quad, beside, steps.above), lift), width, steps.height);
  if (crop === null) return [];
  const { data, shape } = await net.run(evenOut(crop), [1, 1, steps.height, width]);
  const [, count = 0, classes = 0] = shape;
  return Array.from({ length: count }, (_, step) => sharesOf(data, step * classes, alphabet, temperature));
}

/** Width of a lattice's step in heights of the line. */
const sliceOf = ({ multiple, height, above }: ModelCard['recogniser']): number => (multiple / height) * (1 + 2 * above);

/** Ground that a lattice covers past each end of its quad, in heights of the quad. */
export const marginOf = (steps: ModelCard['recogniser']): number =>
  steps.beside + Math.max(...steps.views.map(({ wider }) => wider)) * sliceOf(steps);

/** The quad moved along its left and right edges, up where `lift` (a share of its height) is positive. */
function liftQuad([a, b, c, d]: Quad, lift: number): Quad {
  const left = { x: (a.x - d.x) * lift, y: (a.y - d.y) * lift };
  const right = { x: (b.x - c.x) * lift, y: (b.y - c.y) * lift };
  const move = (point: Point, by: Point): Point => ({ x: point.x + by.x, y: point.y + by.y });
  return [move(a, left), move(b, right), move(c, right), move(d, left)];
}

/** One step's logits as probabilities, flattened by the temperature (softmax). */
function sharesOf(
  logits: ArrayLike<number>,
  from: number,
  alphabet: string,
  temperature: number,
): Record<string, number> {
  const characters = ['', ...alphabet];
  let highest = Number.NEGATIVE_INFINITY;
  for (let at = 0; at < characters.length; at++) highest = Math.max(highest, logits[from + at]!);
  const raised = characters.map((_, at) => Math.exp((logits[from + at]! - highest) / temperature));
  const total = raised.reduce((sum, value) => sum + value, 0);
  const shares: Record<string, number> = {};
  characters.forEach((character, at) => {
    const share = raised[at]! / total;
    if (share >= leastShare) shares[character] = share;
  });
  return shares;
}
