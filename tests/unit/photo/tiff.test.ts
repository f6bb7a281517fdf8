import sharp, { type TiffOptions } from 'sharp';
import { describe, expect, it } from 'vitest';
import { cutPhoto, decodePhoto } from '../../../src/cli/photo-file';
import { openPhoto, type PixelImage, readImageHeader, readPixels } from '../../../src/photo';

const [width, height] = [301, 203];

/** A picture in which no two rows or columns are alike. */
const drawn = (channels: 3 | 4 = 3) => {
  const data = Buffer.alloc(width * height * channels);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = (y * width + x) * channels;
      data.set([(x * 255) / width, (y * 255) / height, 40 + ((x * y) % 97)].map(Math.round), at);
      if (channels === 4) data[at + 3] = (x + y) % 256;
    }
  }
  return sharp(data, { raw: { width, height, channels } });
};

const file = async (options: TiffOptions, of = drawn()) => new Uint8Array(await of.tiff(options).toBuffer());
const open = (bytes: Uint8Array<ArrayBuffer>, most = readPixels) => openPhoto(bytes, 'p', decodePhoto, most, cutPhoto);

async function pixelsOf(bytes: Uint8Array<ArrayBuffer>, most = readPixels): Promise<PixelImage> {
  const opened = await open(bytes, most);
  if (!opened.ok) throw new Error(opened.problem.code);
  return opened.value.image;
}

/** The largest difference from what the image library's own decoder makes of the file. */
async function differenceFromLibrary(bytes: Uint8Array<ArrayBuffer>): Promise<number> {
  const own = await pixelsOf(bytes);
  const { data, info } = await sharp(bytes)
    .rotate()
    .toColourspace('srgb')
    .flatten({ background: '#ffffff' })
    .removeAlpha()
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
  expect([own.width, own.height]).toEqual([info.width, info.height]);
  let most = 0;
  for (let pixel = 0; pixel < own.width * own.height; pixel++) {
    for (let channel = 0; channel < 3; channel++) {
      most = Math.max(most, Math.abs(own.data[pixel * 4 + channel]! - data[pixel * 3 + channel]!));
    }
  }
  return most;
}

/** A TIFF without compression, big-endian, of these fields; the samples stand at its end, one strip a plane. */
function bigEndian(fields: readonly (readonly [tag: number, values: number[]])[], planes: readonly number[][]) {
  const strips: [number, number[]][] = [
    [273, planes.map(() => 0)],
    [279, planes.map((plane) => plane.length)],
  ];
  const all = [...fields, ...strips].sort((a, b) => a[0] - b[0]);
  const extra = all.map(([, values]) => (values.length > 1 ? values.length * 4 : 0));
  const after = 8 + 2 + all.length * 12 + 4;
  const end = after + extra.reduce((sum, one) => sum + one, 0);
  const bytes = new Uint8Array(end + planes.flat().length);
  const view = new DataView(bytes.buffer);
  bytes.set([0x4d, 0x4d, 0, 42, 0, 0, 0, 8]);
  view.setUint16(8, all.length);
  let [place, pixels] = [after, end];
  all.forEach(([tag, values], entry) => {
    const at = 10 + entry * 12;
    const told =
      tag === 273
        ? planes.map((plane) => {
            pixels += plane.length;
            return pixels - plane.length;
          })
        : values;
    view.setUint16(at, tag);
    view.setUint16(at + 2, 4);
    view.setUint32(at + 4, told.length);
    view.setUint32(at + 8, told.length > 1 ? place : told[0]!);
    if (told.length > 1) for (const [index, value] of told.entries()) view.setUint32(place + index * 4, value);
    place += extra[entry]!;
  });
  bytes.set(planes.flat(), end);
  return bytes;
}

