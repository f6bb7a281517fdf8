import { attribute, closest, hasAttribute, isElement, nextNode, pathOf, property, select, tagOf } from '../page/dom';
import type { Slices } from '../page/slices';
import { blockText } from './block-text';
import { addValue, type Item, newItem, shortName } from './item';

const maxElements = 20_000;

/** Attribute that holds the value, by element. Source: HTML Standard 5.2.4, "Values". */
const addressAttribute: Record<string, string> = {
  audio: 'src',
  embed: 'src',
  iframe: 'src',
  img: 'src',
  source: 'src',
  track: 'src',
  video: 'src',
  a: 'href',
  area: 'href',
  link: 'href',
  object: 'data',
};

const splitTokens = (text: string | null): string[] => (text ?? '').split(/\s+/).filter((token) => token !== '');

/**
 * The value of a property's element. The standard reads `content` on `meta` only; shops set it on any element and search
 * engines accept it there, so it is read first everywhere.
 */
export function elementValue(element: Element): string {
  const content = attribute(element, 'content');
  if (content !== null) return content;
  const tag = tagOf(element);
  const address = addressAttribute[tag];
  if (address !== undefined) return attribute(element, address) ?? misplacedAddress(element) ?? '';
  if (tag === 'data' || tag === 'meter') return attribute(element, 'value') ?? blockText(element);
  if (tag === 'time') return attribute(element, 'datetime') ?? blockText(element);
  return blockText(element);
}

/** Where pages put the address instead: a script's attribute, or the other of `src` and `href`. */
const misplacedAddress = (element: Element): string | null =>
  attribute(element, 'data-src') ?? attribute(element, 'href') ?? attribute(element, 'src');

/** Reads microdata under a root. Source: HTML Standard 5.2.5, with properties in tree order and a guard against cycles. */
export async function readMicrodata(root: ParentNode, slices: Slices): Promise<Item[]> {
  const scopes = select(root, '[itemscope]').slice(0, maxElements);
  if (scopes.length === 0) return [];
  const items = new Map<Element, Item>();
  for (const scope of scopes) items.set(scope, itemOf(scope));
  // Shops that change notation leave `property` behind in an item; a bare name there is meant as `itemprop`.
  const propertyElements = select(root, '[itemprop], meta[property]:not([property*=":"])').slice(0, maxElements);
  const referenced = referencedProperties(root, scopes);
  for (const [index, element] of propertyElements.entries()) {
    if ((index & 63) === 0 && slices.due) await slices.rest();
    if (!hasAttribute(element, 'itemprop') && closest(element, (step) => hasAttribute(step, 'typeof'), false)) continue;
    const holders = new Set<Element>(referenced.get(element) ?? []);
    const near = closest(element, (step) => hasAttribute(step, 'itemscope'), false);
    if (near) holders.add(near);
    const inner = items.get(element);
    for (const holder of holders) {
      const item = items.get(holder);
      if (!item || (inner && reaches(inner, item))) continue;
      for (const name of splitTokens(attribute(element, 'itemprop') ?? attribute(element, 'property')))
        addValue(item, shortName(name), inner ?? elementValue(element));
    }
  }
  return [...items.values()];
}

function itemOf(scope: Element): Item {
  const item = newItem('microdata', pathOf(scope));
  item.types = splitTokens(attribute(scope, 'itemtype')).map(shortName);
  item.id = attribute(scope, 'itemid')?.trim() || null;
  item.element = scope;
  return item;
}

/** Whether following an item's values upwards from `target` would come back to `item`: adding it would close a cycle. */
function reaches(item: Item, target: Item): boolean {
  const seen = new Set<Item>();
  for (let step: Item | undefined = target; step && !seen.has(step); step = step.holder?.item) {
    if (step === item) return true;
    seen.add(step);
  }
  return false;
}

/** For each property element that an `itemref` reaches, the scopes that refer to it. */
function referencedProperties(root: ParentNode, scopes: readonly Element[]): Map<Element, Element[]> {
  const found = new Map<Element, Element[]>();
  let budget = maxElements;
  for (const scope of scopes) {
    const ids = splitTokens(attribute(scope, 'itemref')).slice(0, 50);
    if (ids.length === 0) continue;
    const targets = select(root, '[id]').filter((element) => ids.includes(attribute(element, 'id') ?? ''));
    for (const target of targets) {
      let node: Node | null = target;
      while (node && budget > 0) {
        budget -= 1;
        let skip = false;
        if (isElement(node)) {
          if (hasAttribute(node, 'itemprop')) found.set(node, [...(found.get(node) ?? []), scope]);
          skip = hasAttribute(node, 'itemscope') || property<Element>(node, 'localName') === undefined;
        }
        node = nextNode(node, target, skip);
      }
    }
  }
  return found;
}
