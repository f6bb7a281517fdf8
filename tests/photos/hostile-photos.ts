import sharp from 'sharp';

/** A photo that something is wrong with, and what reading it says in Node and in the extension. */
export interface HostilePhoto {
  name: string;
  bytes(): Promise<Uint8Array>;
  /** 'read WIDTH × HEIGHT', or the code of the problem. */
  inNode: string;
  inExtension: string;
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

const read = (size: string) => ({ inNode: `read ${size}`, inExtension: `read ${size}` });
const refused = (inNode: string, inExtension = inNode) => ({ inNode, inExtension });

export const hostilePhotos: readonly HostilePhoto[] = [
  { name: 'nothing at all', bytes: async () => new Uint8Array(0), ...refused('photo-empty', 'not-a-photo') },
  {
    name: 'words that begin like a picture',
    bytes: async () => Buffer.from('GIF8 but not really, only words'),
    ...refused('photo-not-image', 'not-a-photo'),
  },
  { name: '1 × 1', bytes: () => colour(1, 1).png().toBuffer(), ...refused('photo-too-small') },
  {
    name: '20,000 × 20',
    bytes: () => colour(20_000, 20).png().toBuffer(),
    ...refused('photo-too-large', 'photo-too-small'),
  },
  {
    name: '20,000 × 30',
    bytes: () => colour(20_000, 30).png().toBuffer(),
    inNode: 'photo-too-large',
    inExtension: 'read 20000 × 30',
  },
  { name: 'all black', bytes: () => colour(800, 600, '#000000').jpeg().toBuffer(), ...read('800 × 600') },
  {
    name: 'an animation',
    bytes: async () =>
      sharp(await Promise.all(['#802020', '#208020'].map((shade) => colour(300, 300, shade).png().toBuffer())), {
        join: { animated: true },
      })
        .gif()
        .toBuffer(),
    ...read('300 × 300'),
  },
  { name: 'a CMYK JPEG', bytes: () => colour(320, 240).toColourspace('cmyk').jpeg().toBuffer(), ...read('320 × 240') },
  {
    name: 'a 16-bit PNG',
    bytes: () => colour(320, 240, '#808080').toColourspace('rgb16').png().toBuffer(),
    ...read('320 × 240'),
  },
  {
    name: 'a JPEG that ends too early',
    bytes: async () => {
      const whole = await speckled();
      return whole.subarray(0, whole.length >> 1);
    },
    ...refused('photo-damaged'),
  },
  {
    name: 'a PNG that ends too early',
    bytes: async () => {
      const whole = await sharp(await speckled())
        .png()
        .toBuffer();
      return whole.subarray(0, whole.length >> 1);
    },
    ...refused('photo-damaged'),
  },
  { name: 'AVIF', bytes: () => colour(320, 240).avif({ effort: 0 }).toBuffer(), ...read('320 × 240') },
  {
    name: 'a JPEG that lies on its side (EXIF orientation 6)',
    bytes: () => colour(320, 240).withMetadata({ orientation: 6 }).jpeg().toBuffer(),
    ...read('240 × 320'),
  },
];
