import type { Origin } from '../types';
import { plainText } from './entities';

/** One thing that a page's data describes. Property names are in small letters, without a vocabulary's address. */
export interface Item {
  id: string | null;
  /** Short type names as published: "Product", "Offer". */
  types: string[];
  properties: Map<string, ItemValue[]>;
  origin: Origin;
  /** Where it stands: "json-ld 2 > offers", a selector. */
  where: string;
  /** Why it is weaker than it looks: 'repaired', 'unusual-names'. */
  caveats: string[];
  /** The thing that names this one, and by which property. */
  holder: { item: Item; property: string } | null;
}
export type ItemValue = string | number | boolean | Item;

export const isItem = (value: ItemValue): value is Item => typeof value === 'object';

export function newItem(origin: Origin, where: string): Item {
  return { id: null, types: [], properties: new Map(), origin, where, caveats: [], holder: null };
}

export function addValue(item: Item, name: string, value: ItemValue): void {
  const key = name.toLowerCase();
  const values = item.properties.get(key);
  if (values) values.push(value);
  else item.properties.set(key, [value]);
  if (isItem(value) && value.holder === null && value !== item) value.holder = { item, property: key };
}

const vocabulary = /^(?:https?:\/\/(?:www\.)?schema\.org[/#]?|schema:)/i;

/** "http://schema.org/Product", "schema:Product" and "Product" name the same. Other vocabularies keep their address. */
export const shortName = (name: string): string => name.trim().replace(vocabulary, '').replace(/^#/, '');

/** A piece has no more of anything; data that lists thousands of brands or offers says nothing by it. */
const mostValues = 200;

/** At most two hundred values of each property. */
export const valuesOf = (item: Item, ...names: string[]): ItemValue[] =>
  names.flatMap((name) => item.properties.get(name.toLowerCase())?.slice(0, mostValues) ?? []);

export const itemsOf = (item: Item, ...names: string[]): Item[] => valuesOf(item, ...names).filter(isItem);

/** Texts of a property: of an item its name, value, url or id. Empty texts are left out. */
export function textsOf(item: Item, ...names: string[]): string[] {
  return valuesOf(item, ...names)
    .map((value) => valueText(value))
    .filter((text) => text !== '');
}

export const textOf = (item: Item, ...names: string[]): string | null => textsOf(item, ...names)[0] ?? null;

/** The first text of a property for looking words up in; none is no words. */
export const wordsOf = (item: Item, ...names: string[]): string => textOf(item, ...names) ?? '';

export function valueText(value: ItemValue): string {
  if (typeof value === 'string') return plainText(value);
  if (!isItem(value)) return String(value);
  for (const name of ['name', 'value', '@value', 'url', 'contenturl']) {
    const inner = value.properties.get(name)?.find((one) => !isItem(one));
    if (inner !== undefined && !isItem(inner) && String(inner).trim() !== '') return plainText(String(inner));
  }
  return value.id ?? '';
}

export const hasType = (item: Item, ...types: string[]): boolean =>
  item.types.some((type) => types.some((wanted) => wanted.toLowerCase() === type.toLowerCase()));
