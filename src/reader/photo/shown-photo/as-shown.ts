import type { NotShown } from '../../../problem';
import type { Size } from './box';
import { opacityOf } from './paints';
import { around } from './scrolled';

/** Below this a photo is faded by the page, as slides that wait their turn are. */
const leastOpacity = 0.95;
/** Larger pictures are not decoded a second time to learn their size. */
const mostPixels = 60_000_000;

/** Why a photo on the page is no picture of itself: faded, filtered, turned or mirrored; null when it is. */
export function whyAltered(element: Element): NotShown | null {
  if (opacityOf(element) < leastOpacity) return 'faded';
  for (let step: Element | null = element; step; step = around(step)) {
    const style = getComputedStyle(step);
    if (!/^(none|(drop-shadow\(.*\)\s*)*)$/.test(style.filter)) return 'filtered';
    if (isTurned(style)) return 'turned';
  }
  return null;
}

function isTurned({ transform, rotate, scale }: CSSStyleDeclaration): boolean {
  if (rotate && rotate !== 'none' && rotate !== '0deg') return true;
  if (scale?.includes('-')) return true;
  if (!transform || transform === 'none') return false;
  const { a, b, c, d, is2D } = new DOMMatrix(transform);
  return !is2D || a <= 0 || d <= 0 || Math.abs(b) > 0.001 || Math.abs(c) > 0.001;
}

/**
 * Pixels of the version that an image shows. Its natural size is not that: an address chosen for a dense screen counts
 * its pixels double. A picture that the script may not look into still tells its size.
 */
export async function pixelsOf(image: HTMLImageElement): Promise<Size> {
  const natural = { width: image.naturalWidth, height: image.naturalHeight };
  if (natural.width * natural.height > mostPixels) return natural;
  try {
    const bitmap = await createImageBitmap(image);
    const size = { width: bitmap.width, height: bitmap.height };
    bitmap.close();
    return size.width >= natural.width ? size : natural;
  } catch {
    return natural;
  }
}
