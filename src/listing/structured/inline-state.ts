import type { PageExtract } from '../extract-types';
import { webAddress } from '../page/address';
import { attributeText, select, textContent } from '../page/dom';
import type { Slices } from '../page/slices';
import type { PhotoSet } from '../photos/photo-set';
import { joinStatePhotos } from '../photos/state-photos';
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
    for (const [found] of text.matchAll(address)) joinAddress(found, base, photos);
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
      joinStatePhotos(value, base, photos);
      stack.push(...Object.values(value).slice(0, 500).reverse());
    }
  }
  return state;
}

/** A larger version of a photo that is shown, by its address alone. */
function joinAddress(text: string, base: string, photos: PhotoSet): void {
  const image = webAddress(text.replaceAll('\\', ''), base);
  if (image !== null && photos.has(image)) photos.add([{ address: image, width: null, height: null }], 'json-ld', '');
}

/** "{name: 'Width', value: '30 cm'}": a label and its value, as a thing lists what it says of itself. */
function pairsIn(value: JsonValue): [string, JsonValue][] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return [];
  const name = value.name ?? value.label ?? value.title ?? value.key;
  const said = value.value ?? value.text ?? value.display_value ?? value.displayValue;
  return typeof name === 'string' && said !== undefined ? [[name.slice(0, 40), said]] : [];
}

/** The short values of a thing and of what it holds one level down, by their path. */
function flat(thing: { [key: string]: JsonValue }): Record<string, string> {
  const fields: [string, string][] = [];
  const add = (path: string, value: JsonValue, deeper: boolean) => {
    if (fields.length >= mostFields) return;
    if (typeof value === 'string' || typeof value === 'number')
      fields.push([path, String(value).slice(0, longestValue)]);
    else if (deeper && Array.isArray(value))
      for (const [name, said] of value.slice(0, mostFields).flatMap(pairsIn)) add(`${path}[${name}]`, said, false);
    else if (deeper && value && typeof value === 'object' && !Array.isArray(value))
      for (const key of Object.keys(value)) add(`${path}.${key}`, value[key] as JsonValue, false);
  };
  for (const key of Object.keys(thing)) add(key, thing[key] as JsonValue, true);
  return Object.fromEntries(fields);
}
