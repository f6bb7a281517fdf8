import { attribute, firstChild, isElement, nextSibling, nodeType, tagOf } from '../../listing/page/dom';

/** What a walk meets: an element opens or closes, or a text stands there. */
export type Step =
  | { kind: 'open'; element: Element; tag: string; selector: () => string }
  | { kind: 'close'; element: Element; tag: string }
  | { kind: 'text'; text: string };

interface Level {
  element: Element;
  tag: string;
  next: Node | null;
  /** How many children of each tag came so far, for `nth-of-type`. */
  counts: Map<string, number>;
  /** Own step of the selector. */
  step: string;
}

/** Never read: no words of the page's own, or none that a person sees. */
const unread = new Set(
  'title script style noscript template svg math nav footer select textarea input iframe object video audio canvas head'.split(
    ' ',
  ),
);
const isHidden = (element: Element): boolean =>
  attribute(element, 'hidden') !== null ||
  attribute(element, 'aria-hidden') === 'true' ||
  /display\s?:\s?none/i.test(attribute(element, 'style', 200) ?? '');

/** A selector longer than this finds the element no better. */
const deepestSelector = 48;

function selectorOf(levels: readonly Level[]): string {
  const steps: string[] = [];
  for (let at = levels.length - 1; at >= 0 && steps.length < deepestSelector; at -= 1) {
    const { step } = levels[at]!;
    if (step !== '') steps.unshift(step);
    if (step.startsWith('#')) break;
  }
  return steps.join(' > ');
}

/** Walks what is shown under an element, in order and with a stack of its own: a page may be nested without end. */
export function* walk(root: Element | Document): Generator<Step> {
  const levels: Level[] = [
    {
      element: root as Element,
      tag: '',
      next: firstChild(root),
      counts: new Map(),
      step: isElement(root) ? tagOf(root) : '',
    },
  ];
  while (levels.length > 0) {
    const here = levels[levels.length - 1]!;
    const node = here.next;
    if (node === null) {
      levels.pop();
      if (levels.length > 0) yield { kind: 'close', element: here.element, tag: here.tag };
      continue;
    }
    here.next = nextSibling(node);
    if (nodeType(node) === 3) {
      yield { kind: 'text', text: (node as Text).data ?? '' };
      continue;
    }
    if (!isElement(node)) continue;
    const tag = tagOf(node);
    const count = (here.counts.get(tag) ?? 0) + 1;
    here.counts.set(tag, count);
    if (unread.has(tag) || isHidden(node)) continue;
    const id = attribute(node, 'id', 80);
    const step = id && /^[A-Za-z][\w-]{0,60}$/.test(id) ? `#${id}` : `${tag}:nth-of-type(${count})`;
    levels.push({ element: node, tag, next: firstChild(node), counts: new Map(), step });
    const frozen = levels.slice(-deepestSelector);
    yield { kind: 'open', element: node, tag, selector: () => selectorOf(frozen) };
  }
}
