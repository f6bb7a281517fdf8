import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadShippedNets } from '../../../src/cli/engines';
import { openPhotoFile } from '../../../src/cli/photo-file';
import { greyOf, type Quad } from '../../../src/photo';
import { type NetSession, stampNets } from '../../../src/stamp';
import { stampPhotos } from '../../photos/stamp-readings';

/** What the nets answer in the steps of the training's own language; `src/stamp/training/golden.py` writes it. */
interface Golden {
  photo: string;
  quad: [number, number][];
  logits: number[][];
}
const golden: Golden[] = JSON.parse(readFileSync(new URL('../../photos/golden-logits.json', import.meta.url), 'utf8'));

/**
 * They are kept to two decimals, and on one machine differ by no more than that rounding; the rest is room for another
 * JPEG decoder or order of summing. A step done otherwise moves them by whole numbers.
 */
const near = 0.05;

describe('Python’s steps and ours', async () => {
  const loaded = await loadShippedNets();
  if (!loaded.ok) throw new Error(loaded.problem.code);
  const { card, finder, recogniser } = loaded.value;
  let seen: number[][] = [];
  const watched: NetSession = {
    run: async (input, shape) => {
      const answer = await recogniser.run(input, shape);
      const [, steps = 0, classes = 0] = answer.shape;
      const data = Array.from(answer.data);
      seen = Array.from({ length: steps }, (_, step) => data.slice(step * classes, (step + 1) * classes));
      return answer;
    },
  };
  const nets = stampNets(card, finder, watched);

  it.each(golden.map((one) => [one.photo, one] as const))('give the same logits on %s', async (photo, expected) => {
    const opened = await openPhotoFile(new URL(photo, stampPhotos).pathname);
    if (!opened.ok) throw new Error(opened.problem.code);
    const quad = expected.quad.map(([x, y]) => ({ x, y })) as Quad;
    await nets.readLine(greyOf(opened.value.image), quad);
    expect(seen.map((step) => step.length)).toEqual(expected.logits.map((step) => step.length));
    const apart = expected.logits.flatMap((step, at) => step.map((logit, one) => Math.abs(logit - seen[at]![one]!)));
    expect(Math.max(...apart)).toBeLessThan(near);
  });

  it('find the same line', async () => {
    for (const { photo, quad } of golden) {
      const opened = await openPhotoFile(new URL(photo, stampPhotos).pathname);
      if (!opened.ok) throw new Error(opened.problem.code);
      const lines = await nets.findLines(greyOf(opened.value.image));
      const off = lines.map((line) =>
        Math.max(...line.quad.flatMap(({ x, y }, at) => [Math.abs(x - quad[at]![0]), Math.abs(y - quad[at]![1])])),
      );
      expect(Math.min(...off)).toBeLessThan(1);
    }
  });
});
