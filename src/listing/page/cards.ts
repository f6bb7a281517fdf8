import { holds } from './area';
import { attribute } from './dom';
import type { Slices } from './slices';
import { endAt, parentAt, type Snapshot, tagAt } from './snapshot';
import { visibleText } from './visible-text';

/** Cards of other listings: repeated siblings that each link to another page and show a price or a photo. */
export interface Cards {
  /** Element index of each card. */
  roots: number[];
  /** How many of them show a price. */
  priced: number;
}

const priceLike =
  /(?:[$€£¥₹]|\b(?:EUR|USD|GBP|CHF|JPY|kr|zł)\b|円)\s?\d|\d\s?(?:[$€£¥₹円]|\b(?:EUR|USD|GBP|CHF|JPY|kr|zł)\b)/;

/** Tells the address of a page other than this one; null for this page and for what is no page. */
export type OtherPage = (address: string) => string | null;

/** Address that a link leads to, when it is another page and no picture. */
export function leadsTo(link: Element, otherPage: OtherPage): string | null {
  const href = attribute(link, 'href');
  if (href === null || href.startsWith('#') || /\.(jpe?g|png|webp|avif|gif)(\?|$)/i.test(href)) return null;
  return otherPage(href);
}

/** Finds groups of at least three cards, and links that are a card each. `heading` is never inside a card. */
export async function findCards(
  snapshot: Snapshot,
  heading: number,
  otherPage: OtherPage,
  slices: Slices,
): Promise<Cards> {
  const { elements } = snapshot;
  const byParent = new Map<number, Map<string, number[]>>();
  const whole: number[] = [];
  for (const [index, { tag, element, shown }] of elements.entries()) {
    if (tag !== 'a' || shown !== 'shown') continue;
    if (slices.due) await slices.rest();
    if (leadsTo(element, otherPage) === null) continue;
    if (isWholeCard(snapshot, index, heading)) whole.push(index);
    const card = cardOf(snapshot, index, heading);
    if (card === null) continue;
    const parent = parentAt(snapshot, card);
    const kinds = byParent.get(parent) ?? new Map<string, number[]>();
    byParent.set(parent, kinds);
    const kind = tagAt(snapshot, card);
    const known = kinds.get(kind) ?? [];
    if (known.at(-1) !== card) known.push(card);
    kinds.set(kind, known);
  }
  const groups = new Map<number, number[]>();
  for (const [parent, kinds] of byParent)
    for (const cards of kinds.values())
      if (cards.length >= 3) groups.set(parent, (groups.get(parent) ?? []).concat(cards));
  const roots = [...groups.values()].flat();
  return {
    roots: [...roots, ...outside(snapshot, whole, roots)],
    priced: roots.filter((card) => showsPrice(snapshot, card)).length,
  };
}

/** Those of some elements, in the order of the page, that stand in none of the roots. */
function outside(snapshot: Snapshot, elements: readonly number[], roots: readonly number[]): number[] {
  const opening = [...roots].sort((a, b) => a - b);
  let [next, reach] = [0, 0];
  return elements.filter((element) => {
    for (; opening[next]! <= element; next += 1) reach = Math.max(reach, endAt(snapshot, opening[next]!));
    return element >= reach;
  });
}

const maxCardPieces = 80;
const maxCardText = 4_000;

/** The smallest element around a link, up to six levels, that shows a price or holds an image, and has siblings of its kind. */
function cardOf(snapshot: Snapshot, link: number, heading: number): number | null {
  const { elements } = snapshot;
  let step = link;
  for (let level = 0; level < 6 && step > 0; level += 1) {
    const { pieces, parent, tag } = elements[step] as Snapshot['elements'][number];
    if (pieces[1] - pieces[0] > maxCardPieces || holds(snapshot, step, heading)) return null;
    if (
      siblingsLike(snapshot, step, tag, parent) >= 2 &&
      (holdsImage(snapshot, step) || priceLike.test(visibleText(snapshot, step, { most: maxCardText })))
    )
      return step;
    step = parent;
  }
  return null;
}

/** A link to another page with a picture and a price in it: a card, however few stand beside it. */
const isWholeCard = (snapshot: Snapshot, link: number, heading: number): boolean => {
  const { pieces } = snapshot.elements[link] as Snapshot['elements'][number];
  if (pieces[1] - pieces[0] > maxCardPieces || holds(snapshot, link, heading)) return false;
  return holdsImage(snapshot, link) && showsPrice(snapshot, link);
};

function siblingsLike(snapshot: Snapshot, index: number, tag: string, parent: number): number {
  const end = endAt(snapshot, parent);
  let count = 0;
  let looked = 0;
  for (let child = parent + 1; child < end && looked < 60; child = endAt(snapshot, child)) {
    looked += 1;
    if (child !== index && tagAt(snapshot, child) === tag) count += 1;
    if (count >= 2) return count;
  }
  return count;
}

function holdsImage(snapshot: Snapshot, index: number): boolean {
  const end = endAt(snapshot, index);
  for (let child = index; child < end && child < index + 60; child += 1)
    if (tagAt(snapshot, child) === 'img') return true;
  return false;
}

const showsPrice = (snapshot: Snapshot, card: number): boolean =>
  priceLike.test(visibleText(snapshot, card, { most: maxCardText }));
