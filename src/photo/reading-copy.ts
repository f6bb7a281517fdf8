import { greyOf } from './grey';
import { release } from './release';
import { resizePixels, sizeWithin } from './resize';
import type { GreyImage, PixelImage } from './types';

/** Longest side that is read; a stamp that fills a twentieth of it is still 150 px wide. */
const readSide = 3000;

/** A photo at the size at which it is read, in colour and grey, made once for all that look at it. */
export interface ReadingCopy {
  small: PixelImage;
  grey: GreyImage;
  /** Factors from its pixels to the photo's own. */
  across: number;
  down: number;
  letGo(): void;
}

export function readingCopy(photo: PixelImage): ReadingCopy {
  const { width, height } = sizeWithin(photo.width, photo.height, readSide);
  const small = width === photo.width ? photo : resizePixels(photo, width, height);
  const grey = greyOf(small);
  return {
    small,
    grey,
    across: photo.width / width,
    down: photo.height / height,
    letGo() {
      release(grey.data);
      if (small !== photo) release(small.data);
    },
  };
}
