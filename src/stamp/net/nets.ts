import { type GreyImage, type Quad, release, resizeGrey, sizeWithin } from '../../photo';
import type { FoundLine, StampNets } from '../engines';
import { boxesOf } from './boxes';
import type { ModelCard } from './card';
import { evenOut } from './even-out';
import { readLine } from './read-line';

/** A net that was loaded: numbers of the given shape in, numbers and their shape out. */
export interface NetSession {
  run(input: Float32Array, shape: readonly number[]): Promise<{ data: ArrayLike<number>; shape: readonly number[] }>;
}

/** Finder and recogniser as the training's README describes their steps, one by one. */
export function stampNets(card: ModelCard, finder: NetSession, recogniser: NetSession): StampNets {
  return {
    acceptance: card.acceptance,
    findLines: (grey, share = 1) => findLines(card, finder, grey, share),
    margin: card.recogniser.beside,
    readLine: (grey, quad) => readLine(card, recogniser, grey, quad),
  };
}

/** The size in which a photo is looked at: shrunk to a share of the finder's own, or enlarged, but never past it. */
function lookedAt({ width, height }: GreyImage, longest: number, share: number): { width: number; height: number } {
  const largest = Math.max(width, height);
  if (share <= 1) return sizeWithin(width, height, Math.min(longest, largest) * share);
  const times = Math.max(1, Math.min(share, longest / largest));
  return times === 1
    ? sizeWithin(width, height, longest)
    : { width: Math.round(width * times), height: Math.round(height * times) };
}

async function findLines(
  { finder: steps }: ModelCard,
  net: NetSession,
  grey: GreyImage,
  share: number,
): Promise<FoundLine[]> {
  const { width, height } = lookedAt(grey, steps.longest, share);
  const small = width === grey.width && height === grey.height ? grey : resizeGrey(grey, width, height);
  const padded = (side: number): number => Math.ceil(side / steps.multiple) * steps.multiple;
  const [inputWidth, inputHeight] = [padded(width), padded(height)];
  const input = evenOut(small, inputWidth, inputHeight);
  if (small !== grey) release(small.data);
  const { data, shape } = await net.run(input, [1, 1, inputHeight, inputWidth]);
  release(input);
  const [, , rows = 0, columns = 0] = shape;
  const scaleX = grey.width / width;
  const scaleY = grey.height / height;
  const boxes = boxesOf({ data, rows, columns }, steps);
  if (data instanceof Float32Array) release(data);
  return boxes.map(({ quad, stampScore }) => ({
    quad: quad.map(({ x, y }) => ({ x: x * scaleX, y: y * scaleY })) as Quad,
    stampScore,
  }));
}
