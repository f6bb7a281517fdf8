import { readFile } from 'node:fs/promises';
import { encode as encodeBmp } from 'bmp-ts';
import sharp from 'sharp';

/** A photo that something is wrong with, and what reading it says, in Node and in the extension alike. */
export interface HostilePhoto {
  name: string;
  bytes(): Promise<Uint8Array>;
  /** 'read WIDTH × HEIGHT', or the code of the problem. */
  outcome: string;
}

const colour = (width: number, height: number, background = '#8a5a2b') =>
  sharp({ create: { width, height, channels: 3, background } });

/** A JPEG that holds something everywhere, so that half of its bytes is half of the picture. */
const speckled = () =>
  sharp(Buffer.from(Uint8Array.from({ length: 300 * 300 * 3 }, (_, at) => (at * 7919) % 256)), {
    raw: { width: 300, height: 300, channels: 3 },
  })
    .jpeg()
    .toBuffer();

/** A file of these bytes and then nothing but zeros. */
const opening = (text: string) => async () =>
  Uint8Array.from(text.padEnd(400, '\0'), (character) => character.charCodeAt(0));

/** What a small file can claim to hold. */
async function claiming(width: number, height: number): Promise<Uint8Array> {
  const bytes = await colour(32, 32).png().toBuffer();
  bytes.writeUInt32BE(width, 16);
  bytes.writeUInt32BE(height, 20);
  return bytes;
}

/** A picture without compression, 24 bits a pixel, or 32 with a fourth byte that nobody fills. */
const bmp = (bitPP: 24 | 32) => async () => {
  const { data, info } = await colour(320, 240).ensureAlpha(0).raw().toBuffer({ resolveWithObject: true });
  // The encoder takes alpha, blue, green, red.
  const reversed = Buffer.from(data).swap32();
  return encodeBmp({ data: reversed, width: info.width, height: info.height, bitPP }).data;
};

const jpeg = () => colour(320, 240).jpeg().toBuffer();

