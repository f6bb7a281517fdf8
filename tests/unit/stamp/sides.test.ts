import { describe, expect, it } from 'vitest';
import type { GreyImage, PixelImage, Quad } from '../../../src/photo';
import { type Lattice, readStamp, type StampNets } from '../../../src/stamp';
import { angleBetween, directionOf, isReadFromBothSides, quarterTurn, turnedBy } from '../../../src/stamp/sides';

const photo: PixelImage = { width: 640, height: 480, data: new Uint8ClampedArray(640 * 480 * 4).fill(120) };
const box = (x: number, y: number): Quad => [
  { x, y },
  { x: x + 120, y },
  { x: x + 120, y: y + 30 },
  { x, y: y + 30 },
];
/** Doubt spread over many characters, so that none of them is likely. */
const rest = (share: number): Record<string, number> => Object.fromEntries([...'2345EFGU'].map((c) => [c, share / 8]));
const spelling = (text: string, probability: number): Lattice => ({
  steps: [...text].flatMap((character, at): Record<string, number>[] => [
    at === 0 ? { ...rest(1 - probability), [character]: probability } : { [character]: 1 },
    { '': 1 },
  ]),
});

interface Shown {
  /** In the photo as it lies, and in the photo turned by a quarter (its own pixels). */
  upright: Quad[];
  turned?: Quad[];
  /** In the photo turned by an eighth clockwise. */
  aslant?: Quad[];
  /** What a line says by its reading direction, degrees, and the row of its middle. */
  says(direction: number, row: number): Lattice;
}

async function linesOf({ upright, turned = [], aslant = [], says }: Shown) {
  let looksAslant = 0;
  const net: StampNets = {
    acceptance: { stampScore: 0.5 },
    margin: 0,
    findLines: async ({ width, height }: GreyImage) => {
      const seen = width === photo.width ? upright : width !== height ? turned : looksAslant++ === 0 ? aslant : [];
      return seen.map((quad) => ({ quad, stampScore: 0.9 }));
    },
    readLine: async (_, quad) => says(Math.round(directionOf(quad)), Math.round((quad[0].y + quad[2].y) / 2)),
  };
  const read = await readStamp(photo, 'p1', { print: null, net });
  return read.state === 'read' ? read.lines : [];
}

