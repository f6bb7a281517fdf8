import { describe, expect, it } from 'vitest';
import { type PixelImage, type Quad, quadSize } from '../../../src/photo';
import { type Lattice, readStamp, type StampNets } from '../../../src/stamp';
import { goesOn } from '../../../src/stamp/reach-out';

describe('a text that goes on', () => {
  it('does where more of it stands close by', () => {
    expect(goesOn('1451080', 'SP-1451080')).toBe(true);
    expect(goesOn('M74HC238', 'M74HC238B1')).toBe(true);
  });

  it('does not past a gap, where a sign alone is more, or where it reads otherwise', () => {
    expect(goesOn('0915', 'KV 0915')).toBe(false);
    expect(goesOn('0915', 'ORLA 0915X')).toBe(false);
    expect(goesOn('0915', '0915-')).toBe(false);
    expect(goesOn('0915', 'KV0916')).toBe(false);
    expect(goesOn('0915', '0915')).toBe(false);
  });
});

const photo: PixelImage = { width: 640, height: 480, data: new Uint8ClampedArray(640 * 480 * 4).fill(120) };
const box: Quad = [
  { x: 200, y: 200 },
  { x: 320, y: 200 },
  { x: 320, y: 230 },
  { x: 200, y: 230 },
];
const spelling = (text: string): Lattice => ({ steps: [...text].flatMap((one) => [{ [one]: 0.99 }, { '': 1 }]) });

async function linesOf(further: Lattice, first = spelling('1451080')) {
  let reads = 0;
  const net: StampNets = {
    acceptance: { stampScore: 0.5 },
    margin: 1,
    findLines: async () => [{ quad: box, stampScore: 0.9 }],
    readLine: async (_, quad) => {
      reads++;
      return quadSize(quad).across > 130 ? further : first;
    },
  };
  const read = await readStamp(photo, 'p1', { print: null, net });
  return Object.assign(read.state === 'read' ? read.lines : [], { reads });
}

describe('a box that stops short of a line’s end', () => {
  it('is drawn out to all that the line says', async () => {
    const [line] = await linesOf(spelling('SP-1451080'));
    expect(line?.free.text).toBe('SP-1451080');
    expect(quadSize(line!.quad).across).toBeGreaterThan(190);
  });

  it('is left open where more surely stands there and what it says is not sure', async () => {
    const [last] = spelling('5').steps;
    const doubtful = (share: number): Lattice => ({
      steps: [...spelling('1451080').steps, { ...last, 5: share, '': 1 - share }],
    });
    const [open] = await linesOf({ steps: [...spelling('1451080').steps, { 5: 0.55, 8: 0.4, '': 0.05 }] });
    expect([open?.free.text, open?.mayGoOn]).toEqual(['1451080', true]);
    const [told] = await linesOf({ steps: [...spelling('1451080').steps, { 5: 0.75, 8: 0.2, '': 0.05 }] });
    expect([told?.free.text, told?.mayGoOn]).toEqual(['14510805', undefined]);
    const [whole] = await linesOf(doubtful(0.7));
    expect([whole?.free.text, whole?.mayGoOn]).toEqual(['1451080', undefined]);
  });

  it('is not read further where its lattice shows that nothing stands where a next character would', async () => {
    // Six heights: the line's four, and one more at each end, in steps of a tenth.
    const nothing = (count: number, share = 1) => Array.from({ length: count }, () => ({ '': share }));
    const shown = (ground: { '': number }[]): Lattice => ({
      steps: [...ground, ...[...'1451080'].flatMap((one) => [{ [one]: 0.99 }, ...nothing(5)]), ...ground],
    });
    expect(await linesOf(spelling('SP-1451080'), shown(nothing(10)))).toMatchObject({ reads: 1 });
    for (const ground of [nothing(3), [...nothing(9), ...nothing(1, 0.98)]]) {
      expect(await linesOf(spelling('SP-1451080'), shown(ground))).toMatchObject({ reads: 2 });
    }
  });

  it('stays where words stand beside it', async () => {
    const [line] = await linesOf(spelling('BY 1451080'));
    expect(line?.free.text).toBe('1451080');
  });
});
