import { webAddress } from '../page/address';
import { attributeText, select, textContent } from '../page/dom';
import type { Slices } from '../page/slices';
import type { PhotoSet } from '../photos/photo-set';
import type { PageExtract } from '../types';
import { parseJsonLd } from './json-ld';
import type { JsonValue } from './tolerant-json';

type State = PageExtract['state'];

const mostCharacters = 6_000_000;
const mostNodes = 40_000;
const mostThings = 60;
const mostTexts = 40;
const mostFields = 60;
const leastText = 80;
const longestText = 20_000;
const longestValue = 300;
const address = /https?:(?:\\?\/){2}[^\s"'<>\\]+(?:\\\/[^\s"'<>\\]+)*\.(?:jpe?g|png|webp|avif)[^\s"'<>\\,)]*/gi;
const isPriced = /price|amount|preis|prix|prezzo|precio|prijs/i;

/**
 * What a page keeps for its own scripts: parsed and never run. Larger versions of photos that are shown join them;
 * things with a price and long texts are handed on, to be held against what the page shows. What nothing shown bears
 * out is no part of the listing, whatever site it is.
 */
export async function readInlineState(
  roots: readonly ParentNode[],
  base: string,
  photos: PhotoSet,
  slices: Slices,
): Promise<State> {
  const state: State = { things: [], texts: [] };
  let [characters, nodes] = [mostCharacters, mostNodes];
  for (const script of roots.flatMap((root) => select(root, 'script:not([src])'))) {
    await slices.rest();
    const text = textContent(script);
    characters -= text.length;
    if (characters < 0) break;
    for (const [found] of text.matchAll(address)) joinPhoto([found], base, photos);
    const data = /json/i.test(attributeText(script, 'type')) || /^\s*[\w.$ [\]"']{1,80}=\s*[[{]/.test(text);
    const stack: JsonValue[] = data ? (parseJsonLd(text)?.roots ?? []) : [];
    while (stack.length > 0 && nodes > 0) {
      const value = stack.pop();
      nodes -= 1;
      if ((nodes & 255) === 0) await slices.rest();
      if (typeof value === 'string' && value.length >= leastText && state.texts.length < mostTexts)
        state.texts.push(value.slice(0, longestText));
      if (typeof value !== 'object' || value === null) continue;
      if (
        !Array.isArray(value) &&
        state.things.length < mostThings &&
        Object.keys(value).some((key) => isPriced.test(key))
      )
        state.things.push(flat(value));
      // Beside each other in one thing: its sizes, whatever they are called.
      if (!Array.isArray(value)) joinPhoto(Object.values(value), base, photos);
      stack.push(...Object.values(value).slice(0, 500).reverse());
    }
  }
  return state;
}

/** Adds addresses of one photo to the one that is shown, if any of them is it; none makes a photo of its own. */
function joinPhoto(values: readonly JsonValue[], base: string, photos: PhotoSet): void {
  const images = values.slice(0, 40).flatMap((one) => {
    const text =
      typeof one === 'string' && /^\S+\.(?:jpe?g|png|webp|avif)\S*$/i.test(one) ? one.replaceAll('\\', '') : '';
    return webAddress(text, base) ?? [];
  });
  if (images.length < 12 && images.some((image) => photos.has(image)))
    photos.add(
      images.map((image) => ({ address: image, width: null, height: null })),
      'json-ld',
      '',
    );
}

/** The short values of a thing and of what it holds one level down, by their path. */
function flat(thing: { [key: string]: JsonValue }): Record<string, string> {
  const fields: [string, string][] = [];
  const add = (path: string, value: JsonValue, deeper: boolean) => {
    if (fields.length >= mostFields) return;
    if (typeof value === 'string' || typeof value === 'number')
      fields.push([path, String(value).slice(0, longestValue)]);
    else if (deeper && value && typeof value === 'object' && !Array.isArray(value))
      for (const key of Object.keys(value)) add(`${path}.${key}`, value[key] as JsonValue, false);
  };
  for (const key of Object.keys(thing)) add(key, thing[key] as JsonValue, true);
  return Object.fromEntries(fields);
}
