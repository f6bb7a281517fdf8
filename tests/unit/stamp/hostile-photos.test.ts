import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { decodePhoto } from '../../../src/cli/photo-file';
import { readStamp, type StampEngines } from '../../../src/stamp';
import { hostilePhotos } from '../../photos/hostile-photos';

const colour = (width: number, height: number, background = '#8a5a2b') =>
  sharp({ create: { width, height, channels: 3, background } });

/** An engine that finds nothing: what is tested is how the photo is taken in. */
const noPrint: StampEngines = { print: { read: async () => [] } };

/** What reading says of a file: 'read', or the code of the problem. */
async function outcome(bytes: Uint8Array): Promise<string> {
  const opened = await decodePhoto(bytes, 'p1');
  if (!opened.ok) return opened.problem.code;
  const read = await readStamp(opened.value.image, 'p1', noPrint);
  return read.state === 'read' ? `read ${read.width} × ${read.height}` : read.problem.code;
}

describe('hostile photos each give a result or a clear problem', () => {
  it.each(hostilePhotos)('$name: $inNode', async ({ bytes, inNode }) => {
    expect(await outcome(await bytes())).toBe(inNode);
  });

  it('all black is read, and too weak to say that it shows no stamp', async () => {
    const opened = await decodePhoto(await colour(800, 600, '#000000').jpeg().toBuffer(), 'p1');
    const read = opened.ok ? await readStamp(opened.value.image, 'p1', noPrint) : null;
    expect(read).toMatchObject({ state: 'read', lines: [], tooWeak: true });
  });

  it('an animation is read by its first picture', async () => {
    const animated = await sharp(
      await Promise.all(['#802020', '#208020'].map((shade) => colour(300, 300, shade).png().toBuffer())),
      { join: { animated: true } },
    )
      .gif()
      .toBuffer();
    const opened = await decodePhoto(animated, 'p1');
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
    const opened = await decodePhoto(bytes, 'p1');
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
    const opened = await decodePhoto(await sharp(clear).png().toBuffer(), 'p1');
    expect(opened.ok && [...opened.value.image.data.subarray(0, 4)]).toEqual([255, 255, 255, 255]);
  });

  it('40 megapixels are shrunk while decoding, and the factor is kept', async () => {
    const opened = await decodePhoto(await colour(8000, 5000).jpeg().toBuffer(), 'p1');
    expect(opened.ok && [opened.value.image.width, opened.value.scale]).toEqual([3000, 8000 / 3000]);
  }, 30_000);
});
