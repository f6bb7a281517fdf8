import { splitLabelled } from '../../text/label-words';
import type { Labelled } from '../extract-types';
import { attributeText, pathOf } from '../page/dom';
import type { Slices } from '../page/slices';
import { endAt, type PageElement, type Snapshot, tagAt } from '../page/snapshot';
import { joinPieces, visibleText } from '../page/visible-text';

const maxPairs = 300;
/** Text of an element that may hold names and values; longer ones are prose. */
const maxText = 2_000;
const textOf = (snapshot: Snapshot, index: number): string => visibleText(snapshot, index, { most: maxText });
const confidence = 0.65;
const rowTags: ReadonlySet<string> = new Set(['tr', 'li', 'div', 'p', 'span', 'section', 'td', 'dd', 'figcaption']);

/** Children of an element that show something, in order, at most twelve. */
function shownChildren(snapshot: Snapshot, index: number): number[] {
  const { elements } = snapshot;
  const children: number[] = [];
  const end = endAt(snapshot, index);
  for (let child = index + 1; child < end && children.length < 12; child = endAt(snapshot, child))
    if (elements[child]?.shown === 'shown') children.push(child);
  return children;
}

/**
 * Names and values as a page sets them side by side: definition lists, table rows, a short element beside another, and
 * lines "Name: value". What the names mean is read later.
 */
export async function findPairs(snapshot: Snapshot, outside: Uint8Array, slices: Slices): Promise<Labelled[]> {
  const { elements } = snapshot;
  const pairs = new Map<string, Labelled>();
  const keep = (name: string, value: string, at: number) => {
    const key = `${name}\n${value}`;
    if (pairs.has(key)) return;
    const where = pathOf((elements[at] as PageElement).element);
    pairs.set(key, { name, value, origin: 'visible', where, confidence });
  };
  const add = (name: string, value: string, at: number) => {
    if (pairs.size >= maxPairs || name.length > 60 || value === '' || value.length > 600) return;
    if (/^[\d\s.,]*$/.test(name) || name.includes('\n')) return;
    keep(name, value, at);
  };
  for (const [index, element] of elements.entries()) {
    const { tag, shown, pieces } = element;
    if (pairs.size >= maxPairs) break;
    if (slices.due) await slices.rest();
    if (outside[index] === 1 || shown !== 'shown' || pieces[1] - pieces[0] > 60) continue;
    if (tag === 'dt' || tag === 'th') {
      const follower = elements[element.end];
      if (follower && (follower.tag === 'dd' || follower.tag === 'td') && follower.parent === element.parent)
        add(textOf(snapshot, index), textOf(snapshot, element.end), element.end);
    } else if (rowTags.has(tag)) addRow(snapshot, index, add);
    else if (tag === 'a') addProfile(snapshot, index, add);
    const tags = tagsIn(snapshot, index);
    if (tags !== '') keep(sideBySide, tags, index);
  }
  return [...pairs.values()];
}

/** The name of what stands side by side without one, a line each: "Ondrasse", "Black", "Very good" in a row. */
export const sideBySide = '';
const longestTag = 30;
const tagElement = /^(?:li|span|a|div|button)$/;

/** The words of an element that holds nothing but a few short ones of one kind, a line each; empty for others. */
function tagsIn(snapshot: Snapshot, index: number): string {
  const children = shownChildren(snapshot, index);
  const [first] = children;
  const kind = tagAt(snapshot, first ?? -1);
  if (children.length < 2 || children.length > 8 || !tagElement.test(kind)) return '';
  if (children.some((child) => tagAt(snapshot, child) !== kind)) return '';
  const words: string[] = [];
  for (const child of children) {
    const tag = textOf(snapshot, child);
    if (tag === '' || tag.length > longestTag || /[\n:：?!]/.test(tag)) return '';
    words.push(tag);
  }
  return words.join('\n');
}

const dashed = /^[–—|-]\s(.+)$/;

type Add = (name: string, value: string, at: number) => void;

