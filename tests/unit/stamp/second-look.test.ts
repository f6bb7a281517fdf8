import { describe, expect, it } from 'vitest';
import type { PixelImage, Quad } from '../../../src/photo';
import { type Lattice, readStamp, type StampNets } from '../../../src/stamp';

const photo: PixelImage = { width: 640, height: 480, data: new Uint8ClampedArray(640 * 480 * 4).fill(120) };

const box = (x: number, y: number, width = 120, height = 30): Quad => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];

/** A line that spells a text with this probability, and nothing else as likely. */
const spelling = (text: string, probability: number): Lattice => ({
  steps: [...text].flatMap((character, at): Record<string, number>[] => [
    at === 0 ? { [character]: probability, '7': 1 - probability } : { [character]: 1 },
    { '': 1 },
  ]),
});

/** What the finder shows at each size, and what the recogniser reads in the boxes that start at each column. */
function netsThat(finds: Record<string, Quad[]>, reads: Record<number, Lattice>, shares: number[]): StampNets {
  return {
    acceptance: { stampScore: 0.5 },
    margin: 0,
    findLines: async (_, share = 1) => {
      shares.push(share);
      return (finds[share] ?? []).map((quad) => ({ quad, stampScore: 0.9 }));
    },
    readLine: async (_, quad) => reads[Math.round(quad[0].x)] ?? { steps: [] },
  };
}

async function readWith(finds: Record<string, Quad[]>, reads: Record<number, Lattice>, image = photo) {
  const shares: number[] = [];
  const read = await readStamp(image, 'p1', { print: null, net: netsThat(finds, reads, shares) });
  const texts = read.state === 'read' ? read.lines.map(({ free }) => free.text) : [];
  const ids = read.state === 'read' ? read.lines.map(({ id }) => id) : [];
  return { shares, texts, ids };
}

describe('the finder’s second look', () => {
  it('is left out where a code was surely read', async () => {
    const { shares, texts } = await readWith({ 1: [box(100, 100)] }, { 100: spelling('834', 0.95) });
    expect(texts).toEqual(['834']);
    expect(shares).toEqual([1]);
  });

  it('finds in a smaller size what the first did not', async () => {
    const { shares, texts } = await readWith({ 0.7: [box(100, 100)] }, { 100: spelling('834', 0.95) });
    expect(texts).toEqual(['834']);
    expect(shares).toEqual([1, 0.7]);
  });

  it('finds in a small photo enlarged what is too small in its own pixels, and enlarges no photo that is large enough', async () => {
    const finds = { 2.5: [box(100, 100)] };
    const reads = { 100: spelling('834', 0.95) };
    const { shares, texts } = await readWith(finds, reads);
    expect(texts).toEqual(['834']);
    expect(shares).toEqual([1, 0.7, 2.5]);
    const large = { width: 960, height: 480, data: new Uint8ClampedArray(960 * 480 * 4).fill(120) };
    expect((await readWith(finds, reads, large)).shares).not.toContain(2.5);
  });

  it('enlarges a small photo from its side as well, after all other looks, and no photo that is large enough', async () => {
    const seen: string[] = [];
    const nets = netsThat({}, { 100: spelling('834', 0.95) }, []);
    const turned = {
      ...nets,
      findLines: async ({ width, height }: { width: number; height: number }, share = 1) => {
        seen.push(`${width > height ? 'upright' : 'turned'} ${share}`);
        return share === 2.5 && width < height ? [{ quad: box(100, 100), stampScore: 0.9 }] : [];
      },
    };
    const texts = async (image: PixelImage) => {
      const read = await readStamp(image, 'p1', { print: null, net: turned });
      return read.state === 'read' ? read.lines.map(({ free }) => free.text) : [];
    };
    expect(await texts(photo)).toEqual(['834']);
    expect(seen.at(-1)).toBe('turned 2.5');
    expect(seen).toContain('upright 2.5');
    expect(await texts({ width: 960, height: 480, data: new Uint8ClampedArray(960 * 480 * 4).fill(120) })).toEqual([]);
  });

  it('replaces a doubtful reading of the same line by a clearly surer one, and by no other', async () => {
    const finds = { 1: [box(100, 100)], 0.7: [box(108, 102)] };
    const surer = await readWith(finds, { 100: spelling('834', 0.6), 108: spelling('8345', 0.9) });
    expect(surer.texts).toEqual(['8345']);
    const hardly = await readWith(finds, { 100: spelling('834', 0.6), 108: spelling('8345', 0.65) });
    expect(hardly.texts).toEqual(['834']);
  });

  it('makes sure what the first likely read, and neither another text nor a guess', async () => {
    const finds = { 1: [box(100, 100)], 0.7: [box(108, 102)] };
    const probabilityOf = async (first: Lattice, second: Lattice) => {
      const nets = netsThat(finds, { 100: first, 108: second }, []);
      const read = await readStamp(photo, 'p1', { print: null, net: nets });
      return read.state === 'read' ? read.lines.map(({ free }) => `${free.text} ${free.probability.toFixed(2)}`) : [];
    };
    expect(await probabilityOf(spelling('8345', 0.86), spelling('8345', 0.92))).toEqual(['8345 0.92']);
    expect(await probabilityOf(spelling('8345', 0.86), spelling('83-45', 0.92))).toEqual(['83-45 0.92']);
    expect(await probabilityOf(spelling('8345', 0.86), spelling('8346', 0.92))).toEqual(['8345 0.86']);
    expect(await probabilityOf(spelling('8345', 0.8), spelling('8345', 0.88))).toEqual(['8345 0.80']);
  });

  it('takes no part of what is likely read for surer', async () => {
    const finds = { 1: [box(100, 100)], 0.7: [box(108, 102)] };
    const part = await readWith(finds, { 100: spelling('834567', 0.7), 108: spelling('34567', 0.99) });
    expect(part.texts).toEqual(['834567']);
    const other = await readWith(finds, { 100: spelling('834567', 0.7), 108: spelling('834577', 0.99) });
    expect(other.texts).toEqual(['834577']);
  });

  it('adds a line that stands elsewhere beside the first, each under its own name', async () => {
    const finds = { 1: [box(100, 100)], 0.7: [box(108, 102), box(400, 300)] };
    const reads = { 100: spelling('834', 0.6), 108: spelling('834', 0.6), 400: spelling('8411', 0.95) };
    const { texts, ids } = await readWith(finds, reads);
    expect(texts).toEqual(['834', '8411']);
    expect(new Set(ids).size).toBe(2);
  });

  it('takes a code for what the first look took for a word, unless that was surely read', async () => {
    const finds = { 1: [box(100, 100)], 0.7: [box(108, 102)] };
    const { texts } = await readWith(finds, { 100: spelling('BAG', 0.4), 108: spelling('8346', 0.8) });
    expect(texts).toEqual(['8346']);
    const sure = await readWith(finds, { 100: spelling('BAG', 0.99), 108: spelling('8346', 0.8) });
    expect(sure.texts).toEqual(['BAG']);
  });
});
