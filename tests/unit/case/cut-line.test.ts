import { describe, expect, it } from 'vitest';
import { cutLine } from '../../../src/case';
import type { Quad } from '../../../src/photo';
import type { StampLine } from '../../../src/stamp';
import { photoRead } from '../../photo-read';

const line = (text: string, x: number, y: number, stampScore = 0.9): StampLine => ({
  id: `p1-line-${text}`,
  photoId: 'p1',
  // 120 × 30 pixels in a photo of 1200 × 900.
  quad: [
    { x, y },
    { x: x + 120, y },
    { x: x + 120, y: y + 30 },
    { x, y: y + 30 },
  ] as Quad,
  stampScore,
  engine: 'net',
  lattice: { steps: [] },
  free: { text, probability: 0.95 },
  measurements: [],
});
const shown = (...lines: StampLine[]) => photoRead('p1', { lines });
const share = (x0: number, y0: number, x1: number, y1: number): [number, number, number, number] => [
  x0 / 1200,
  y0 / 900,
  x1 / 1200,
  y1 / 900,
];

describe('a part that a hand frames', () => {
  it('cuts a line of which it leaves a piece, and one that it ends too close to', () => {
    const read = shown(line('KV0915', 400, 300));
    expect(cutLine(read, share(300, 200, 470, 400))?.text).toBe('KV0915');
    expect(cutLine(read, share(390, 290, 530, 340))?.text).toBe('KV0915');
    expect(cutLine(read, share(300, 310, 700, 500))?.text).toBe('KV0915');
  });

  it('cuts none that it holds with room for a character, and none that it leaves out', () => {
    const read = shown(line('KV0915', 400, 300));
    expect(cutLine(read, share(370, 290, 550, 340))).toBeNull();
    expect(cutLine(read, share(600, 290, 900, 340))).toBeNull();
    expect(cutLine(read, share(300, 100, 700, 302))).toBeNull();
  });

  it('is not to blame for a line that the photo itself cuts', () => {
    expect(cutLine(shown(line('KV0915', 0, 300)), share(0, 200, 300, 400))).toBeNull();
  });

  it('can be made to hold the whole line, and then cuts it no more', () => {
    const read = shown(line('ORLA', 400, 500, 0.2), line('KV0915', 400, 300));
    const cut = cutLine(read, share(300, 200, 470, 520));
    expect(cut?.text).toBe('KV0915');
    expect(cutLine(shown(line('KV0915', 400, 300)), cut?.whole ?? share(0, 0, 1, 1))).toBeNull();
    expect(cut?.whole.map((one, at) => Math.round(one * (at % 2 === 0 ? 1200 : 900)))).toEqual([300, 200, 565, 520]);
  });

  it('of a photo that was not read cuts nothing', () => {
    const problem = { code: 'x', where: 'x', what: 'x', remedy: 'x' };
    expect(cutLine({ state: 'unread', photoId: 'p1', problem }, share(0, 0, 600, 900))).toBeNull();
  });
});