export const hostilePhotos: readonly HostilePhoto[] = [
  { name: 'nothing at all', bytes: async () => new Uint8Array(0), outcome: 'photo-empty' },
  {
    name: 'words that begin like a picture',
    bytes: async () => Buffer.from('GIF8 but not really, only words'),
    outcome: 'photo-not-image',
  },
  { name: '1 × 1', bytes: () => colour(1, 1).png().toBuffer(), outcome: 'photo-too-small' },
  {
    name: '20,000 × 20',
    bytes: () => colour(20_000, 20).png().toBuffer(),
    outcome: 'photo-too-small',
  },
  {
    name: '20,000 × 30',
    bytes: () => colour(20_000, 30).png().toBuffer(),
    outcome: 'read 20000 × 30',
  },
  { name: '40,000 × 30', bytes: () => claiming(40_000, 30), outcome: 'photo-too-large' },
  { name: 'a PNG that claims 2,500 million pixels', bytes: () => claiming(50_000, 50_000), outcome: 'photo-too-large' },
  { name: 'a PNG that claims no width', bytes: () => claiming(0, 300), outcome: 'photo-no-size' },
  { name: 'a PNG that claims more than it holds', bytes: () => claiming(3000, 3000), outcome: 'photo-damaged' },
  { name: 'all black', bytes: () => colour(800, 600, '#000000').jpeg().toBuffer(), outcome: 'read 800 × 600' },
  {
    name: 'an animation',
    bytes: async () =>
      sharp(await Promise.all(['#802020', '#208020'].map((shade) => colour(300, 300, shade).png().toBuffer())), {
        join: { animated: true },
      })
        .gif()
        .toBuffer(),
    outcome: 'read 300 × 300',
  },
  {
    name: 'a CMYK JPEG',
    bytes: () => colour(320, 240).toColourspace('cmyk').jpeg().toBuffer(),
    outcome: 'read 320 × 240',
  },
  {
    name: 'a 16-bit PNG',
    bytes: () => colour(320, 240, '#808080').toColourspace('rgb16').png().toBuffer(),
    outcome: 'read 320 × 240',
  },
  {
    name: 'a JPEG that ends too early',
    bytes: async () => {
      const whole = await speckled();
      return whole.subarray(0, whole.length >> 1);
    },
    outcome: 'photo-damaged',
  },
  {
    name: 'a PNG that ends too early',
    bytes: async () => {
      const whole = await sharp(await speckled())
        .png()
        .toBuffer();
      return whole.subarray(0, whole.length >> 1);
    },
    outcome: 'photo-damaged',
  },
  { name: 'AVIF', bytes: () => colour(320, 240).avif({ effort: 0 }).toBuffer(), outcome: 'read 320 × 240' },
  {
    name: 'a JPEG that lies on its side (EXIF orientation 6)',
    bytes: () => colour(320, 240).withMetadata({ orientation: 6 }).jpeg().toBuffer(),
    outcome: 'read 240 × 320',
  },
  { name: 'BMP', bytes: bmp(24), outcome: 'read 320 × 240' },
  { name: 'BMP with an empty fourth channel', bytes: bmp(32), outcome: 'read 320 × 240' },
  { name: 'words that begin like a BMP', bytes: opening('BMW brochure'), outcome: 'photo-not-image' },
  {
    name: 'a drawing',
    bytes: async () =>
      Buffer.from('<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg" width="90" height="90"/>'),
    outcome: 'photo-svg',
  },
  ...(['lzw', 'deflate', 'jpeg'] as const).map((compression) => ({
    name: `TIFF, ${compression}`,
    bytes: () => colour(320, 240).tiff({ compression }).toBuffer(),
    outcome: 'read 320 × 240',
  })),
  {
    name: 'a TIFF that lies on its side',
    bytes: () => colour(320, 240).withMetadata({ orientation: 8 }).tiff().toBuffer(),
    outcome: 'read 240 × 320',
  },
  {
    name: 'a TIFF that claims more than it holds',
    bytes: () => tiffClaiming(640, 480),
    outcome: 'photo-damaged',
  },
  { name: 'a TIFF of 65,535 × 65,535', bytes: () => tiffClaiming(65_535, 65_535), outcome: 'photo-too-large' },
  { name: 'HEIC', bytes: () => readFile(new URL('heic/drawn.heic', import.meta.url)), outcome: 'read 320 × 240' },
  {
    name: 'a HEIC that ends too early',
    bytes: async () => (await readFile(new URL('heic/drawn.heic', import.meta.url))).subarray(0, 4000),
    outcome: 'photo-foreign-format',
  },
  {
    name: 'a HEIC of nothing but its head',
    bytes: opening('\0\0\0\x18ftypheic\0\0\0\0mif1heic'),
    outcome: 'photo-foreign-format',
  },
  { name: 'a JPEG of two bytes', bytes: async () => (await jpeg()).subarray(0, 2), outcome: 'photo-not-image' },
  { name: 'a JPEG without its size', bytes: async () => (await jpeg()).subarray(0, 60), outcome: 'photo-truncated' },
  { name: 'a JPEG without its picture', bytes: async () => withoutPicture(await jpeg()), outcome: 'photo-damaged' },
];

/** Up to the end of the frame header (SOF0). */
const withoutPicture = (whole: Buffer) => whole.subarray(0, whole.indexOf(Buffer.from([0xff, 0xc0])) + 19);

/** A TIFF without compression that holds 16 rows of 32 pixels and claims a size. */
async function tiffClaiming(width: number, height: number): Promise<Uint8Array> {
  const bytes = new Uint8Array(await colour(32, 16).greyscale().tiff({ compression: 'none' }).toBuffer());
  const view = new DataView(bytes.buffer);
  const directory = view.getUint32(4, true);
  for (let entry = 0; entry < view.getUint16(directory, true); entry++) {
    const at = directory + 2 + 12 * entry;
    const claimed = { 256: width, 257: height }[view.getUint16(at, true)];
    if (claimed === undefined) continue;
    view.setUint16(at + 2, 4, true);
    view.setUint32(at + 8, claimed, true);
  }
  return bytes;
}
