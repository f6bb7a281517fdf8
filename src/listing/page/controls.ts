import type { Area } from './area';
import { attribute, attributeText } from './dom';
import type { Slices } from './slices';
import type { Snapshot } from './snapshot';
import { visibleText } from './visible-text';

/** What the listing's area offers to press. */
export interface Controls {
  /** Short words of buttons and of links that look like buttons, each once. */
  words: string[];
  /** A form, button or link that the page's builder named after a cart, a purchase or a bid. */
  named: boolean;
}

/** Names that builders give to what sells, in any language of the page: they are written for programs. */
const sellingName =
  /add[-_]?to[-_]?(cart|bag|basket)|addtocart|\bbuy[-_]?(now|box|it|button|btn)|buynow|(cart|bag|basket)[-_]?(add|button|btn|form)|place[-_]?bid|bid[-_]?(button|btn|box|now|form)|make[-_]?offer|product[-_]?form|\/cart\/add|contact[-_]?seller/i;
const buttonName = /(^|[\s_-])(btn|button|cta)/i;
const maxWords = 60;
const longest = 60;

const namesOf = (element: Element): string =>
  ['class', 'id', 'name', 'action', 'data-testid', 'data-action']
    .map((name) => attributeText(element, name, 400))
    .join(' ');

/** Gathers what can be pressed in the listing's area; what the words mean is read later. */
export async function findControls(snapshot: Snapshot, { outside }: Area, slices: Slices): Promise<Controls> {
  const words = new Set<string>();
  let named = false;
  for (const [index, { element, tag, shown }] of snapshot.elements.entries()) {
    if ((index & 127) === 0 && slices.due) await slices.rest();
    if (outside[index] === 1 || shown === 'hidden') continue;
    // What a field holds is the reader's or the site's own; only what a button says is asked.
    const pressed = tag === 'input' && /^(submit|button|image)$/i.test(attributeText(element, 'type'));
    const button = tag === 'button' || pressed || attribute(element, 'role') === 'button';
    if (!button && tag !== 'a' && tag !== 'form') continue;
    const names = namesOf(element);
    named ||= sellingName.test(names);
    if (tag === 'form' || (!button && !buttonName.test(names) && !sellingName.test(names))) continue;
    const seen = tag === 'input' ? '' : visibleText(snapshot, index, { most: longest });
    const text = seen || (attribute(element, 'value') ?? attributeText(element, 'aria-label'));
    if (text.length <= longest && text !== '' && words.size < maxWords) words.add(text);
  }
  return { words: [...words], named };
}
