import { type Observation, observed } from '../observation-types';
import type { GreyImage, PixelImage } from '../types';

/** What an observer is handed beside the photo's own pixels. */
export interface ObserveContext {
  photoId: string;
  /** The photo in grey, at most 3000 pixels a side. */
  grey: GreyImage;
  /** Print that was read in the photo, line by line. */
  printed: readonly string[];
}

/** Measures one thing in a photo. Pure: the same pixels give the same observations. */
export interface Observer<What extends string = string> {
  id: string;
  /** All that it may see. */
  gives: readonly What[];
  measure(pixels: PixelImage, context: ObserveContext): Observation[];
}

type Measured<What> = Pick<Observation, 'value'> &
  Partial<Pick<Observation, 'uncertainty' | 'unit' | 'where'>> & { what: What };

/** Makes an observer of what it measures; the observations are named and signed here. */
export function defineObserver<const What extends string>(definition: {
  id: string;
  gives: readonly What[];
  measure(pixels: PixelImage, context: ObserveContext): Measured<NoInfer<What>>[];
}): Observer<What> {
  const { id, gives, measure } = definition;
  return { id, gives, measure: (pixels, context) => signed(context.photoId, measure(pixels, context)) };
}

function signed(photoId: string, measured: readonly Measured<string>[]): Observation[] {
  const counted = new Map<string, number>();
  return measured.map(({ what, value, uncertainty = null, unit = null, where = null }) => {
    const number = (counted.get(what) ?? 0) + 1;
    counted.set(what, number);
    return observed(photoId, what, value, { uncertainty, unit, where }, number);
  });
}
