import { webAddress } from '../page/address';
import {
  attribute,
  attributeNames,
  attributeText,
  isElement,
  parentElement,
  property,
  selectSome,
  tagOf,
} from '../page/dom';
import type { Slices } from '../page/slices';
import { type JsonValue, readTolerantJson } from '../structured/tolerant-json';
import { isPlaceholder } from './not-photo';
import type { PhotoSource } from './photo-set';
import { parseSrcset } from './srcset';

const imageFile = /\.(jpe?g|png|webp|avif)(?:$|[?#!:])/i;
const imagePath = /(?:\/|\b)(?:image|img|photo|picture|media|cdn)[s\d]?\b/i;
const sourceAttribute =
  /^data-.*(src|srcset|original|lazy|zoom|large|full|hi-?res|image|img|photo|magnif|big|url|url-?\d*)/i;
const notSourceAttribute = /thumb|avatar|seller|logo|track|link|href|page|placeholder|fallback|error/i;

/** Pixels as a page or its data writes them; null for what is none, and for what no picture has. */
export const pixels = (said: unknown): number | null => {
  const value = Number.parseInt(String(said), 10);
  return value > 0 && value < 100_000 ? value : null;
};

const naturalSize = (element: Element): { width: number | null; height: number | null } => ({
  width: pixels(property(element, 'naturalWidth')),
  height: pixels(property(element, 'naturalHeight')),
});

/** Most attributes of one element that are gone through. */
const maxNames = 60;
const maxValue = 100_000;
const maxCandidates = 100;

/** Names of an element's attributes, as many as one element and the whole reading may cost. */
export const namesOf = (element: Element, slices: Slices): string[] => {
  const names = attributeNames(element);
  return names.slice(0, slices.takeOf(element, '', 'attributes', names.length, maxNames));
};

/** A value that may be long: data or a list of addresses. Empty where it is beyond all use: half of it would lie. */
export function longValue(element: Element, name: string, slices: Slices, most = maxValue): string {
  const value = attributeText(element, name, Number.POSITIVE_INFINITY);
  const kept = value.length > most ? 0 : value.length;
  return slices.takeOf(element, name, 'characters', value.length, kept) < value.length ? '' : value;
}

/** Sources of a `srcset`; a density counts times the width that the image is shown at. */
function fromSrcset(value: string, base: string, shownWidth: number | null): PhotoSource[] {
  return parseSrcset(value, maxCandidates).flatMap(({ address, width, density }) => {
    const absolute = webAddress(address, base);
    if (absolute === null || isPlaceholder(absolute)) return [];
    const known = width ?? (density !== null && shownWidth !== null ? Math.round(density * shownWidth) : null);
    return [{ address: absolute, width: known, height: null }];
  });
}

/** All that one image element, its `picture`, its link and its data attributes offer as addresses. */
export function sourcesOfImage(image: Element, base: string, slices: Slices): PhotoSource[] {
  const found: PhotoSource[] = [];
  const shownWidth = pixels(attribute(image, 'width'));
  const natural = naturalSize(image);
  const add = (address: string | null, size: { width: number | null; height: number | null }) => {
    const absolute = webAddress(address, base);
    if (absolute !== null && !isPlaceholder(absolute)) found.push({ address: absolute, ...size });
  };
  for (const name of namesOf(image, slices)) {
    if (name.endsWith('srcset')) found.push(...fromSrcset(longValue(image, name, slices), base, shownWidth));
    else if (name.startsWith('data-')) found.push(...fromAttribute(name, longValue(image, name, slices), base));
  }
  // After the attributes, which hold the larger picture where nothing tells the sizes.
  add(attribute(image, 'src'), natural);
  const parent = parentElement(image);
  if (parent && tagOf(parent) === 'picture')
    for (const source of selectSome(parent, 'source', 20))
      for (const name of ['srcset', 'data-srcset', 'data-lazy-srcset'])
        found.push(...fromSrcset(longValue(source, name, slices), base, shownWidth));
  found.push(...fromLink(image, base, slices));
  return found;
}

/** A link around the image to an image file, and its zoom attributes. */
function fromLink(image: Element, base: string, slices: Slices): PhotoSource[] {
  let step = parentElement(image);
  for (let level = 0; level < 4 && step; level += 1) {
    if (isElement(step) && tagOf(step) === 'a') return sourcesOfLink(step, base, slices);
    step = parentElement(step);
  }
  return [];
}

export function sourcesOfLink(link: Element, base: string, slices: Slices): PhotoSource[] {
  const href = webAddress(attribute(link, 'href'), base);
  const own = href !== null && imageFile.test(href) ? [{ address: href, width: null, height: null }] : [];
  const size = {
    width: pixels(attribute(link, 'data-pswp-width') ?? attribute(link, 'data-width')),
    height: null,
  };
  const sized = own.map((source) => ({ ...source, width: size.width, zoom: true }));
  return [
    ...sized,
    ...namesOf(link, slices).flatMap((name) =>
      name.startsWith('data-') ? fromAttribute(name, longValue(link, name, slices), base) : [],
    ),
  ];
}

/** Addresses of one photo in a data attribute: plain, a srcset, or JSON of sizes, which is parsed and never run. */
export function fromAttribute(name: string, value: string, base: string): PhotoSource[] {
  const text = value.trim();
  if (text.length < 5) return [];
  if (text.startsWith('{') || text.startsWith('[')) return addressesInJson(text, base).sizes;
  if (!sourceAttribute.test(name) || notSourceAttribute.test(name)) return [];
  if (/\s\d+(\.\d+)?[wx](,|$)/.test(text)) return fromSrcset(text, base, null);
  if (
    /\s/.test(text) ||
    !(
      imageFile.test(text) ||
      (/^(https?:)?\//.test(text) && (imagePath.test(text) || /src|image|img|photo/i.test(name)))
    )
  )
    return [];
  const address = webAddress(text, base);
  if (address === null || isPlaceholder(address)) return [];
  return [{ address, width: null, height: null, zoom: /zoom|large|full|hi-?res|original|big|magnif/i.test(name) }];
}

const maxJsonParts = 500;

/** Image addresses in a JSON value. `sizes` are keys with `[width, height]`: versions of one photo. `values` are apart. */
export function addressesInJson(text: string, base: string): { sizes: PhotoSource[]; values: PhotoSource[] } {
  const found = { sizes: [] as PhotoSource[], values: [] as PhotoSource[] };
  const stack: JsonValue[] = readTolerantJson(text, 16).reverse();
  for (let parts = 0; parts < maxJsonParts; parts += 1) {
    const value = stack.pop();
    if (typeof value === 'string') addJsonAddress(value, null, base, found.values);
    else if (value && typeof value === 'object')
      // A list is gone through by its numbers.
      for (const key of Object.keys(value).slice(0, 100).reverse()) {
        const inner = (value as Record<string, JsonValue>)[key];
        const width = Array.isArray(inner) && typeof inner[0] === 'number' ? inner[0] : null;
        if (imageFile.test(key)) addJsonAddress(key, width, base, found.sizes);
        else if (inner !== undefined && !/thumb|avatar|logo/i.test(key)) stack.push(inner);
      }
  }
  return found;
}

function addJsonAddress(text: string, width: number | null, base: string, found: PhotoSource[]): void {
  const address = imageFile.test(text) ? webAddress(text, base) : null;
  if (address !== null && !isPlaceholder(address)) found.push({ address, width, height: null });
}