describe('lines from any side', () => {
  it('upside down are read from the side that spells a code', async () => {
    const [line] = await linesOf({
      upright: [box(200, 200)],
      says: (direction) => (Math.abs(direction) === 180 ? spelling('KV0915', 0.97) : spelling('51K0AX', 0.2)),
    });
    expect(line?.free.text).toBe('KV0915');
    expect(angleBetween(directionOf(line!.quad), 180)).toBeLessThan(1);
    expect(line?.otherWay).toBeUndefined();
  });

  it('stay as they lie where the other side is hardly likelier', async () => {
    const [line] = await linesOf({
      upright: [box(200, 200)],
      says: (direction) => (Math.abs(direction) === 180 ? spelling('8346', 0.6) : spelling('9453', 0.5)),
    });
    expect(line?.free.text).toBe('9453');
  });

  it('that run up the photo are found once it is turned, in the photo’s own pixels', async () => {
    const [line] = await linesOf({
      upright: [],
      turned: [box(100, 300)],
      says: (direction) => (direction === -90 ? spelling('KV0915', 0.97) : { steps: [] }),
    });
    expect(line?.free.text).toBe('KV0915');
    for (const { x, y } of line!.quad) {
      expect(x).toBeGreaterThan(290);
      expect(x).toBeLessThan(340);
      expect(y).toBeGreaterThan(250);
      expect(y).toBeLessThan(390);
    }
  });

  it('that lie askew are found once the photo is turned by an eighth, in the photo’s own pixels', async () => {
    const [line] = await linesOf({
      upright: [box(20, 20)],
      // The turned photo is 720 × 720 pixels, its middle the photo's.
      aslant: [box(360 - 60, 360 - 15)],
      says: (direction) => (direction === -45 ? spelling('KV0915', 0.97) : { steps: [] }),
    });
    expect(line?.free.text).toBe('KV0915');
    const [a, , c] = line!.quad;
    expect(Math.hypot((a.x + c.x) / 2 - 320, (a.y + c.y) / 2 - 240)).toBeLessThan(5);
  });

  it.each([
    ['889', 0.7, 0],
    ['889', 0.97, 1],
    ['KV0915', 0.7, 1],
    ['KV0915', 0.3, 0],
  ])(
    '%s that lies askew and is %s likely counts as %s lines: few characters have to be sure',
    async (text, share, count) => {
      const lines = await linesOf({
        upright: [box(20, 20)],
        aslant: [box(360 - 60, 360 - 15)],
        says: (direction) => (direction === -45 ? spelling(text, share) : { steps: [] }),
      });
      expect(lines).toHaveLength(count);
    },
  );

  it('are not looked for askew where a code is surely read', async () => {
    const lines = await linesOf({
      upright: [box(200, 200)],
      aslant: [box(20, 20)],
      says: (direction) => (direction === 0 ? spelling('KV0915', 0.97) : spelling('T1234', 0.99)),
    });
    expect(lines.map(({ free }) => free.text)).toEqual(['KV0915']);
  });

  it.each([
    ['nothing is found in any other look', []],
    ['a word that is surely read shows that the piece lies straight', [box(20, 20)]],
  ])('are not looked for askew where %s', async (_, upright) => {
    const lines = await linesOf({
      upright,
      aslant: [box(360 - 60, 360 - 15)],
      says: (direction) => (direction === 0 ? spelling('PELLAM', 0.97) : spelling('T1234', 0.99)),
    });
    expect(lines.map(({ free }) => free.text)).not.toContain('T1234');
  });

  it('are not read from the other side where no text there could be twice as likely', async () => {
    const directions: number[] = [];
    await linesOf({
      upright: [box(200, 200)],
      says(direction) {
        directions.push(direction);
        return spelling('PELLAM', 0.6);
      },
    });
    expect(new Set(directions)).toEqual(new Set([0]));
  });

  it('of characters that are some upside down too keep both ways', async () => {
    const [line] = await linesOf({
      upright: [box(200, 200)],
      says: (direction) => (Math.abs(direction) === 180 ? spelling('1906', 0.95) : spelling('9061', 0.95)),
    });
    expect(line?.free.text).toBe('9061');
    expect(line?.otherWay).toEqual(spelling('1906', 0.95));
  });

  it('are settled by words beside them that stand one way only', async () => {
    const code = (direction: number) => (Math.abs(direction) === 180 ? spelling('1906', 0.95) : spelling('9061', 0.95));
    const upright = await linesOf({
      upright: [box(200, 200), box(200, 260)],
      says: (direction, row) => (row < 240 ? code(direction) : spelling('RETRAL', 0.99)),
    });
    expect(upright[0]?.free.text).toBe('9061');
    expect(upright[0]?.otherWay).toBeUndefined();
    const turned = await linesOf({
      upright: [box(200, 200), box(200, 260)],
      says: (direction, row) =>
        row < 240 ? code(direction) : Math.abs(direction) === 180 ? spelling('T1234', 0.99) : spelling('X', 0.1),
    });
    expect(turned[0]?.free.text).toBe('1906');
    expect(turned[0]?.otherWay).toBeUndefined();
  });
});

describe('turning', () => {
  it('by a quarter keeps every pixel, and points lead back to theirs', () => {
    const image = { width: 3, height: 2, data: Float32Array.from([1, 2, 3, 4, 5, 6]) };
    const { turned, back } = quarterTurn(image);
    expect([turned.width, turned.height, [...turned.data]]).toEqual([2, 3, [4, 1, 5, 2, 6, 3]]);
    expect(back({ x: 1.5, y: 0.5 })).toEqual({ x: 0.5, y: 0.5 });
    expect(back({ x: 0.5, y: 2.5 })).toEqual({ x: 2.5, y: 1.5 });
  });

  it('by an eighth lays each point where its way back leads', () => {
    const image = { width: 60, height: 40, data: new Float32Array(60 * 40) };
    image.data[10 * 60 + 45] = 1000;
    const { turned, back } = turnedBy(image, 45, 960);
    expect([turned.width, turned.height]).toEqual([71, 71]);
    const brightest = turned.data.indexOf(Math.max(...turned.data));
    const { x, y } = back({ x: (brightest % 71) + 0.5, y: Math.floor(brightest / 71) + 0.5 });
    expect(Math.hypot(x - 45.5, y - 10.5)).toBeLessThan(1);
    expect(turnedBy(image, 45, 35).turned).toMatchObject({ width: 35, height: 35 });
  });

  it('knows which texts have another side', () => {
    expect(['1961', 'HN 80', 'OXO-6'].map(isReadFromBothSides)).toEqual([true, true, true]);
    expect(['1962', 'KV0915', 'A1'].map(isReadFromBothSides)).toEqual([false, false, false]);
  });
});
