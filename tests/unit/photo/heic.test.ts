import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cutPhoto, decodePhoto } from '../../../src/cli/photo-file';
import { decodeHeic, type HeifLibrary, openPhoto, type PixelImage, readPixels } from '../../../src/photo';

/** Red grows to the right, green downwards, with a blue corner at the upper left: 320 × 240, drawn by us, packed by libheif 1.15 with x265. */
const drawn = new Uint8Array(readFileSync(new URL('../../photos/heic/drawn.heic', import.meta.url)));
const open = (bytes: Uint8Array<ArrayBuffer>, most = readPixels) => openPhoto(bytes, 'p', decodePhoto, most, cutPhoto);

async function pixelsOf(bytes: Uint8Array<ArrayBuffer>, most?: number): Promise<PixelImage> {
  const opened = await open(bytes, most);
  if (!opened.ok) throw new Error(opened.problem.code);
  return opened.value.image;
}

const at = ({ width, data }: PixelImage, x: number, y: number) => [
  ...data.subarray((y * width + x) * 4).subarray(0, 4),
];

/** The file with its box of bit depths made one that turns the picture by a quarter against the clock. Source: ISO/IEC 23008-12, irot. */
function turned(): Uint8Array<ArrayBuffer> {
  const bytes = drawn.slice();
  const box = Buffer.from(bytes).indexOf('pixi');
  bytes.set(Buffer.from('irot\u0001'), box);
  return bytes;
}

describe('a HEIC photo', () => {
  it('is read in its own size and colours', async () => {
    const image = await pixelsOf(drawn);
    expect([image.width, image.height]).toEqual([320, 240]);
    for (const [x, y] of [
      [80, 60],
      [160, 120],
      [300, 200],
    ] as const) {
      const wanted = [(x * 255) / 320, (y * 255) / 240, 60, 255];
      for (const [channel, value] of at(image, x, y).entries()) {
        expect(Math.abs(value - wanted[channel]!)).toBeLessThanOrEqual(6);
      }
    }
    expect(at(image, 10, 10)[2]).toBeGreaterThan(240);
  });

  it('is shrunk to what is read of a photo, and gives parts in its own pixels', async () => {
    const opened = await open(drawn, 8000);
    if (!opened.ok) throw new Error(opened.problem.code);
    expect([opened.value.image.width, opened.value.image.height]).toEqual([103, 77]);
    const [part] = await opened.value.cut!([{ x0: 200, y0: 100, x1: 240, y1: 120 }]);
    expect([part?.width, part?.height]).toEqual([40, 20]);
    expect(Math.abs(at(part!, 0, 0)[0]! - (200 * 255) / 320)).toBeLessThanOrEqual(6);
  });

  it('lies as its file says', async () => {
    const image = await pixelsOf(turned());
    expect([image.width, image.height]).toEqual([240, 320]);
    // Against the clock: what was at the right is at the top.
    expect(at(image, 10, 5)[0]).toBeGreaterThan(235);
    expect(at(image, 10, 310)[2]).toBeGreaterThan(240);
  });

  it('that ends too early says how to come by a JPEG', async () => {
    for (const share of [0.1, 0.3, 0.6, 0.95]) {
      const opened = await open(drawn.slice(0, Math.floor(drawn.length * share)));
      expect(opened).toMatchObject({ ok: false, problem: { code: 'photo-foreign-format', data: { format: 'HEIC' } } });
    }
  });

  it('that claims more pixels than are read is not decoded', async () => {
    const claiming = drawn.slice();
    const box = Buffer.from(claiming).indexOf('ispe');
    new DataView(claiming.buffer).setUint32(box + 8, 65_535);
    new DataView(claiming.buffer).setUint32(box + 12, 65_535);
    expect(await open(claiming)).toMatchObject({ ok: false, problem: { code: 'photo-too-large' } });
  });
});

describe('what a decoder gives of a file', () => {
  const library = (...pictures: { primary: boolean; pixel: number[] | null }[]): HeifLibrary => ({
    HeifDecoder: class {
      decode() {
        return pictures.map(({ primary, pixel }) => ({
          get_width: () => 1,
          get_height: () => 1,
          is_primary: () => primary,
          display(into: PixelImage, done: (image: PixelImage | null) => void) {
            if (pixel !== null) into.data.set(pixel);
            done(pixel === null ? null : into);
          },
        }));
      }
    },
  });
  const decoded = async (from: HeifLibrary) => {
    const image = await decodeHeic(drawn, from);
    return image && [...image.data];
  };

  it('is its main picture, and the first where none says so', async () => {
    const [one, other] = [
      [1, 2, 3, 255],
      [4, 5, 6, 255],
    ];
    expect(await decoded(library({ primary: false, pixel: one! }, { primary: true, pixel: other! }))).toEqual(other);
    expect(await decoded(library({ primary: false, pixel: one! }, { primary: false, pixel: other! }))).toEqual(one);
  });

  it('is as far see-through as it says: what draws a photo lays it on white', async () => {
    expect(await decoded(library({ primary: true, pixel: [0, 255, 100, 51] }))).toEqual([0, 255, 100, 51]);
  });

  it('is nothing where no picture is in it, or it cannot be decoded', async () => {
    expect(await decoded(library())).toBeNull();
    expect(await decoded(library({ primary: true, pixel: null }))).toBeNull();
  });
});