/** Tags whose first child may be a name without a colon. */
const mayBeName: ReadonlySet<string> = new Set([
  'span',
  'div',
  'p',
  'b',
  'strong',
  'label',
  'h2',
  'h3',
  'h4',
  'h5',
  'h6',
  'td',
  'small',
  'em',
  'dt',
  'th',
]);

function addRow(snapshot: Snapshot, index: number, add: Add): void {
  const children = shownChildren(snapshot, index);
  const [first, second] = children;
  const name = textOf(snapshot, first ?? -1);
  const firstTag = tagAt(snapshot, first ?? -1);
  const headed = /^h[2-6]$/.test(firstTag);
  const named = (children.length <= 4 || headed) && mayBeName.has(firstTag);
  if (second !== undefined && named && name.length <= 40 && !/[!?]$|[^.]{13}\.$/.test(name))
    add(name, textOf(snapshot, second), second);
  if (first !== undefined && second === undefined) {
    const [row, only] = [index, first].map((at) => (snapshot.elements[at] as PageElement).pieces);
    const own = (from: number, to: number) => joinPieces(snapshot, from, to, { most: maxText });
    const ahead = own(row![0], only![0]);
    if (ahead.length <= 40) add(ahead, name, first);
    // "<b>Condition</b> – Good"
    const behind = ahead === '' && named && name.length <= 40 ? dashed.exec(own(only![1], row![1])) : null;
    if (behind) add(name, behind[1] as string, index);
  }
  if (children.length > 11) return;
  const text = textOf(snapshot, index);
  if (text.length > maxText) return;
  for (const line of text.split('\n').slice(0, 40)) {
    const pair = splitLabelled(line);
    if (pair) add(pair.name, pair.value, index);
  }
}

const profilePath =
  /\/(u|usr|users?|members?|membres?|membro|miembro|mitglied|sellers?|profiles?|profil|profilo|perfil|closet|verkoper|gebruiker|vendeur|venditore|vendedor|nutzer|leden|lid|mitglieder|usuarios?|utenti|utente|utilisateurs?)\/(?:[^/?#]{2,60}|\d)\/?([?#]|$)|\/@[^/?#]{1,60}\/?([?#]|$)/i;
/** A link of this class names who wrote the post; `rel=author` is an article's. */
const writerClass = /(^|[\s_-])(author|username|user-?name|seller-?name|nickname|poster)($|[\s_-])/i;
const othersClass = /comment|repl(?:y|ies)|review|answer|related|similar/i;

/** Whether an element stands among what others write below an offer, or among other offers. */
function isAmongOthers({ elements }: Snapshot, index: number): boolean {
  for (let at = elements[index]?.parent ?? -1, level = 0; at >= 0 && level < 6; level += 1) {
    const { element, parent } = elements[at] as PageElement;
    if (othersClass.test(`${attributeText(element, 'class')} ${attributeText(element, 'id')}`.slice(0, 200)))
      return true;
    at = parent;
  }
  return false;
}

/** Whether a link is the first thing in a box of the seller's. */
function opensSellersBox({ elements }: Snapshot, index: number): boolean {
  const box = elements[elements[index]?.parent ?? -1];
  return box !== undefined && elements[index - 1] === box && sellersBox.test(attributeText(box.element, 'class'));
}
const sellersBox = /(^|[\s_-])(seller|vendor|vendeur|verkaeufer|venditore|vendedor|verkoper)($|[\s_-])/i;

/** A link to a member's page names the seller where nothing else does; of one that is only called so, a name in one word. */
function addProfile(snapshot: Snapshot, index: number, add: Add): void {
  const { element } = snapshot.elements[index] as PageElement;
  const [called, name] = [attributeText(element, 'class'), textOf(snapshot, index).split('\n')[0] as string];
  const isWriter = writerClass.test(called) && attributeText(element, 'rel') !== 'author';
  const isNamed = isWriter || profilePath.test(attributeText(element, 'href')) || opensSellersBox(snapshot, index);
  if (!isNamed && !(sellersBox.test(called) && !/\s/.test(name))) return;
  if (name.length >= 2 && name.length <= 40 && !isAmongOthers(snapshot, index)) add('seller', name, index);
}
