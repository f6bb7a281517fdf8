import { type HandMeasure, type MeasuredByHand, measureHandMarks, type Point } from '../../src/photo';
import { mean } from '../../src/photo/measure/mean';
import type { LetteringScene } from './lettering-truth';
import { byHand, type Grade } from './photographed';
import { chance } from './random';
import { count, type Tally } from './tally';

type Draw = (seed: number, grade: Grade) => Promise<LetteringScene>;

/** What a mark over a line of characters measures, against how it was drawn. */
export async function tallyLettering(tally: Tally, draw: Draw, grade: Grade, seed: number): Promise<void> {
  const scene = await draw(seed, grade);
  for (const how of ['exact', 'by hand'] as const) {
    const points = how === 'exact' ? scene.corners : nearby(scene, seed);
    const measures = lettersMeasured(scene, points, scene.text);
    const first = measures[0];
    count(tally, `parted, ${how}`, first?.value === scene.text.length);
    if (first?.value === null) {
      count(tally, `not parted: ${first.why}`, true);
      continue;
    }
    for (const [what, truth] of Object.entries(truthOf(scene)) as [MeasuredByHand, number][]) {
      const own = measures.find((one) => one.what === what);
      if (typeof own?.value !== 'number') count(tally, `${what} not told`, true);
      else {
        count(tally, `${what} within its uncertainty, ${how}`, Math.abs(own.value - truth) <= own.uncertainty!);
        count(tally, `${what} within 0.03 of the height, ${how}`, Math.abs(own.value - truth) <= 0.03);
      }
    }
  }
  const other = lettersMeasured(scene, scene.corners, `${scene.text}EE`);
  count(tally, 'parted into more than there are', other[0]?.value !== null);
}

/** Corners as a hand sets them on an enlarged photo: within 0.4% of its longer side. */
function nearby({ corners, image }: LetteringScene, seed: number): Point[] {
  const far = byHand(corners, image, chance(seed));
  return far.map(({ x, y }, at) => {
    const own = corners[at]!;
    return { x: own.x + (x - own.x) * 0.27, y: own.y + (y - own.y) * 0.27 };
  });
}

export function lettersMeasured({ image }: LetteringScene, points: readonly Point[], text: string): HandMeasure[] {
  const shares = points.map(({ x, y }) => ({ x: x / image.width, y: y / image.height }));
  const mark = { number: 1, kind: 'lettering' as const, points: shares, within: 0.004, mm: null, name: text };
  return measureHandMarks(image, [mark])[0]!;
}

function truthOf({ letters, top, bottom, stroke }: LetteringScene): Partial<Record<MeasuredByHand, number>> {
  const high = bottom - top;
  return {
    'letter-width': mean(letters.map(({ left, right }) => right - left)) / high,
    'letter-gap':
      mean(letters.slice(1).map(({ left }, at) => left - letters[at]!.right)) /
      mean(letters.map(({ left, right }) => right - left)),
    'letter-stroke': stroke / high,
    'letter-height-change': 0,
  };
}
