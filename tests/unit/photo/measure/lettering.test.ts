import { describe, expect, it } from 'vitest';
import {
  type HandMark,
  type HandMeasure,
  lettersCompared,
  letterWidths,
  type MeasuredByHand,
  measureHandMarks,
  type PixelImage,
} from '../../../../src/photo';
import { type LetteringScene, letteringScene, secondLetteringScene } from '../../../measure/lettering-truth';
import { lettersMeasured } from '../../../measure/tally-lettering';

const measureOf = (measures: readonly HandMeasure[], what: MeasuredByHand) =>
  measures.find((one) => one.what === what)!;

function markOn({ corners, image }: LetteringScene, name: string): HandMark {
  const points = corners.map(({ x, y }) => ({ x: x / image.width, y: y / image.height }));
  return { number: 1, kind: 'lettering', points, within: 0.002, mm: null, name };
}
const widthsOf = (scene: LetteringScene) => {
  const mark = markOn(scene, scene.text);
  return letterWidths(mark, measureHandMarks(scene.image, [mark])[0]!)!;
};

describe('a line of characters', () => {
  it('is told by its ratios, by either renderer, within what is stated', async () => {
    for (const draw of [letteringScene, secondLetteringScene]) {
      const scene = await draw(512, 'clear', 'HARLEZ7420');
      // Spaces part words and are no characters.
      const told = lettersMeasured(scene, scene.corners, 'HARLEZ 7420');
      const high = scene.bottom - scene.top;
      const width = scene.letters.reduce((sum, { left, right }) => sum + right - left, 0) / scene.letters.length / high;
      expect(measureOf(told, 'letters').value).toBe(10);
      const own = measureOf(told, 'letter-width');
      expect(Math.abs((own.value as number) - width)).toBeLessThanOrEqual(own.uncertainty!);
      const stroke = measureOf(told, 'letter-stroke');
      if (stroke.value !== null)
        expect(Math.abs((stroke.value as number) - scene.stroke / high)).toBeLessThanOrEqual(stroke.uncertainty!);
      const change = measureOf(told, 'letter-height-change');
      expect(Math.abs(change.value as number)).toBeLessThanOrEqual(change.uncertainty!);
    }
  });

  it('is not measured where it holds another number of characters than were typed, or none were', async () => {
    const scene = await secondLetteringScene(33, 'clear', 'KNAXT');
    for (const [text, why] of [
      ['KNAXTEL', 'not-parted'],
      ['KN', 'not-parted'],
      ['', 'no-text'],
      ['K', 'no-text'],
    ] as const)
      expect(lettersMeasured(scene, scene.corners, text), text).toMatchObject([{ what: 'letters', value: null, why }]);
  });

  it('is not measured on an even ground, nor as specks', () => {
    const image: PixelImage = { width: 300, height: 200, data: new Uint8ClampedArray(300 * 200 * 4).fill(120) };
    const quad = (high: number) =>
      [
        [0.1, 0.4],
        [0.9, 0.4],
        [0.9, 0.4 + high],
        [0.1, 0.4 + high],
      ].map(([x, y]) => ({ x: x!, y: y! }));
    const mark = (high: number): HandMark => ({
      number: 1,
      kind: 'lettering',
      points: quad(high),
      within: 0.002,
      mm: null,
      name: 'KN 12',
    });
    expect(measureHandMarks(image, [mark(0.2), mark(0.04)])).toMatchObject([[{ why: 'flat' }], [{ why: 'small' }]]);
  });
});

describe('lines beside each other', () => {
  it('are compared character by character, whatever the camera’s slant', async () => {
    const own = widthsOf(await secondLetteringScene(61, 'fair', 'KNAXT20'));
    const other = widthsOf(await secondLetteringScene(61, 'fair', 'ZKNAT74'));
    const { letters, references, apart } = lettersCompared(own, [other]);
    expect(references).toBe(1);
    expect(letters.map(({ letter }) => letter)).toEqual(['K', 'N', 'A', 'T']);
    for (const { letter, own: here, others } of letters) expect(Math.abs(here - others[0]!), letter).toBeLessThan(0.12);
    // One line is no reference: what two of one hand differ by is not known.
    expect(apart).toBeNull();
  });

  it('have a distance with three references, and none with two or with too little in common', () => {
    const line = (...widths: [string, number][]) => new Map(widths);
    const usual = [1, 2, 3].map((scale) => line(['A', 10 * scale], ['B', 12 * scale], ['C', 8 * scale]));
    const wide = line(['A', 10], ['B', 18], ['C', 8]);
    expect(lettersCompared(wide, usual.slice(0, 2)).apart).toBeNull();
    const { apart } = lettersCompared(wide, usual);
    expect(Math.max(...apart!.among)).toBeCloseTo(0, 9);
    for (const each of apart!.own)
      expect(each).toBeCloseTo(Math.sqrt(((1 / 6) ** 2 + 0.3 ** 2 + (2 / 15) ** 2) / 3), 9);
    expect(lettersCompared(line(['A', 1], ['X', 2]), usual)).toEqual({ letters: [], references: 0, apart: null });
  });
});
