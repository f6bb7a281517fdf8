import { type GreyImage, type Quad, quadSize, release, warpQuad } from '../../photo';
import { growQuad } from '../crop';
import { oneShape } from '../one-shape';
import { withoutOuterSigns } from '../sign';
import type { Lattice } from '../types';
import type { ModelCard } from './card';
import { evenOut } from './even-out';
import type { NetSession } from './nets';

/** Characters less likely than this in a step are left out of the lattice. */
const leastShare = 1e-5;

export async function readLine(
  { recogniser: steps, alphabet, temperature }: ModelCard,
  net: NetSession,
  grey: GreyImage,
  quad: Quad,
): Promise<Lattice> {
  const grown = growQuad(quad, steps.beside, steps.above);
  const { across, down } = quadSize(grown);
  if (!(across >= 1) || !(down >= 1)) return { steps: [] };
  const wide = Math.round(((across / down) * steps.height) / steps.multiple) * steps.multiple;
  const width = Math.min(steps.widest, Math.max(steps.narrowest, wide));
  const crop = warpQuad(grey, grown, width, steps.height);
  if (crop === null) return { steps: [] };
  const input = evenOut(crop);
  release(crop.data);
  const { data, shape } = await net.run(input, [1, 1, steps.height, width]);
  release(input);
  const [, count = 0, classes = 0] = shape;
  return withoutOuterSigns({
    steps: Array.from({ length: count }, (_, step) =>
      withAlike(sharesOf(data, step * classes, alphabet, temperature), steps.alike),
    ),
  });
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

/** The net tells characters of one shape by the line around them; this share of either goes to the other, whatever it says. */
function withAlike(shares: Record<string, number>, alike: number): Record<string, number> {
  for (const [one, other] of oneShape) {
    const [a, b] = [shares[one] ?? 0, shares[other] ?? 0];
    if ((a + b) * alike < leastShare) continue;
    shares[one] = a + (b - a) * alike;
    shares[other] = b + (a - b) * alike;
  }
  return shares;
}
