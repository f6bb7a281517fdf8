import { attribute, attributeText, closest, hasAttribute, pathOf, selectSome } from '../page/dom';
import type { Slices } from '../page/slices';
import { addValue, type Item, newItem, shortName } from './item';
import { elementValue, maxValue, textNodes } from './microdata';

const maxElements = 20_000;

/** Prefixes that mean something without being declared. Source: RDFa 1.1 initial context (the one that shops use). */
const initialPrefixes: Record<string, string> = {
  schema: 'http://schema.org/',
  gr: 'http://purl.org/goodrelations/v1#',
};

const splitTokens = (text: string | null): string[] => (text ?? '').split(/\s+/).filter((token) => token !== '');

/** The address of a term: full, prefixed, or bare under the nearest `vocab`. Null when it belongs to no vocabulary. */
function resolveTerm(term: string, element: Element): string | null {
  if (/^https?:/i.test(term)) return term;
  const colon = term.indexOf(':');
  if (colon > 0) {
    const prefix = term.slice(0, colon).toLowerCase();
    const declared = closest(element, (step) => prefixesOf(step).has(prefix), true);
    const address = (declared && prefixesOf(declared).get(prefix)) ?? initialPrefixes[prefix];
    return address === undefined ? null : address + term.slice(colon + 1);
  }
  const holder = closest(element, (step) => hasAttribute(step, 'vocab'), true);
  return holder ? `${attributeText(holder, 'vocab')}${term}` : null;
}

function prefixesOf(element: Element): Map<string, string> {
  const tokens = splitTokens(attribute(element, 'prefix'));
  const found = new Map<string, string>();
  for (let index = 0; index + 1 < tokens.length; index += 2)
    found.set((tokens[index] as string).replace(/:$/, '').toLowerCase(), tokens[index + 1] as string);
  return found;
}

const namesSubject = (element: Element): boolean =>
  hasAttribute(element, 'typeof') ||
  hasAttribute(element, 'about') ||
  (hasAttribute(element, 'resource') && !hasAttribute(element, 'property'));

/** Reads RDFa Lite 1.1 (`vocab`, `typeof`, `property`, `resource`, `prefix`) under a root. Source: W3C rdfa-lite 2015. */
export async function readRdfa(root: ParentNode, slices: Slices): Promise<Item[]> {
  const subjects = selectSome(root, '[typeof], [about], [resource]', maxElements).filter(namesSubject);
  if (!subjects.some((element) => hasAttribute(element, 'typeof'))) return [];
  const items = new Map<Element, Item>();
  const budget = { nodes: textNodes };
  for (const element of subjects) {
    if (slices.due) await slices.rest();
    const item = newItem('rdfa', pathOf(element));
    item.types = splitTokens(attribute(element, 'typeof')).map((type) => shortName(resolveTerm(type, element) ?? type));
    item.id = attribute(element, 'about') ?? attribute(element, 'resource');
    items.set(element, item);
  }
  for (const [index, element] of selectSome(root, '[property]', maxElements).entries()) {
    if ((index & 7) === 0 && slices.due) await slices.rest();
    const holder = closest(element, (step) => items.has(step), hasAttribute(element, 'about'));
    const item = holder && items.get(holder);
    if (!item) continue;
    const inner = hasAttribute(element, 'typeof') ? items.get(element) : undefined;
    const value =
      inner ??
      attribute(element, 'content', maxValue) ??
      attribute(element, 'resource') ??
      elementValue(element, budget);
    for (const term of splitTokens(attribute(element, 'property'))) {
      const address = resolveTerm(term, element);
      if (address !== null) addValue(item, shortName(address), value);
    }
  }
  await chainRelations(items, slices);
  return [...items.values()];
}

/** `rel` around a thing names it as a property of the thing outside ("chaining" of full RDFa, which examples use). */
async function chainRelations(items: Map<Element, Item>, slices: Slices): Promise<void> {
  for (const [element, item] of items) {
    if (slices.due) await slices.rest();
    if (hasAttribute(element, 'property')) continue;
    const relation = closest(element, (step) => hasAttribute(step, 'rel') || items.has(step), false);
    if (!relation || items.has(relation)) continue;
    const holder = closest(relation, (step) => items.has(step), false);
    const outer = holder && items.get(holder);
    for (const term of splitTokens(attribute(relation, 'rel'))) {
      const address = resolveTerm(term, relation);
      if (outer && address !== null) addValue(outer, shortName(address), item);
    }
  }
}
