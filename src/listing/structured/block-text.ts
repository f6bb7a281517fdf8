import { firstChild, isElement, nextSibling, nodeType, parentNode, property, tagOf } from '../page/dom';
import { tidyText } from './entities';

export const blockTags: ReadonlySet<string> = new Set(
  (
    'address article aside blockquote body caption center dd details dialog div dl dt fieldset figcaption figure footer ' +
    'form h1 h2 h3 h4 h5 h6 header hgroup hr html legend li main menu nav ol optgroup option p pre search section ' +
    'summary table tbody tfoot thead tr ul'
  ).split(' '),
);

/** Elements whose text is never shown. */
export const silentTags: ReadonlySet<string> = new Set(
  'script style template noscript head title meta link object embed canvas svg math textarea select audio video'.split(
    ' ',
  ),
);

const maxNodes = 5_000;
const maxLength = 40_000;

/** How many nodes may still be gone through for all texts together: elements inside each other hold the same ones. */
export interface TextBudget {
  nodes: number;
}

/** Text under an element with its blocks and breaks as new lines, scripts and styles left out. */
export function blockText(element: Element, budget: TextBudget): string {
  const parts: string[] = [];
  let node: Node | null = element;
  let seen = 0;
  let length = 0;
  while (node && seen < maxNodes && length < maxLength && budget.nodes > 0) {
    seen += 1;
    budget.nodes -= 1;
    let down = true;
    if (isElement(node)) {
      const tag = tagOf(node);
      if (node !== element && silentTags.has(tag)) down = false;
      if (tag === 'br' || blockTags.has(tag)) parts.push('\n');
      else if (tag === 'td' || tag === 'th') parts.push(' ');
    } else if (nodeType(node) === 3) {
      const text = property<string>(node, 'data').slice(0, maxLength);
      length += text.length;
      const parent = parentNode(node);
      parts.push(isElement(parent) && tagOf(parent) === 'pre' ? text : text.replace(/\s+/g, ' '));
    }
    const child: Node | null = down ? firstChild(node) : null;
    if (child) {
      node = child;
      continue;
    }
    let step: Node | null = node;
    node = null;
    while (step && step !== element) {
      const sibling = nextSibling(step);
      if (sibling) {
        node = sibling;
        break;
      }
      step = parentNode(step);
      if (step && isElement(step) && blockTags.has(tagOf(step))) parts.push('\n');
    }
  }
  return tidyText(parts.join(''));
}
