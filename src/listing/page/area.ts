import { japanese } from '../../text/japanese';
import { relatedHeadings } from '../../text/page-words';
import { listOf } from '../../text/phrases';
import { attribute, attributeText } from './dom';
import type { Slices } from './slices';
import { endAt, type PageElement, parentAt, type Snapshot, tagAt } from './snapshot';
import { visibleText } from './visible-text';

/** The listing's own part of the page. */
export interface Area {
  /** Index of the listing's heading, -1 without one. */
  heading: number;
  /** 1 for each element outside: navigation, footer, related items, advertisements, notices. */
  outside: Uint8Array;
}

const outsideTags: ReadonlySet<string> = new Set(['nav', 'footer']);
const outsideRoles: ReadonlySet<string> = new Set([
  'navigation',
  'contentinfo',
  'search',
  'dialog',
  'alertdialog',
  'banner',
  'complementary-ad',
]);
/** What those who build pages call such parts, which they do in English. */
const outsideNames =
  'related|similar|recommend|upsell|up-sell|cross-?sell|also-?(like|bought|viewed)|you-?may|recently|sponsor|advert|newsletter|cookie|consent|breadcrumb|suggest|more-?from|other-?items|trending|footer|site-?nav|main-?nav|navbar|mega-?menu|social-?share|ad-slot|ad-unit|adsense|(?:cookie|promo|ad|top|site|hero)-?banner|promo|product-?reviews|comments';
const outsideName = new RegExp(`(^|[\\s_-])(${outsideNames})($|[\\s_-]|s\\b)`, 'i');
const neverOutside: ReadonlySet<string> = new Set(['html', 'body', 'main', 'h1', 'head']);
const relatedHeading = new RegExp(listOf(...relatedHeadings).join('|'), 'i');

/** A heading of the piece is no longer; a title beyond its limit says no more. */
const maxHeading = 400;
export const maxTitle = 1_000;

const isHeading = (tag: string): boolean => /^h[1-6]$/.test(tag);

/** Finds the listing's heading and what lies outside the listing. `titles` are other names that the page gives it. */
export async function findArea(snapshot: Snapshot, titles: readonly string[], slices: Slices): Promise<Area> {
  const { elements } = snapshot;
  const suspects: number[] = [];
  for (let index = 0; index < elements.length; index += 1) {
    if ((index & 127) === 0 && slices.due) await slices.rest();
    if (looksOutside(snapshot, index)) suspects.push(index);
  }
  const outside = new Uint8Array(elements.length);
  for (const index of suspects) markSubtree(snapshot, outside, index);
  const heading = await chooseHeading(snapshot, outside, titles, slices);
  if (heading >= 0 && outside[heading] === 1) {
    outside.fill(0);
    for (const index of suspects) if (!holds(snapshot, index, heading)) markSubtree(snapshot, outside, index);
  }
  await markRelated(snapshot, outside, heading, slices);
  await slices.rest();
  return { heading, outside };
}

/** Where nothing is asked for (-1), nothing holds it. */
export const holds = (snapshot: Snapshot, outer: number, inner: number): boolean =>
  outer <= inner && inner < endAt(snapshot, outer);

export function markSubtree(snapshot: Snapshot, outside: Uint8Array, index: number): void {
  outside.fill(1, index, endAt(snapshot, index));
}

function looksOutside(snapshot: Snapshot, index: number): boolean {
  const { element, tag, parent } = snapshot.elements[index] as Snapshot['elements'][number];
  if (neverOutside.has(tag)) return false;
  if (outsideTags.has(tag)) return true;
  const role = attribute(element, 'role');
  if (role !== null && outsideRoles.has(role)) return true;
  if (tag === 'header') return isSiteHeader(snapshot, parent);
  const name = `${attributeText(element, 'class')} ${attributeText(element, 'id')}`;
  return outsideName.test(name.slice(0, 400));
}

/** A `header` of the page, not of an article, section or the main part. */
function isSiteHeader(snapshot: Snapshot, parent: number): boolean {
  for (let step = parent; step >= 0; step = parentAt(snapshot, step))
    if (['main', 'article', 'section'].includes(tagAt(snapshot, step))) return false;
  return true;
}

