import { samePage, webAddress } from './address';
import { holds } from './area';
import { attribute } from './dom';
import type { Snapshot } from './snapshot';
import { visibleText } from './visible-text';

/** Cards of other listings: repeated siblings that each link to another page and show a price or a photo. */
export interface Cards {
  /** Element index of each card. */
  roots: number[];
  /** Cards by the element that holds them. */
  groups: Map<number, number[]>;
}

const priceLike =
  /(?:[$€£¥₹]|\b(?:EUR|USD|GBP|CHF|JPY|kr|zł)\b|円)\s?\d|\d\s?(?:[$€£¥₹円]|\b(?:EUR|USD|GBP|CHF|JPY|kr|zł)\b)/;

/** Address that an element's link leads to, when it is a page other than this one; null otherwise. */
export function otherPage(element: Element, pageUrl: string, base: string): string | null {
  const href = attribute(element, 'href');
  if (href === null || href.startsWith('#')) return null;
  const address = webAddress(href, base);
  if (address === null || /\.(jpe?g|png|webp|avif|gif)(\?|$)/i.test(address)) return null;
  return samePage(address, pageUrl, base) ? null : address;
}

/** Finds groups of at least three cards. `heading` is never inside a card. */
export function findCards(snapshot: Snapshot, heading: number, pageUrl: string, base: string): Cards {
  const { elements } = snapshot;
  const byParent = new Map<number, Map<string, number[]>>();
  for (const [index, { tag, element, shown }] of elements.entries()) {
    if (tag !== 'a' || shown !== 'shown' || otherPage(element, pageUrl, base) === null) continue;
    const card = cardOf(snapshot, index, heading);
    if (card === null) continue;
    const parent = elements[card]?.parent ?? -1;
    const kinds = byParent.get(parent) ?? new Map<string, number[]>();
    byParent.set(parent, kinds);
    const kind = elements[card]?.tag ?? '';
    const known = kinds.get(kind) ?? [];
    if (!known.includes(card)) known.push(card);
    kinds.set(kind, known);
  }
  const groups = new Map<number, number[]>();
  for (const [parent, kinds] of byParent)
    for (const cards of kinds.values())
      if (cards.length >= 3) groups.set(parent, [...(groups.get(parent) ?? []), ...cards]);
  return { roots: [...groups.values()].flat(), groups };
}

const maxCardPieces = 80;

/** The smallest element around a link, up to six levels, that shows a price or holds an image, and has siblings of its kind. */
function cardOf(snapshot: Snapshot, link: number, heading: number): number | null {
  const { elements } = snapshot;
  let step = link;
  for (let level = 0; level < 6 && step > 0; level += 1) {
    const { pieces, parent, tag } = elements[step] as Snapshot['elements'][number];
    if (pieces[1] - pieces[0] > maxCardPieces || (heading >= 0 && holds(snapshot, step, heading))) return null;
    if (
      siblingsLike(snapshot, step, tag, parent) >= 2 &&
      (priceLike.test(visibleText(snapshot, step)) || holdsImage(snapshot, step))
    )
      return step;
    step = parent;
  }
  return null;
}

function siblingsLike(snapshot: Snapshot, index: number, tag: string, parent: number): number {
  const { elements } = snapshot;
  const end = elements[parent]?.end ?? 0;
  let count = 0;
  let looked = 0;
  for (let child = parent + 1; child < end && looked < 60; child = elements[child]?.end ?? end) {
    looked += 1;
    if (child !== index && elements[child]?.tag === tag) count += 1;
    if (count >= 2) return count;
  }
  return count;
}

function holdsImage(snapshot: Snapshot, index: number): boolean {
  const end = snapshot.elements[index]?.end ?? index;
  for (let child = index; child < end && child < index + 60; child += 1)
    if (snapshot.elements[child]?.tag === 'img') return true;
  return false;
}

/** Whether a card shows a price. */
export const showsPrice = (snapshot: Snapshot, card: number): boolean => priceLike.test(visibleText(snapshot, card));
