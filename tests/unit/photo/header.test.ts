import { encode as encodeBmp } from 'bmp-ts';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { maxPixels, maxSide, readImageHeader } from '../../../src/photo';
import { problemInEnglish } from '../../said';

const blank = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: '#a06030' } });

const problemOf = (bytes: Uint8Array): string => {
  const read = readImageHeader(bytes, 'photo 1');
  return read.ok ? `read as ${read.value.type}` : read.problem.code;
};

/** A PNG that claims a size and holds nothing else: what a small file can pretend. */
function claimingPng(width: number, height: number): Uint8Array {
  const bytes = new Uint8Array(33);
  bytes.set([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52]);
  const view = new DataView(bytes.buffer);
  view.setUint32(16, width);
  view.setUint32(20, height);
  return bytes;
}

describe('an image says its type and size before it is decoded', () => {
  it.each([
    ['jpeg', () => blank(321, 123).jpeg()],
    ['jpeg', () => blank(321, 123).jpeg({ progressive: true })],
    ['jpeg', () => blank(321, 123).toColourspace('cmyk').jpeg()],
    ['png', () => blank(321, 123).png()],
    ['png', () => blank(321, 123).toColourspace('rgb16').png()],
    ['gif', () => blank(321, 123).gif()],
    ['webp', () => blank(321, 123).webp({ quality: 60 })],
    ['webp', () => blank(321, 123).webp({ lossless: true })],
    ['webp', () => blank(321, 123).ensureAlpha(0.5).webp()],
    ['avif', () => blank(321, 123).avif({ effort: 0 })],
  ] as const)('%s', async (type, make) => {
    const read = readImageHeader(await make().toBuffer(), 'photo 1');
    expect(read).toEqual({ ok: true, value: { type, mime: `image/${type}`, width: 321, height: 123 } });
  });

  it('finds the size of a JPEG behind a long EXIF block', async () => {
    const bytes = await blank(40, 30)
      .withExif({ IFD0: { ImageDescription: 'x'.repeat(20_000) } })
      .jpeg()
      .toBuffer();
    expect(readImageHeader(bytes, 'photo 1')).toMatchObject({ ok: true, value: { width: 40, height: 30 } });
  });
});

describe('a BMP says its size in each of its headers', () => {
  const encoded = () => encodeBmp({ data: Buffer.alloc(321 * 123 * 4), width: 321, height: 123, bitPP: 24 }).data;
  const size = { ok: true, value: { type: 'bmp', mime: 'image/bmp', width: 321, height: 123 } };

  it('from the top down as from the bottom up', () => {
    const bytes = encoded();
    for (const height of [123, -123]) {
      bytes.writeInt32LE(height, 22);
      expect(readImageHeader(bytes, 'photo 1')).toEqual(size);
    }
  });

  it('with the oldest header, of two bytes a side', () => {
    const bytes = encoded();
    bytes.writeUInt32LE(12, 14);
    bytes.writeUInt16LE(321, 18);
    bytes.writeUInt16LE(123, 20);
    expect(readImageHeader(bytes, 'photo 1')).toEqual(size);
  });

  it('and is none with a header of another length, or a width below nothing', () => {
    const bytes = encoded();
    bytes.writeInt32LE(-321, 18);
    expect(problemOf(bytes)).toBe('photo-no-size');
    bytes.writeUInt32LE(41, 14);
    expect(problemOf(bytes)).toBe('photo-not-image');
  });
});

describe('what must not be decoded is refused, with what the user can do', () => {
  it('refuses a drawing, which can hold programs', () => {
    const svg = Buffer.from('<?xml version="1.0"?>\n<!-- a --><svg xmlns="http://www.w3.org/2000/svg"></svg>');
    expect(problemOf(svg)).toBe('photo-svg');
  });

  it('refuses a page sent in place of a photo, and bytes of nothing known', () => {
    expect(problemOf(Buffer.from('<!doctype html><title>404</title>'))).toBe('photo-not-image');
    expect(problemOf(Uint8Array.from({ length: 400 }, (_, at) => (at * 37) % 251))).toBe('photo-not-image');
  });

  it('refuses an empty file', () => {
    expect(problemOf(new Uint8Array(0))).toBe('photo-empty');
  });

  it('refuses a size beyond the limit before it costs memory', () => {
    expect(problemOf(claimingPng(50_000, 50_000))).toBe('photo-too-large');
    expect(problemOf(claimingPng(maxSide + 1, 20))).toBe('photo-too-large');
    expect(problemOf(claimingPng(maxSide, 20))).toBe('read as png');
    expect(problemOf(claimingPng(10_000, maxPixels / 10_000 + 1))).toBe('photo-too-large');
    expect(problemOf(claimingPng(8000, 5000))).toBe('read as png');
  });

  it('knows the size of an AVIF, deep as it stands, so that an enormous one is not decoded', async () => {
    const bytes = await blank(321, 123).avif({ effort: 0 }).toBuffer();
    const at = bytes.indexOf('ispe');
    bytes.writeUInt32BE(100_000, at + 8);
    expect(problemOf(bytes)).toBe('photo-too-large');
    expect(problemOf(bytes.subarray(0, at))).toBe('photo-truncated');
  });

  it('never throws, wherever a photo is cut off', async () => {
    for (const format of ['jpeg', 'png', 'gif', 'webp', 'avif'] as const) {
      const whole = await blank(321, 123).toFormat(format).toBuffer();
      for (let length = 0; length < Math.min(whole.length, 700); length++)
        expect(problemOf(whole.subarray(0, length))).toMatch(/^photo-(empty|truncated|not-image)$|^read as /);
    }
  });

  it('says that a file ends too early, at every length', async () => {
    const bytes = await blank(64, 48).jpeg().toBuffer();
    const frame = bytes.indexOf(Buffer.from([0xff, 0xc0]));
    expect(frame).toBeGreaterThan(100);
    for (let length = 3; length <= frame + 9; length += 7)
      expect(problemOf(bytes.subarray(0, length))).toBe('photo-truncated');
    expect(problemOf((await blank(64, 48).webp().toBuffer()).subarray(0, 20))).toBe('photo-truncated');
    expect(problemOf((await blank(64, 48).avif({ effort: 0 }).toBuffer()).subarray(0, 60))).toBe('photo-truncated');
  });

  it('names the photo and a remedy', () => {
    const read = readImageHeader(Buffer.from('hello'), 'photo 3');
    expect(read.ok ? null : problemInEnglish(read.problem)).toMatchObject({
      where: 'photo 3',
      remedy: expect.stringContaining('JPEG'),
    });
  });
});