async function chooseHeading(
  snapshot: Snapshot,
  outside: Uint8Array,
  titles: readonly string[],
  slices: Slices,
): Promise<number> {
  const titlesWords = titles.map(titleWords);
  let best = -1;
  let bestScore = Number.NEGATIVE_INFINITY;
  for (const [index, { element, tag, shown }] of snapshot.elements.entries()) {
    if ((index & 127) === 0 && slices.due) await slices.rest();
    const level =
      tag === 'h1'
        ? 1
        : attribute(element, 'role') === 'heading'
          ? Number(attribute(element, 'aria-level') ?? 2)
          : isHeading(tag)
            ? Number(tag[1])
            : 0;
    if (level === 0 || level > 2 || shown !== 'shown') continue;
    if (slices.due) await slices.rest();
    const text = visibleText(snapshot, index, { most: maxHeading });
    if (text.length < 3 || text.length > maxHeading || relatedHeading.test(text)) continue;
    const words = titleWords(text);
    const likeness = Math.max(0, ...titlesWords.map((title) => shareOfWords(words, title)));
    const score = (level === 1 ? 2 : 0) - outside[index]! * 2 + likeness * 3 - index / 1e6;
    // A heading that is a link as a whole is likelier that of a card, which leads to another piece.
    const rank = score - (score >= 1 && standsInLink(snapshot, index) ? 2 : 0);
    if (score >= 1 && rank > bestScore) [best, bestScore] = [index, rank];
  }
  return best;
}

function standsInLink(snapshot: Snapshot, index: number): boolean {
  let step = index;
  for (let level = 0; level < 6 && step >= 0; level += 1) {
    if (tagAt(snapshot, step) === 'a') return true;
    step = parentAt(snapshot, step);
  }
  return false;
}

/** Marks sections under a heading such as "You may also like": the section that holds it, or what follows it. */
async function markRelated(snapshot: Snapshot, outside: Uint8Array, heading: number, slices: Slices): Promise<void> {
  const { elements } = snapshot;
  for (const [index, { tag, element, parent }] of elements.entries()) {
    if ((index & 127) === 0 && slices.due) await slices.rest();
    if (outside[index] === 1 || index === heading) continue;
    if (!isHeading(tag) && attribute(element, 'role') !== 'heading') continue;
    if (slices.due) await slices.rest();
    const text = visibleText(snapshot, index, { most: maxHeading });
    if (text.length > 80 || !relatedHeading.test(text)) continue;
    let section = index;
    for (let step = parent; step > 0 && !holds(snapshot, step, heading) && !neverOutside.has(tagAt(snapshot, step)); ) {
      section = step;
      step = parentAt(snapshot, step);
      if (heading < 0) break;
    }
    if (section !== index && heading >= 0 && sectionIsSmall(snapshot, section, index))
      markSubtree(snapshot, outside, section);
    else outside.fill(1, index, endOfSection(snapshot, index));
  }
}

/** A related heading at the top of its section speaks for all of it. */
const sectionIsSmall = (snapshot: Snapshot, section: number, heading: number): boolean =>
  !showsTextBefore(snapshot, section, heading, 40);

/** Whether an element shows at least so many characters before another inside it. */
function showsTextBefore(snapshot: Snapshot, section: number, index: number, least: number): boolean {
  const { elements, pieces } = snapshot;
  const [from, to] = [section, index].map((at) => (elements[at] as PageElement).pieces[0]);
  let length = 0;
  for (const piece of pieces.slice(from, to)) if (piece.shown === 'shown') length += piece.text.trim().length;
  return length >= least;
}

/** The index after what follows a heading within its parent, up to the next heading of its level or above. */
function endOfSection(snapshot: Snapshot, heading: number): number {
  const { elements } = snapshot;
  const own = elements[heading] as PageElement;
  const end = elements[own.parent]?.end ?? own.end;
  for (let index = own.end; index < end; index += 1) {
    const tag = tagAt(snapshot, index);
    if (isHeading(tag) && tag <= own.tag) return index;
  }
  return end;
}

/** Words of a text for comparing titles: small letters, accents off; Japanese text in pairs of characters. */
export function titleWords(text: string): Set<string> {
  const plain = text.slice(0, maxTitle).normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  const words = plain.match(/[\p{L}\p{N}]+/gu) ?? [];
  return new Set(words.flatMap((word) => (japanese.test(word) ? pairsOf(word) : [word])));
}

const pairsOf = (word: string): string[] =>
  word.length < 3 ? [word] : Array.from({ length: word.length - 1 }, (_, index) => word.slice(index, index + 2));

/** Share of the shorter title's words that the other has, 0 to 1. */
export function wordLikeness(a: string, b: string): number {
  return shareOfWords(titleWords(a), titleWords(b));
}

function shareOfWords(left: ReadonlySet<string>, right: ReadonlySet<string>): number {
  const smaller = Math.min(left.size, right.size);
  if (smaller === 0) return 0;
  let shared = 0;
  for (const word of left) if (right.has(word)) shared += 1;
  return shared / smaller;
}
