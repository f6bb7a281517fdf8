import { attribute } from './dom';
import { endAt, type Snapshot } from './snapshot';
import { visibleText } from './visible-text';

/** What can be pressed in a footer leads elsewhere: "Returns" is a menu's word there. */
const leadsElsewhere: ReadonlySet<string> = new Set(['a', 'nav', 'button', 'form']);
/** A shop's own terms are short. */
const most = 1_000;

/** The sentences of a page's footers, without their links. */
export function footerText(snapshot: Snapshot): string {
  const { elements } = snapshot;
  const outside = new Uint8Array(elements.length);
  const texts: string[] = [];
  for (let index = 0; index < elements.length; ) {
    const { tag, element } = elements[index] as Snapshot['elements'][number];
    if (tag !== 'footer' && attribute(element, 'role') !== 'contentinfo') {
      index += 1;
      continue;
    }
    const end = endAt(snapshot, index);
    for (let inner = index; inner < end; inner += 1)
      if (leadsElsewhere.has(elements[inner]?.tag ?? '')) outside.fill(1, inner, endAt(snapshot, inner));
    texts.push(visibleText(snapshot, index, { outside, most }));
    index = Math.max(end, index + 1);
  }
  return texts.join('\n').slice(0, most);
}
