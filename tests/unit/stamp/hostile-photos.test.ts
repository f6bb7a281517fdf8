import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { decodePhoto } from '../../../src/cli/photo-file';
import { isTooWeakRead, openPhoto, type PixelImage, readPhoto } from '../../../src/photo';
import { type StampEngines, stampLinesOf, stampReader } from '../../../src/stamp';
import { hostilePhotos } from '../../photos/hostile-photos';

const colour = (width: number, height: number, background = '#8a5a2b') =>
  sharp({ create: { width, height, channels: 3, background } });

/** An engine that finds nothing: what is tested is how the photo is taken in. */
const noPrint: StampEngines = { print: { read: async () => [] } };

const open = (bytes: Uint8Array) => openPhoto(new Uint8Array(bytes), 'p1', decodePhoto);

const read = (image: PixelImage) => readPhoto(image, 'p1', [stampReader(noPrint)]);

/** What reading says of a file: 'read', or the code of the problem. */
async function outcome(bytes: Uint8Array): Promise<string> {
  const opened = await open(bytes);
  if (!opened.ok) return opened.problem.code;
  const seen = await read(opened.value.image);
  return seen.state === 'read' ? `read ${seen.width} × ${seen.height}` : seen.problem.code;
}

describe('hostile photos each give a result or a clear problem', () => {
  it.each(hostilePhotos)('$name: $outcome', async ({ bytes, outcome: expected }) => {
    expect(await outcome(await bytes())).toBe(expected);
  });

  it('all black is read, and too weak to say that it shows no stamp', async () => {
    const opened = await open(await colour(800, 600, '#000000').jpeg().toBuffer());
    if (!opened.ok) throw new Error(opened.problem.code);
    const seen = await read(opened.value.image);
    expect([seen.state, stampLinesOf(seen), isTooWeakRead(seen)]).toEqual(['read', [], true]);
  });

  it('an animation is read by its first picture', async () => {
    const animated = await sharp(
      await Promise.all(['#802020', '#208020'].map((shade) => colour(300, 300, shade).png().toBuffer())),
      { join: { animated: true } },
    )
      .gif()
      .toBuffer();
    const opened = await open(animated);
    expect(opened.ok && [opened.value.image.width, opened.value.image.height]).toEqual([300, 300]);
    expect(opened.ok && [...opened.value.image.data.subarray(0, 3)]).toEqual([0x80, 0x20, 0x20]);
  });

  it('a CMYK JPEG', async () => {
    const bytes = await colour(320, 240).toColourspace('cmyk').jpeg().toBuffer();
    expect((await sharp(bytes).metadata()).space).toBe('cmyk');
    expect(await outcome(bytes)).toBe('read 320 × 240');
  });

  it('a 16-bit PNG keeps its brightness', async () => {
    const bytes = await colour(320, 240, '#808080').toColourspace('rgb16').png().toBuffer();
    expect((await sharp(bytes).metadata()).depth).toBe('ushort');
    const opened = await open(bytes);
    expect(opened.ok && Math.abs(opened.value.image.data[0]! - 128)).toBeLessThanOrEqual(2);
  });

  it('a photo that ends too early', async () => {
    const whole = await sharp(Buffer.from(Uint8Array.from({ length: 300 * 300 * 3 }, (_, at) => (at * 7919) % 256)), {
      raw: { width: 300, height: 300, channels: 3 },
    })
      .jpeg()
      .toBuffer();
    expect(await outcome(whole)).toBe('read 300 × 300');
    expect(await outcome(whole.subarray(0, whole.length >> 1))).toBe('photo-damaged');
  });

  it('transparent parts read as white paper, not as black', async () => {
    const clear = {
      create: { width: 64, height: 64, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } },
    } as const;
    const opened = await open(await sharp(clear).png().toBuffer());
    expect(opened.ok && [...opened.value.image.data.subarray(0, 4)]).toEqual([255, 255, 255, 255]);
  });

  it.each([
    [24, -1],
    [24, 1],
    [32, -1],
    [32, 1],
  ])('a BMP of %i bits a pixel keeps its colours and its top, rows running %i', async (bits, direction) => {
    const opened = await open(twoColours(bits, direction));
    if (!opened.ok) throw new Error(opened.problem.code);
    const { data, width, height } = opened.value.image;
    expect([width, height]).toEqual([24, 32]);
    expect([...data.subarray(0, 4)]).toEqual([0xc0, 0x40, 0x10, 255]);
    expect([...data.subarray(-4)]).toEqual([0x10, 0x40, 0xc0, 255]);
  });

  it('40 megapixels are shrunk while decoding, and the factor is kept', async () => {
    const opened = await open(await colour(8000, 5000).jpeg().toBuffer());
    expect(opened.ok && [opened.value.image.width, opened.value.scale]).toEqual([4382, 8000 / 4382]);
  }, 30_000);
});

/** A BMP of 24 × 32 pixels, byte by byte: orange above, blue below; upwards (1) or downwards (-1) row by row. */
function twoColours(bits: number, direction: number): Uint8Array {
  const pixel = bits / 8;
  const bytes = Buffer.alloc(54 + 24 * 32 * pixel);
  bytes.write('BM');
  for (const [at, value] of [
    [2, bytes.length],
    [10, 54],
    [14, 40],
    [18, 24],
    [22, 32 * direction],
  ] as const)
    bytes.writeInt32LE(value, at);
  bytes.writeUInt16LE(1, 26);
  bytes.writeUInt16LE(bits, 28);
  for (let row = 0; row < 32; row++) {
    const isAbove = direction < 0 ? row < 16 : row >= 16;
    for (let column = 0; column < 24; column++)
      bytes.set(isAbove ? [0x10, 0x40, 0xc0] : [0xc0, 0x40, 0x10], 54 + (row * 24 + column) * pixel);
  }
  return bytes;
}
