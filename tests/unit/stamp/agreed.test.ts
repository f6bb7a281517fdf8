import { describe, expect, it } from 'vitest';
import type { PixelImage, Quad } from '../../../src/photo';
import { type Lattice, type PrintReader, readStamp, type StampNets } from '../../../src/stamp';
import { agreed } from '../../../src/stamp/agreed';

const photo: PixelImage = { width: 640, height: 480, data: new Uint8ClampedArray(640 * 480 * 4).fill(120) };
const box: Quad = [
  { x: 200, y: 200 },
  { x: 320, y: 200 },
  { x: 320, y: 230 },
  { x: 200, y: 230 },
];
/** A text whose first character is as likely as said, and else another. */
const spelling = (text: string, share: number, other: string): Lattice => ({
  steps: [...text].flatMap((character, at): Record<string, number>[] => [
    at === 0 ? { [character]: share, [other]: 1 - share } : { [character]: 1 },
    { '': 1 },
  ]),
});

/** What is read of a line where print says the same in every view of it, or one thing in each. */
async function lineOf(share: number, printed: string | readonly string[], confidence = 0.9, text = '344384') {
  let asked = 0;
  const net: StampNets = {
    acceptance: { stampScore: 0.5 },
    margin: 0,
    findLines: async (grey) => (grey.width === photo.width ? [{ quad: box, stampScore: 0.9 }] : []),
    readLine: async (_, quad) => (quad[0].x < 300 ? spelling(text, share, '8') : { steps: [] }),
  };
  const print: PrintReader = {
    read: async () => {
      const said = typeof printed === 'string' ? printed : (printed[asked] ?? '');
      asked++;
      const word = { text: said, confidence, symbols: [] };
      const place = { x0: 0, y0: 0, x1: 9, y1: 9 };
      return said === '' ? [] : [{ text: said, confidence, box: place, words: [word] }];
    },
  };
  const read = await readStamp(photo, 'p1', { print, net });
  const [line] = read.state === 'read' ? read.lines : [];
  return { text: line?.free.text, sure: (line?.free.probability ?? 0) >= 0.9, asked };
}

describe('a code that the print engine reads as well', () => {
  it('is surely read where ours alone was not', async () => {
    expect(await lineOf(0.6, '344384')).toEqual({ text: '344384', sure: true, asked: 1 });
  });

  it('is not where print reads anything else, or nothing', async () => {
    expect(await lineOf(0.6, '344385')).toMatchObject({ text: '344384', sure: false });
    expect(await lineOf(0.6, '')).toMatchObject({ text: '344384', sure: false });
  });

  it('is surely read where one of three views says so', async () => {
    expect(await lineOf(0.6, ['844384', '', '344384'])).toEqual({ text: '344384', sure: true, asked: 3 });
    expect(await lineOf(0.6, ['', '', '', '344384'])).toEqual({ text: '344384', sure: false, asked: 3 });
  });

  it('counts untrusted from six characters on', async () => {
    expect(await lineOf(0.6, '344384', 0.1)).toMatchObject({ sure: true });
    expect(await lineOf(0.6, '34438', 0.1, '34438')).toMatchObject({ text: '34438', sure: false });
    expect(await lineOf(0.6, '34438', 0.9, '34438')).toMatchObject({ text: '34438', sure: true });
  });

  it('is not where print saw a further sign, which may be a character', async () => {
    for (const printed of ['344384|', '344384?', '$344384']) {
      expect(await lineOf(0.6, printed), printed).toMatchObject({ text: '344384', sure: false });
    }
    expect(await lineOf(0.6, '34 43-84.')).toMatchObject({ sure: true });
  });

  it('is not asked for where ours is sure', async () => {
    expect(await lineOf(0.97, '344385')).toEqual({ text: '344384', sure: true, asked: 0 });
  });

  it('keeps every step a distribution', () => {
    const lattice = spelling('344384', 0.6, '8');
    const both = agreed(lattice, { text: '344384', probability: 0.6 }, '344384');
    expect(both?.free.probability).toBeGreaterThan(0.95);
    for (const step of both?.lattice.steps ?? []) {
      expect(Object.values(step).reduce((sum, share) => sum + share, 0)).toBeLessThanOrEqual(1 + 1e-9);
    }
  });
});
