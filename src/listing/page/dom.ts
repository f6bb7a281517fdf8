/**
 * Reading a page that may be hostile. `<input name="getAttribute">` inside a form replaces `form.getAttribute`, so every
 * property is taken from the prototype, never from the node itself. Works on Chromium, jsdom and linkedom documents.
 */
const known = new WeakMap<object, Map<string, PropertyDescriptor | null>>();

function descriptorOf(node: object, name: string): PropertyDescriptor | null {
  const prototype = Object.getPrototypeOf(node) as object;
  let names = known.get(prototype);
  if (!names) {
    names = new Map();
    known.set(prototype, names);
  }
  const remembered = names.get(name);
  if (remembered !== undefined) return remembered;
  let found: PropertyDescriptor | null = null;
  for (let step: object | null = prototype; step && !found; step = Object.getPrototypeOf(step))
    found = Object.getOwnPropertyDescriptor(step, name) ?? null;
  names.set(name, found);
  return found;
}

/** A property as the platform defines it. Falls back to the node's own field only where no prototype knows the name. */
export function property<T>(node: object, name: string): T {
  const descriptor = descriptorOf(node, name);
  if (descriptor?.get) return descriptor.get.call(node) as T;
  if (descriptor) return descriptor.value as T;
  return Object.getOwnPropertyDescriptor(node, name)?.value as T;
}

/** Calls a method as the platform defines it; undefined where the platform has none. */
export function invoke<T>(node: object, name: string, ...values: unknown[]): T | undefined {
  const method = descriptorOf(node, name)?.value as ((...values: unknown[]) => T) | undefined;
  return method?.apply(node, values);
}

/** No class, address or label is longer; an address cut here is too long to be one. */
const usualLength = 8_192;

/** An attribute's value, at most so many characters of it: a page may write a megabyte into any of them. */
export function attribute(element: Element, name: string, most = usualLength): string | null {
  const value = invoke<string | null>(element, 'getAttribute', name) ?? null;
  return value !== null && value.length > most ? value.slice(0, most) : value;
}

/** An attribute's value for looking words up in; none is no words. */
export const attributeText = (element: Element, name: string, most = usualLength): string =>
  attribute(element, name, most) ?? '';

export const hasAttribute = (element: Element, name: string): boolean =>
  invoke<boolean>(element, 'hasAttribute', name) === true;

export const attributeNames = (element: Element): string[] => invoke<string[]>(element, 'getAttributeNames') ?? [];

/** Tag name in small letters, without a namespace prefix. */
export const tagOf = (element: Element): string => String(property<string>(element, 'localName') ?? '').toLowerCase();

export const nodeType = (node: Node): number => property<number>(node, 'nodeType');
export const firstChild = (node: Node): Node | null => property<Node | null>(node, 'firstChild') ?? null;
export const nextSibling = (node: Node): Node | null => property<Node | null>(node, 'nextSibling') ?? null;
export const parentNode = (node: Node): Node | null => property<Node | null>(node, 'parentNode') ?? null;
export const textContent = (node: Node): string => property<string | null>(node, 'textContent') ?? '';

export const isElement = (node: Node | null): node is Element => node !== null && nodeType(node) === 1;

export function parentElement(node: Node): Element | null {
  const parent = parentNode(node);
  return isElement(parent) ? parent : null;
}

/** Elements under a root that match a selector, in tree order; none when the selector is not one. */
export function select(root: ParentNode | Node, selector: string): Element[] {
  try {
    return Array.from(invoke<Iterable<Element>>(root, 'querySelectorAll', selector) ?? []);
  } catch {
    return [];
  }
}

/** The first few elements that match; how many match in all costs no more than the browser's own search. */
export function selectSome(root: ParentNode | Node, selector: string, most: number): Element[] {
  try {
    const found = invoke<ArrayLike<Element>>(root, 'querySelectorAll', selector);
    const first: Element[] = [];
    for (let index = 0; found && index < found.length && index < most; index += 1) first.push(found[index] as Element);
    return first;
  } catch {
    return [];
  }
}

/** Ancestors beyond this are not asked: no page that people read nests so deep, and each element would ask them all. */
const mostAncestors = 256;

/** The nearest ancestor, or the element itself when `self`, that a test accepts. */
export function closest(element: Element, accepts: (element: Element) => boolean, self: boolean): Element | null {
  let step: Element | null = self ? element : parentElement(element);
  for (let steps = 0; step && !accepts(step); steps += 1) step = steps < mostAncestors ? parentElement(step) : null;
  return step;
}

/** The next node in tree order under `root`, or null; `skipChildren` leaves a subtree. */
export function nextNode(node: Node, root: Node, skipChildren = false): Node | null {
  const child = skipChildren ? null : firstChild(node);
  if (child) return child;
  let step: Node | null = node;
  while (step && step !== root) {
    const sibling = nextSibling(step);
    if (sibling) return sibling;
    step = parentNode(step);
  }
  return null;
}

/** A short path that a person can follow to an element: tag, id or first class, position among its siblings. */
export function pathOf(element: Element): string {
  const steps: string[] = [];
  let step: Element | null = element;
  while (step && steps.length < 4) {
    const id = attribute(step, 'id');
    const first = attributeText(step, 'class').trim().split(/\s+/)[0];
    steps.unshift(tagOf(step) + (id ? `#${id.slice(0, 40)}` : first ? `.${first.slice(0, 40)}` : ''));
    if (id) break;
    step = parentElement(step);
  }
  return steps.join(' > ');
}
