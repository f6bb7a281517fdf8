import { attribute, attributeText, selectSome } from '../page/dom';

/** What a page's head says of itself, by name in small letters ("og:title", "description"), in order. */
export type HeadTags = Map<string, string[]>;

const maxTags = 500;
const maxLength = 20_000;

/** Reads `<meta>` under `property`, `name` or `itemprop` alike, since pages mix them up; empty values are left out. */
export function readHeadTags(document: Document): HeadTags {
  const tags: HeadTags = new Map();
  for (const element of selectSome(document, 'meta[content]', maxTags)) {
    const value = attributeText(element, 'content', maxLength).trim();
    if (value === '') continue;
    for (const source of ['property', 'name']) {
      const name = attribute(element, source)?.trim().toLowerCase();
      if (!name) continue;
      const known = tags.get(name);
      if (known) known.push(value);
      else tags.set(name, [value]);
      break;
    }
  }
  return tags;
}

/** The first value under any of the names, in the order of the names. */
export function headTag(tags: HeadTags, ...names: string[]): string | null {
  for (const name of names) {
    const value = tags.get(name)?.[0];
    if (value !== undefined) return value;
  }
  return null;
}
