import { type Observation, observed } from '../observation-types';
import type { PixelImage } from '../types';
import { ground } from './ground';
import { hash } from './hash';
import { likeness } from './likeness';
import { margin } from './margin';
import type { ObserveContext, Observer } from './observer';
import { screenBars } from './screen-bars';
import { sharpness } from './sharpness';
import { size } from './size';
import { watermark } from './watermark';

/** Every observer, in the order in which a photo’s observations stand. */
export const all = [size, sharpness, ground, margin, hash, likeness, screenBars, watermark] as const;
const observers: readonly Observer[] = all;
/** All that may be seen in a photo: by observers, by readers of other folders, and by hand. Each is named in every language. */
export type Seen =
  | (typeof all)[number]['gives'][number]
  | 'print'
  | 'stamp-line'
  | 'code'
  | 'shows-part'
  | 'taken-at'
  | 'camera';

/** Those that look at no pixel: size and print, as a case keeps them, are enough. */
export const observersOfPrint: readonly Observer[] = [size, screenBars, watermark];

/** Runs every observer on one photo. One that breaks has measured nothing, and says so; the others stand. */
export function observe(
  pixels: PixelImage,
  context: ObserveContext,
  by: readonly Observer[] = observers,
): Observation[] {
  return by.flatMap((observer) => {
    try {
      return observer.measure(pixels, context);
    } catch {
      return observer.gives.map((what) => observed(context.photoId, what, null));
    }
  });
}
