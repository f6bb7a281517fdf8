import type { Snapshot } from '../page/snapshot';
import { visibleText } from '../page/visible-text';
import { labelOf, splitLabelled } from './label';

/** A label and its value as the page shows them. */
export interface Pair {
  name: string;
  value: string;
  /** Index of the element that holds the value. */
  at: number;
}

const maxPairs = 300;
const rowTags: ReadonlySet<string> = new Set(['tr', 'li', 'div', 'p', 'span', 'section', 'td', 'dd', 'figcaption']);

/** Children of an element that show something, in order. */
function shownChildren(snapshot: Snapshot, index: number): number[] {
  const { elements } = snapshot;
  const children: number[] = [];
  const end = elements[index]?.end ?? index;
  for (let child = index + 1; child < end && children.length < 12; child = elements[child]?.end ?? end)
    if (elements[child]?.shown === 'shown') children.push(child);
  return children;
}

/**
 * Labels and values: definition lists, table rows, a label element beside a value element, and lines "Label: value".
 * Only labels that name a field count; each place is read once.
 */
export function findPairs(snapshot: Snapshot, outside: Uint8Array): Pair[] {
  const { elements } = snapshot;
  const pairs: Pair[] = [];
  const add = (name: string, value: string, at: number) => {
    if (pairs.length < maxPairs && value !== '' && value.length <= 600 && labelOf(name) !== null)
      pairs.push({ name, value, at });
  };
  for (const [index, { tag, shown, pieces }] of elements.entries()) {
    if (outside[index] === 1 || shown !== 'shown' || pieces[1] - pieces[0] > 60) continue;
    if (tag === 'dt' || tag === 'th') {
      const next = elements[index]?.end ?? -1;
      const follower = elements[next];
      if (follower && (follower.tag === 'dd' || follower.tag === 'td') && follower.parent === elements[index]?.parent)
        add(visibleText(snapshot, index), visibleText(snapshot, next), next);
      continue;
    }
    if (!rowTags.has(tag)) continue;
    const children = shownChildren(snapshot, index);
    if (children.length === 0 || children.length > 11) {
      if (children.length === 0) addLine(visibleText(snapshot, index), index, add);
      continue;
    }
    const [first, second] = children;
    if (first === undefined) continue;
    const name = visibleText(snapshot, first);
    if (name.length === 0 || name.length > 60) continue;
    if (second !== undefined && children.length <= 4 && labelOf(name) !== null)
      add(name, visibleText(snapshot, second), second);
    else addLine(visibleText(snapshot, index), index, add);
  }
  return pairs;
}

function addLine(text: string, at: number, add: (name: string, value: string, at: number) => void): void {
  for (const line of text.split('\n').slice(0, 40)) {
    const pair = line.length <= 460 ? splitLabelled(line) : null;
    if (pair) add(pair.name, pair.value, at);
  }
}
