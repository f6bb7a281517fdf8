import { describe, expect, it } from 'vitest';
import { decodeLine } from '../../../src/code';
import type { PixelImage, Quad } from '../../../src/photo';
import { type Lattice, readStamp, type StampNets } from '../../../src/stamp';
import { speltBy } from '../../../src/stamp/spelt';
import { hasWideGap } from '../../../src/stamp/wide-gap';

/** Characters a step wide, each followed by as many steps without any; a gap of another width stands as its number of steps. */
const written = (...parts: (string | number)[]): Lattice => ({
  steps: parts.flatMap((part): Record<string, number>[] =>
    typeof part === 'number'
      ? Array.from({ length: part }, () => ({ '': 1 }))
      : [...part].flatMap((character) => [{ [character]: 0.995, '': 0.005 }, { '': 1 }, { '': 1 }]),
  ),
});
const parts = (lattice: Lattice): boolean => hasWideGap(speltBy(lattice));

describe('a line whose characters part where nothing was read', () => {
  it('is a word read along with a code, or a code of which a character was not seen', () => {
    expect(parts(written('BY', 12, 'NOV2021'))).toBe(true);
    expect(parts(written('AB12', 6, '345'))).toBe(true);
  });

  it('is none where its characters stand as wide apart as codes are set', () => {
    expect(parts(written('MU', 1, '0913'))).toBe(false);
    expect(parts(written('AB12', 2, '345'))).toBe(false);
  });

  it('is none where a separator stands in the gap, or a space is read in it', () => {
    expect(parts(written('AB', 4, '-', 4, '1234'))).toBe(false);
    expect(parts(written('AB', 4, ' ', 4, '1234'))).toBe(false);
  });

  it('is none where it spells no code', () => {
    expect(parts(written('CUIR', 12, 'VACHE'))).toBe(false);
  });

  it('is never accepted, and says so', async () => {
    const quad: Quad = [
      { x: 200, y: 200 },
      { x: 500, y: 200 },
      { x: 500, y: 230 },
      { x: 200, y: 230 },
    ];
    const photo: PixelImage = { width: 800, height: 480, data: new Uint8ClampedArray(800 * 480 * 4).fill(120) };
    const lineThat = async (lattice: Lattice) => {
      const net: StampNets = {
        acceptance: { stampScore: 0.5 },
        margin: 0,
        findLines: async () => [{ quad, stampScore: 0.9 }],
        readLine: async () => lattice,
      };
      const read = await readStamp(photo, 'p1', { print: null, net });
      if (read.state === 'unread' || !read.lines[0]) throw new Error('no line was read');
      return decodeLine(read.lines[0], { makers: [], maker: null });
    };
    expect(await lineThat(written('BY', 12, 'NOV2021'))).toMatchObject({
      accepted: false,
      open: [{ kind: 'may-go-on' }],
    });
    expect(await lineThat(written('BYNOV2021'))).toMatchObject({ accepted: true });
  });
});
