import sharp from 'sharp';
import type { PixelImage } from '../../../src/photo/types';
import type { BagLook, BagView } from './bag-scene';
import { bagScene } from './bag-scene';
import type { CameraPose } from './camera';
import type { Light } from './light';
import { develop, shadowOf } from './light';
import { randomFrom, seedOf } from './random';
import { expose } from './scene';
import type { StampScene } from './stamp-scene';
import { stampScene } from './stamp-scene';

/** One photograph of the demo marketplace. */
export interface PhotoSpec {
  file: string;
  subject: { kind: 'stamp'; stamp: StampScene } | { kind: 'bag'; look: BagLook; view: BagView };
  pose: CameraPose;
  light: Light;
  /** JPEG quality, 1 to 100. */
  quality: number;
}

export function photograph(spec: PhotoSpec): PixelImage {
  const seed = seedOf(spec.file) % 100_000;
  const random = randomFrom(seed);
  const { subject } = spec;
  const scene =
    subject.kind === 'stamp' ? stampScene(subject.stamp, seed, random) : bagScene(subject.look, subject.view, seed);
  return develop(expose(scene, spec.pose, shadowOf(spec.light)), spec.light, random);
}

export async function jpegOf(image: PixelImage, quality: number): Promise<Buffer> {
  const raw = { width: image.width, height: image.height, channels: 4 as const };
  return sharp(Buffer.from(image.data.buffer), { raw }).removeAlpha().jpeg({ quality, mozjpeg: true }).toBuffer();
}
