import { describe, expect, it } from 'vitest';
import type { PixelImage, Quad } from '../../../src/photo';
import { type Lattice, readStamp, type StampNets } from '../../../src/stamp';
import { lineOfBoth } from '../../../src/stamp/same-row';

const box = (x: number, y: number, width: number, height = 30): Quad => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];
const spelling = (text: string, probability: number): Lattice => ({
  steps: [...text].flatMap((character, at): Record<string, number>[] => [
    at === 0 ? { [character]: probability } : { [character]: 1 },
    { '': 1 },
  ]),
});
const photo: PixelImage = { width: 640, height: 480, data: new Uint8ClampedArray(640 * 480 * 4).fill(120) };

/** What is read by where a box begins and how wide it is. */
async function linesOf(found: Quad[], says: (from: number, width: number) => Lattice) {
  const net: StampNets = {
    acceptance: { stampScore: 0.5 },
    margin: 0,
    findLines: async (grey, share = 1) =>
      share === 1 && grey.width === photo.width ? found.map((quad) => ({ quad, stampScore: 0.9 })) : [],
    // From the other side none of them spells anything.
    readLine: async (_, [a, b]) => (b.x < a.x ? { steps: [] } : says(Math.round(a.x), Math.round(b.x - a.x))),
  };
  const read = await readStamp(photo, 'p1', { print: null, net });
  return read.state === 'read' ? read.lines.map(({ free, mayGoOn }) => [free.text, mayGoOn]) : [];
}

describe('two boxes in one row', () => {
  it('that reach into each other are parts of one line', () => {
    expect(lineOfBoth(box(100, 200, 170), box(200, 203, 180))).toEqual([
      { x: 100, y: 200 },
      { x: 380, y: 203 },
      { x: 380, y: 233 },
      { x: 100, y: 230 },
    ]);
  });

  it.each([
    ['apart', box(300, 200, 100)],
    ['in another row', box(200, 225, 180)],
    ['much taller', box(200, 180, 180, 70)],
    ['within the other', box(120, 200, 100)],
    ['the same again', box(103, 201, 169)],
  ])('are none: %s', (_, other) => {
    expect(lineOfBoth(box(100, 200, 170), other)).toBeNull();
    expect(lineOfBoth(other, box(100, 200, 170))).toBeNull();
  });
});

describe('a line that was found in pieces', () => {
  const pieces = [box(100, 200, 170), box(200, 200, 180)];
  const piece = (from: number, width: number): Lattice | null =>
    width > 200 ? null : from < 150 ? spelling('SP-145', 0.95) : spelling('1451080', 0.96);

  it('is read as one', async () => {
    expect(await linesOf(pieces, (from, width) => piece(from, width) ?? spelling('SP-1451080', 0.92))).toEqual([
      ['SP-1451080', undefined],
    ]);
  });

  it('passes for no whole code where it cannot be read as one', async () => {
    expect(await linesOf(pieces, (from, width) => piece(from, width) ?? spelling('5P-A45I0B0', 0.1))).toEqual([
      ['SP-145', true],
      ['1451080', true],
    ]);
  });
});
