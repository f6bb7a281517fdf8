import { webAddress } from '../page/address';
import type { JsonValue } from '../structured/tolerant-json';
import type { PhotoSet, PhotoSource } from './photo-set';

/*
 * One photo in several sizes, as pages keep it for their scripts. A registry of shapes, not of sites: addresses beside
 * each other in one thing; things under the names of sizes; a list whose members differ in width and in nothing of their
 * shape. A gallery is none of them: its photos are as large as each other.
 */

type Thing = { [key: string]: JsonValue };

const mostSizes = 12;
const pictureAddress = /^\S+\.(?:jpe?g|png|webp|avif)\S*$/i;
/** Names of sizes, by which a thing holds the same photo several times. */
const sizeName =
  /^(?:thumb(?:nail)?|small|medium|large|big|full(?:_?size)?|original|preview|zoom|hi(?:gh)?_?res|x{0,3}[sl]|m|w?\d{2,4}(?:[x_]\d{2,4})?)(?:_?(?:url|image|src))?$/i;
const largeName = /^(?:large|big|full|original|zoom|hi(?:gh)?_?res|x{1,3}l)/i;

const isPicture = (value: JsonValue): value is string => typeof value === 'string' && pictureAddress.test(value);

const isThing = (value: JsonValue | undefined): value is Thing =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const sizeOf = (value: JsonValue | undefined): number | null => (Number(value) > 0 ? Number(value) : null);

/** The address that a value is, or holds alone, with the size that stands beside it. */
function sourceOf(value: JsonValue, name: string, base: string): PhotoSource | null {
  const texts = isThing(value) ? Object.values(value).filter(isPicture) : isPicture(value) ? [value] : [];
  const [text] = texts;
  const address = texts.length === 1 ? webAddress(text?.replaceAll('\\', ''), base) : null;
  if (address === null) return null;
  const { width, height } = isThing(value) ? value : {};
  return { address, width: sizeOf(width), height: sizeOf(height), zoom: largeName.test(name) };
}

const sourcesOf = (values: readonly [string, JsonValue][], base: string): PhotoSource[] =>
  values.slice(0, 40).flatMap(([name, value]) => sourceOf(value, name, base) ?? []);

/** Addresses beside each other in one thing: its sizes, whatever they are called. */
const besideEachOther = (thing: Thing, base: string): PhotoSource[] =>
  sourcesOf(
    Object.entries(thing).filter(([, value]) => typeof value === 'string'),
    base,
  );

const underSizeNames = (thing: Thing, base: string): PhotoSource[] =>
  sourcesOf(
    Object.entries(thing).filter(([name]) => sizeName.test(name)),
    base,
  );

/** So much may the shape of one photo differ from size to size, by rounding. */
const roundedShape = 0.03;

/** A list in which every member has a width of its own and all have one shape. */
function bySize(list: readonly JsonValue[], base: string): PhotoSource[] {
  if (list.length > mostSizes) return [];
  const sources = sourcesOf(
    list.map((value) => ['', value]),
    base,
  );
  const widths = new Set(sources.map(({ width }) => width));
  if (sources.length < list.length || widths.has(null) || widths.size < sources.length) return [];
  const shapes = sources.flatMap(({ width, height }) => (width && height ? [width / height] : []));
  return Math.max(...shapes) > Math.min(...shapes) * (1 + roundedShape) ? [] : sources;
}

/** Adds the sizes of one photo to the one that is shown, if any of them is it; none makes a photo of its own. */
export function joinStatePhotos(value: JsonValue, base: string, photos: PhotoSet): void {
  if (typeof value !== 'object' || value === null) return;
  const shapes = Array.isArray(value)
    ? [bySize(value, base)]
    : [besideEachOther(value, base), underSizeNames(value, base)];
  for (const sources of shapes)
    if (sources.length < mostSizes && sources.some(({ address }) => photos.has(address)))
      photos.add(sources, 'json-ld', '');
}