describe('a TIFF', () => {
  it.each<[string, TiffOptions, number]>([
    ['not packed', { compression: 'none' }, 0],
    ['LZW', { compression: 'lzw', predictor: 'none' }, 0],
    ['LZW of differences', { compression: 'lzw', predictor: 'horizontal' }, 0],
    ['deflate', { compression: 'deflate', predictor: 'none' }, 0],
    ['deflate of differences', { compression: 'deflate', predictor: 'horizontal' }, 0],
    ['PackBits', { compression: 'packbits' }, 0],
    ['LZW in tiles', { compression: 'lzw', tile: true, tileWidth: 128, tileHeight: 64 }, 0],
    ['deflate in tiles', { compression: 'deflate', tile: true, tileWidth: 64, tileHeight: 128 }, 0],
    ['JPEG in strips', { compression: 'jpeg', quality: 90 }, 3],
    ['JPEG in tiles', { compression: 'jpeg', quality: 90, tile: true, tileWidth: 128, tileHeight: 128 }, 3],
  ])('is read as the image library reads it: %s', async (_, options, most) => {
    expect(await differenceFromLibrary(await file(options))).toBeLessThanOrEqual(most);
  });

  it.each<[string, Promise<Uint8Array<ArrayBuffer>>, number]>([
    ['grey', file({ compression: 'lzw' }, drawn().greyscale()), 0],
    ['grey JPEG', file({ compression: 'jpeg' }, drawn().greyscale()), 2],
    ['16 bits a sample', file({ compression: 'deflate', predictor: 'horizontal' }, drawn().toColourspace('rgb16')), 1],
    ['see-through', file({ compression: 'lzw' }, drawn(4)), 2],
    ['black and white', file({ compression: 'none', bitdepth: 1 }, drawn().greyscale()), 0],
    ['two bits', file({ compression: 'none', bitdepth: 2 }, drawn().greyscale()), 0],
    ['four bits', file({ compression: 'none', bitdepth: 4 }, drawn().greyscale()), 0],
  ])('is read as the image library reads it: %s', async (_, bytes, most) => {
    expect(await differenceFromLibrary(await bytes)).toBeLessThanOrEqual(most);
  });

  it.each([1, 2, 3, 4, 5, 6, 7, 8])('lies as its orientation says: %i', async (orientation) => {
    expect(await differenceFromLibrary(await file({ compression: 'lzw' }, drawn().withMetadata({ orientation })))).toBe(
      0,
    );
  });

  it('is told apart by its first picture’s layout: palette, planes of their own, ink, white as zero', async () => {
    const side: [number, number[]][] = [
      [256, [24]],
      [257, [24]],
      [258, [8]],
    ];
    const of = (...values: number[]) => Array.from({ length: 24 * 24 }, () => values).flat();
    const first = async (bytes: Uint8Array<ArrayBuffer>) => [...(await pixelsOf(bytes)).data.subarray(0, 4)];
    const colours = Array.from({ length: 768 }, (_, at) => (at === 5 ? 65535 : at === 256 + 5 ? 257 * 100 : 0));
    expect(await first(bigEndian([...side, [262, [3]], [320, colours]], [of(5)]))).toEqual([255, 100, 0, 255]);
    const planes = [...side, [262, [2]], [277, [3]], [284, [2]]] as [number, number[]][];
    expect(await first(bigEndian(planes, [of(10), of(20), of(30)]))).toEqual([10, 20, 30, 255]);
    const ink = [...side, [262, [5]], [277, [4]]] as [number, number[]][];
    expect(await first(bigEndian(ink, [of(0, 255, 51, 0)]))).toEqual([255, 0, 204, 255]);
    expect(await first(bigEndian([...side, [262, [0]]], [of(55)]))).toEqual([200, 200, 200, 255]);
  });

  it('is shrunk to what is read of a photo, and gives parts in its own pixels', async () => {
    const bytes = await file({ compression: 'lzw' });
    const whole = await pixelsOf(bytes);
    const small = await pixelsOf(bytes, 8000);
    expect([small.width, small.height]).toEqual([101, 68]);
    const mean = [0, 1, 2].flatMap((row) => [0, 1, 2].map((column) => whole.data[(row * width + column) * 4 + 2]!));
    expect(small.data[2]).toBe(Math.round(mean.reduce((sum, one) => sum + one, 0) / 9));
    const opened = await open(bytes, 8000);
    if (!opened.ok) throw new Error('not opened');
    const [part, none] = await opened.value.cut!([
      { x0: 100, y0: 50, x1: 130, y1: 60 },
      { x0: 400, y0: 50, x1: 430, y1: 60 },
    ]);
    expect([part?.width, part?.height, none]).toEqual([30, 10, null]);
    expect([...part!.data.subarray(0, 3)]).toEqual([...whole.data.subarray((50 * width + 100) * 4).subarray(0, 3)]);
  });
});

describe('a TIFF that something is wrong with', () => {
  const problemOf = async (bytes: Uint8Array<ArrayBuffer>) => {
    const opened = await open(bytes);
    return opened.ok ? 'read' : opened.problem.code;
  };

  it.each<TiffOptions>([
    { compression: 'none' },
    { compression: 'lzw' },
    { compression: 'deflate' },
    { compression: 'packbits' },
    { compression: 'jpeg' },
  ])('says that it ends too early, wherever it is cut: $compression', async (options) => {
    const whole = await file(options);
    for (const share of [0.1, 0.5, 0.9, 0.999]) {
      expect(['photo-truncated', 'photo-damaged']).toContain(
        await problemOf(whole.slice(0, Math.floor(whole.length * share))),
      );
    }
  });

  it.each<[string, number[], string]>([
    ['65,535 × 65,535', [65535, 65535], 'photo-too-large'],
    ['4,294,967,295 × 24', [0xffffffff, 24], 'photo-too-large'],
    ['no width', [0, 24], 'photo-no-size'],
    ['more rows than it holds', [24, 2400], 'photo-damaged'],
  ])('says so before anything is made of it: %s', async (_, [across, down], code) => {
    const bytes = bigEndian(
      [
        [256, [across!]],
        [257, [down!]],
        [258, [8]],
        [262, [1]],
      ],
      [Array.from({ length: 24 * 24 }, () => 0)],
    );
    expect(await problemOf(bytes)).toBe(code);
  });

  it('is damaged where its packed bytes are none, and never read as something', async () => {
    for (const compression of ['lzw', 'deflate', 'packbits', 'jpeg'] as const) {
      const bytes = await file({ compression, predictor: 'none' });
      const spoilt = bytes.slice();
      spoilt.fill(0x80, 8, bytes.length >> 1);
      expect(await problemOf(spoilt)).toBe('photo-damaged');
    }
  });

  it('is named where it is a raw file or of a form that is not read', () => {
    const side: [number, number[]][] = [
      [256, [240]],
      [257, [240]],
      [258, [8]],
      [262, [1]],
    ];
    const pixels = [Array.from({ length: 10 }, () => 0)];
    for (const odd of [
      [254, [1]],
      [259, [6]],
      [339, [3]],
      [262, [32803]],
    ] as [number, number[]][]) {
      const fields = [...side.filter(([tag]) => tag !== odd[0]), odd];
      const header = readImageHeader(bigEndian(fields, pixels), 'p');
      expect(header).toMatchObject({ ok: false, problem: { code: 'photo-foreign-format', data: { format: 'TIFF' } } });
    }
  });
});
