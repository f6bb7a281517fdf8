import { describe, expect, it } from 'vitest';
import type { GreyImage, PixelImage, Quad } from '../../../src/photo';
import { type Lattice, readStamp, type StampNets } from '../../../src/stamp';
import { fitRows } from '../../../src/stamp/fit-rows';
import { refit } from '../../../src/stamp/refit';
import { speltBy } from '../../../src/stamp/spelt';

const [width, height] = [400, 200];

/** Six upright strokes, 20 pixels apart from 140 on, between two rows, and a rule that runs past them. */
function drawn(top: number, bottom: number, rule: number | null = null): GreyImage {
  const data = new Float32Array(width * height).fill(150);
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const isStroke = column >= 140 && column < 260 && column % 20 < 6 && row >= top && row < bottom;
      const isRule = rule !== null && row >= rule && row < rule + 4;
      if (isStroke || isRule) data[row * width + column] = 60;
    }
  }
  return { width, height, data };
}

const box = (x: number, y: number, across: number, down: number): Quad => [
  { x, y },
  { x: x + across, y },
  { x: x + across, y: y + down },
  { x, y: y + down },
];

const othersOf = (rest: number): Record<string, number> =>
  Object.fromEntries([...'XWVUT'].map((character) => [character, rest / 5]));

/** A line whose first character is as likely as this, and the others sure, evenly from end to end. */
const spelling = (text: string, probability: number): Lattice => ({
  steps: [...text].flatMap((character, at): Record<string, number>[] => [
    { '': 1 },
    at === 0 ? { [character]: probability, ...othersOf(1 - probability) } : { [character]: 1 },
    { '': 1 },
  ]),
});

describe('the rows of a line', () => {
  it('are those of its characters where the box is too tall, too low or off', () => {
    const photo = drawn(80, 110);
    for (const [y, down] of [
      [70, 42],
      [84, 26],
      [88, 30],
      [74, 30],
    ] as const) {
      const fit = fitRows(photo, box(140, y, 120, down))!;
      expect(Math.abs(y + fit.top * down - 80)).toBeLessThan(2);
      expect(Math.abs(y + fit.bottom * down - 110)).toBeLessThan(2);
    }
  });

  it('are not those of a rule along the line', () => {
    const fit = fitRows(drawn(80, 110, 66), box(140, 78, 120, 32))!;
    expect(Math.abs(78 + fit.top * 32 - 80)).toBeLessThan(2);
    expect(Math.abs(78 + fit.bottom * 32 - 110)).toBeLessThan(2);
  });

  it('are none on even ground and in a flat box', () => {
    expect(fitRows({ width, height, data: new Float32Array(width * height).fill(90) }, box(140, 80, 120, 30))).toBe(
      null,
    );
    expect(fitRows(drawn(80, 110), box(140, 80, 120, 0))).toBe(null);
  });
});

/** What the fitted boxes spell, one after the other, and how many were read. */
async function refitted(first: Lattice, ...reads: Lattice[]) {
  const quads: Quad[] = [];
  const found = await refit(drawn(80, 110), box(120, 70, 160, 44), speltBy(first), 0, async (quad) => {
    quads.push(quad);
    return speltBy(reads[quads.length - 1]!);
  });
  return { found, quads };
}

describe('a line that is not surely read', () => {
  it('counts as in the middle one of three boxes, in whatever order', async () => {
    const first = spelling('KB0917', 0.6);
    const inTurn = [
      [0.98, 0.85, 0.7],
      [0.7, 0.98, 0.85],
      [0.85, 0.7, 0.98],
    ];
    for (const shares of inTurn) {
      const { found } = await refitted(first, ...shares.map((share) => spelling('KB0917', share)));
      expect([found?.spelt.free.text, found?.spelt.free.probability.toFixed(2)]).toEqual(['KB0917', '0.85']);
    }
  });

  it('counts as the less sure of two where the third says something else', async () => {
    const other = spelling('KR0917', 0.99);
    const two = [spelling('KB0917', 0.95), spelling('KB0917', 0.8)] as const;
    const { found } = await refitted(spelling('B0917', 0.5), other, ...two);
    expect([found?.spelt.free.text, found?.spelt.free.probability.toFixed(2)]).toEqual(['KB0917', '0.80']);
  });

  it('stays as it was where no two boxes say the same, and where they are no likelier', async () => {
    const first = spelling('KB0917', 0.7);
    const apart = ['KB0917', 'KR0917', 'KE0917'].map((text) => spelling(text, 0.97));
    expect((await refitted(first, ...apart)).found).toBe(null);
    const less = [0.75, 0.65, 0.6].map((share) => spelling('KB0917', share));
    expect((await refitted(first, ...less)).found).toBe(null);
  });

  it('is read in boxes that end where its characters do', async () => {
    const reads = [0.7, 0.7, 0.7].map((share) => spelling('KB0917', share));
    const { quads } = await refitted(spelling('KB0917', 0.6), ...reads);
    expect(quads).toHaveLength(3);
    const [ended, fitted, lower] = quads.map(([a, , c]) => ({ top: a.y, down: c.y - a.y, across: c.x - a.x }));
    expect(ended).toMatchObject({ top: 70, down: 44 });
    expect(ended!.across).toBeLessThan(160);
    expect(Math.abs(fitted!.top - 80)).toBeLessThan(2);
    expect(Math.abs(fitted!.down - 30)).toBeLessThan(3);
    expect(lower!.down).toBeLessThan(fitted!.down);
  });

  it('is read in no third box where the first two are no likelier than what was read', async () => {
    const less = [0.6, 0.5, 0.9].map((share) => spelling('KB0917', share));
    const { found, quads } = await refitted(spelling('KB0917', 0.6), ...less);
    expect([found, quads.length]).toEqual([null, 2]);
    const more = [0.6, 0.7, 0.9].map((share) => spelling('KB0917', share));
    expect((await refitted(spelling('KB0917', 0.6), ...more)).found?.spelt.free.probability).toBeCloseTo(0.7, 2);
  });

  it('is not read again where it is sure, hardly read, short, or words', async () => {
    for (const first of [
      spelling('KB0917', 0.95),
      spelling('KB0917', 0.2),
      spelling('834', 0.6),
      spelling('PELLAM', 0.6),
    ]) {
      const { found, quads } = await refitted(first);
      expect([found, quads.length]).toEqual([null, 0]);
    }
  });
});

describe('a box that is too tall for its line', () => {
  it('gives way to the fitted one, and the further looks are saved', async () => {
    const { data } = drawn(80, 110);
    const pixels: PixelImage = { width, height, data: new Uint8ClampedArray(width * height * 4) };
    for (const [at, value] of data.entries()) pixels.data.set([value, value, value, 255], at * 4);
    const looks: number[] = [];
    const net: StampNets = {
      acceptance: { stampScore: 0.5 },
      margin: 0,
      findLines: async (_, share = 1) => {
        looks.push(share);
        return [{ quad: box(120, 66, 160, 48), stampScore: 0.9 }];
      },
      readLine: async (_, [a, , c]) => spelling('KB0917', a.y > 70 && a.y < c.y && c.y - a.y < 40 ? 0.97 : 0.6),
    };
    const read = await readStamp(pixels, 'p1', { print: null, net });
    const [line] = read.state === 'read' ? read.lines : [];
    expect(line?.free.probability).toBeCloseTo(0.97, 2);
    expect(Math.abs(line!.quad[0].y - 80)).toBeLessThan(5);
    expect(looks).toEqual([1]);
  });
});
