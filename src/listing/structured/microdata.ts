import {
  attribute,
  attributeText,
  closest,
  hasAttribute,
  isElement,
  nextNode,
  pathOf,
  property,
  select,
  selectSome,
  tagOf,
} from '../page/dom';
import type { Slices } from '../page/slices';
import { blockText, type TextBudget } from './block-text';
import { addValue, type Item, newItem, shortName } from './item';

const maxElements = 20_000;
/** Nodes gone through for the texts of all values of one notation. */
export const textNodes = 200_000;
/** No value of data is longer: see `plainText`. */
export const maxValue = 40_000;

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
export function elementValue(element: Element, budget: TextBudget): string {
  const content = attribute(element, 'content', maxValue);
  if (content !== null) return content;
  const tag = tagOf(element);
  const address = addressAttribute[tag];
  if (address !== undefined) return attribute(element, address) ?? misplacedAddress(element) ?? '';
  if (tag === 'data' || tag === 'meter') return attribute(element, 'value', maxValue) ?? blockText(element, budget);
  if (tag === 'time') return attribute(element, 'datetime') ?? blockText(element, budget);
  return blockText(element, budget);
}

/** Where pages put the address instead: a script's attribute, or the other of `src` and `href`. */
const misplacedAddress = (element: Element): string | null =>
  attribute(element, 'data-src') ?? attribute(element, 'href') ?? attribute(element, 'src');

/** Reads microdata under a root. Source: HTML Standard 5.2.5, with properties in tree order and a guard against cycles. */
export async function readMicrodata(root: ParentNode, slices: Slices): Promise<Item[]> {
  const scopes = selectSome(root, '[itemscope]', maxElements);
  if (scopes.length === 0) return [];
  const items = new Map<Element, Item>();
  for (const scope of scopes) {
    if (slices.due) await slices.rest();
    items.set(scope, itemOf(scope));
  }
  // Shops that change notation leave `property` behind in an item; a bare name there is meant as `itemprop`.
  const propertyElements = selectSome(root, '[itemprop], meta[property]:not([property*=":"])', maxElements);
  const budget: TextBudget = { nodes: textNodes };
  const referenced = referencedProperties(root, scopes);
  for (const [index, element] of propertyElements.entries()) {
    if ((index & 7) === 0 && slices.due) await slices.rest();
    if (!hasAttribute(element, 'itemprop') && closest(element, (step) => hasAttribute(step, 'typeof'), false)) continue;
    const near = closest(element, (step) => hasAttribute(step, 'itemscope'), false);
    const inner = items.get(element);
    for (const holder of new Set([...(referenced.get(element) ?? []), near])) {
      const item = items.get(holder as Element);
      if (!item || (inner && reaches(inner, item))) continue;
      for (const name of splitTokens(attribute(element, 'itemprop') ?? attribute(element, 'property')))
        addValue(item, shortName(name), inner ?? elementValue(element, budget));
    }
  }
  return [...items.values()];
}

function itemOf(scope: Element): Item {
  const item = newItem('microdata', pathOf(scope));
  item.types = splitTokens(attribute(scope, 'itemtype')).map(shortName);
  item.id = attribute(scope, 'itemid')?.trim() || null;
  return item;
}

/** Whether following an item's values upwards from `target` would come back to `item`: adding it would close a cycle. */
function reaches(item: Item, target: Item): boolean {
  let steps = 0;
  for (let step: Item | undefined = target; step; step = step.holder?.item) {
    steps += 1;
    if (step === item || steps > mostHolders) return true;
  }
  return false;
}

/** Things inside things inside things: a longer chain is taken for a cycle. */
const mostHolders = 256;

/** For each property element that an `itemref` reaches, the scopes that refer to it. */
function referencedProperties(root: ParentNode, scopes: readonly Element[]): Map<Element, Element[]> {
  const found = new Map<Element, Element[]>();
  const referring = scopes.filter((scope) => hasAttribute(scope, 'itemref'));
  if (referring.length === 0) return found;
  const byId = new Map<string, Element>();
  for (const element of select(root, '[id]').reverse()) byId.set(attributeText(element, 'id'), element);
  let budget = maxElements;
  for (const scope of referring) {
    const ids = new Set(splitTokens(attribute(scope, 'itemref')).slice(0, 50));
    for (const id of ids) {
      const target = byId.get(id);
      if (!target) continue;
      let node: Node | null = target;
      while (node && budget > 0) {
        budget -= 1;
        let skip = false;
        if (isElement(node)) {
          if (hasAttribute(node, 'itemprop')) {
            const referrers = found.get(node);
            if (referrers) referrers.push(scope);
            else found.set(node, [scope]);
          }
          skip = hasAttribute(node, 'itemscope') || property<Element>(node, 'localName') === undefined;
        }
        node = nextNode(node, target, skip);
      }
    }
  }
  return found;
}
