import {
  type GreyImage,
  greyOf,
  type PixelImage,
  type Quad,
  quadSize,
  resizeGrey,
  sizeWithin,
  warpQuad,
} from '../../photo';
import { growQuad } from '../crop';
import type { FoundLine, StampNets } from '../engines';
import type { Lattice } from '../types';
import { boxesOf } from './boxes';
import type { ModelCard } from './card';

/** A net that was loaded: numbers of the given shape in, numbers and their shape out. */
export interface NetSession {
  run(input: Float32Array, shape: readonly number[]): Promise<{ data: ArrayLike<number>; shape: readonly number[] }>;
}

/** Characters less likely than this in a step are left out of the lattice. */
const leastShare = 1e-5;

/** Finder and recogniser as the training's README describes their steps, one by one. */
export function stampNets(card: ModelCard, finder: NetSession, recogniser: NetSession): StampNets {
  let last: { photo: PixelImage; grey: GreyImage } | null = null;
  const greyFor = (photo: PixelImage): GreyImage => {
    if (last?.photo !== photo) last = { photo, grey: greyOf(photo) };
    return last.grey;
  };
  return {
    acceptance: card.acceptance,
    findLines: (photo) => findLines(card, finder, greyFor(photo)),
    readLine: (photo, quad) => readLine(card, recogniser, greyFor(photo), quad),
  };
}

async function findLines({ finder: steps }: ModelCard, net: NetSession, grey: GreyImage): Promise<FoundLine[]> {
  const { width, height } = sizeWithin(grey.width, grey.height, steps.longest);
  const small = evenOut(width === grey.width && height === grey.height ? grey : resizeGrey(grey, width, height));
  const padded = (side: number): number => Math.ceil(side / steps.multiple) * steps.multiple;
  const [inputWidth, inputHeight] = [padded(width), padded(height)];
  const input = new Float32Array(inputWidth * inputHeight);
  for (let row = 0; row < height; row++) {
    input.set(small.subarray(row * width, (row + 1) * width), row * inputWidth);
  }
  const { data, shape } = await net.run(input, [1, 1, inputHeight, inputWidth]);
  const [, , rows = 0, columns = 0] = shape;
  const scaleX = grey.width / width;
  const scaleY = grey.height / height;
  return boxesOf({ data, rows, columns }, steps).map(({ quad, stampScore }) => ({
    quad: quad.map(({ x, y }) => ({ x: x * scaleX, y: y * scaleY })) as Quad,
    stampScore,
  }));
}

async function readLine(
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
  const { data, shape } = await net.run(evenOut(crop), [1, 1, steps.height, width]);
  const [, count = 0, classes = 0] = shape;
  return { steps: Array.from({ length: count }, (_, step) => sharesOf(data, step * classes, alphabet, temperature)) };
}

/** Mean 0 and deviation 1, held between -4 and 4; nearly even ground is not blown up. */
function evenOut({ data }: GreyImage): Float32Array {
  let sum = 0;
  for (const value of data) sum += value;
  const mean = sum / data.length;
  let squares = 0;
  for (const value of data) squares += (value - mean) ** 2;
  const deviation = Math.max(4, Math.sqrt(squares / data.length));
  return data.map((value) => Math.min(4, Math.max(-4, (value - mean) / deviation)));
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
