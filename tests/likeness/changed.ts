import sharp, { type Sharp } from 'sharp';
import { greyOf, observe, type PixelImage } from '../../src/photo';
import { chance } from '../measure/random';

/** What is done to photos between one page and another. */
export const changes: Readonly<
  Record<string, (photo: Sharp, width: number, height: number, random: () => number) => Sharp>
> = {
  'a third of its size, JPEG of quality 70': (photo, width) =>
    photo.resize(Math.max(96, Math.round(width * 0.35))).jpeg({ quality: 70 }),
  'JPEG of quality 25': (photo) => photo.jpeg({ quality: 25 }),
  mirrored: (photo) => photo.flop().jpeg({ quality: 60 }),
  'cut by up to a tenth at each side': (photo, width, height, random) => {
    const [left, top, right, bottom] = Array.from({ length: 4 }, () => random() * 0.1) as [
      number,
      number,
      number,
      number,
    ];
    return photo
      .extract({
        left: Math.round(width * left),
        top: Math.round(height * top),
        width: Math.round(width * (1 - left - right)),
        height: Math.round(height * (1 - top - bottom)),
      })
      .jpeg({ quality: 60 });
  },
  'with a white border': (photo, width) => {
    const wide = Math.round(width * 0.06);
    return photo
      .extend({ top: wide, bottom: wide, left: wide, right: wide, background: 'white' })
      .jpeg({ quality: 70 });
  },
};

/** A photo changed as a name of `changes` says. */
export async function changed(photo: Buffer, how: keyof typeof changes, seed: number): Promise<Buffer> {
  const { width, height } = await sharp(photo).metadata();
  return (changes[how] as (typeof changes)[string])(
    sharp(photo).removeAlpha(),
    width,
    height,
    chance(seed).share,
  ).toBuffer();
}

/** What the observer says by which a photo is known again; null for one that shows next to nothing. */
export async function likenessIn(photo: Buffer): Promise<string | null> {
  const { data, info } = await sharp(photo).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  const pixels: PixelImage = { width: info.width, height: info.height, data: new Uint8ClampedArray(data) };
  const seen = observe(pixels, { photoId: 'p', grey: greyOf(pixels), printed: [] });
  const value = seen.find(({ what }) => what === 'likeness')?.value;
  return typeof value === 'string' ? value : null;
}
