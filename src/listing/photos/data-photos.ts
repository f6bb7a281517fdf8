import { webAddress } from '../page/address';
import { type Item, type ItemValue, isItem, textOf, valuesOf, wordsOf } from '../structured/item';
import type { HeadTags } from '../structured/open-graph';
import { pixels } from './image-sources';
import { isPlaceholder, namesNoPhoto } from './not-photo';
import type { PhotoSet, PhotoSource } from './photo-set';

function sourceOf(value: ItemValue, base: string): { source: PhotoSource; alt: string } | null {
  const address = isItem(value) ? (textOf(value, 'contentUrl', 'url') ?? value.id) : String(value);
  const absolute = webAddress(address, base);
  if (absolute === null || isPlaceholder(absolute) || namesNoPhoto(absolute, null)) return null;
  const size = isItem(value)
    ? { width: pixels(textOf(value, 'width')), height: pixels(textOf(value, 'height')) }
    : { width: null, height: null };
  return { source: { address: absolute, ...size }, alt: isItem(value) ? wordsOf(value, 'caption', 'name') : '' };
}

/** Adds the photos that a product's data names, in its order. */
export function addDataPhotos(product: Item, base: string, photos: PhotoSet): void {
  for (const value of valuesOf(product, 'image', 'photo', 'images')) {
    const found = sourceOf(value, base);
    if (found) photos.add([found.source], product.origin, found.alt === textOf(product, 'name') ? '' : found.alt);
  }
}

/** Adds the photos that the head names for sharing. */
export function addHeadPhotos(tags: HeadTags, base: string, photos: PhotoSet): void {
  const widths = tags.get('og:image:width') ?? [];
  const heights = tags.get('og:image:height') ?? [];
  const addresses = [
    ...(tags.get('og:image') ?? []),
    ...(tags.get('og:image:url') ?? []),
    ...(tags.get('og:image:secure_url') ?? []),
  ];
  for (const [index, value] of addresses.entries()) {
    const address = webAddress(value, base);
    if (address === null || isPlaceholder(address) || namesNoPhoto(address, null)) continue;
    photos.add(
      [{ address, width: pixels(widths[index]), height: pixels(heights[index]) }],
      'open-graph',
      tags.get('og:image:alt')?.[index] ?? '',
    );
  }
  const card = webAddress(tags.get('twitter:image')?.[0] ?? tags.get('twitter:image:src')?.[0], base);
  if (card !== null && !isPlaceholder(card) && !namesNoPhoto(card, null))
    photos.add([{ address: card, width: null, height: null }], 'meta', '');
}
