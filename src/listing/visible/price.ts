import type { PriceHints } from '../../text/currency';
import { plainLabel } from '../../text/label-words';
import { priceLabels } from '../../text/page-words';
import { listOf } from '../../text/phrases';
import { type FoundPrice, parsePrices } from '../../text/price';
import { type Draft, propose } from '../draft';
import type { Area } from '../page/area';
import { attributeText, pathOf } from '../page/dom';
import type { Slices } from '../page/slices';
import { endAt, type PageElement, parentAt, type Snapshot, type TextPiece } from '../page/snapshot';
import { visibleText } from '../page/visible-text';

/** A price as the page shows it. */
export interface SeenPrice extends FoundPrice {
  /** Index of the element. */
  at: number;
  confidence: number;
  where: string;
  /** It stands by itself on its line, but for a label or a short word. */
  alone: boolean;
}

const priceName = /price|prix|preis|prezzo|precio|prijs|amount|kaufpreis|betrag|kakaku|価格/i;
const notPriceName =
  /shipping|postage|delivery|versand|livraison|unit-?price|per-?unit|tax|vat|saving|discount|installment|instalment|finance|old|was|strike|before|original|rrp|uvp|msrp/i;
const labels = new Set(listOf(...priceLabels).map(plainLabel));
const maxBlock = 90;
const maxBlocks = 400;
/** Characters beside a price on its line, beyond which the line tells of something. */
const maxBesides = 30;
/** A block of one long text is prose; a price beyond this in it is not looked for. */
const maxPriceText = 20_000;

const nameOf = (element: Element): string =>
  ['class', 'id', 'data-testid', 'data-test', 'itemprop', 'data-qa']
    .map((name) => attributeText(element, name))
    .join(' ')
    .slice(0, 400);

/** Price-named element among an element and its nearest ancestors: 'price', 'other' (shipping, before), or null. */
function namedPrice(snapshot: Snapshot, index: number): 'price' | 'other' | null {
  let step = index;
  for (let level = 0; level < 3 && step >= 0; level += 1) {
    const element = snapshot.elements[step];
    const name = element ? nameOf(element.element) : '';
    if (priceName.test(name)) return notPriceName.test(name) ? 'other' : 'price';
    if (notPriceName.test(name) && level === 0) return 'other';
    step = parentAt(snapshot, step);
  }
  return null;
}

/** Small elements whose text holds a digit: the largest ancestor of each piece that is still short. */
async function priceBlocks(snapshot: Snapshot, outside: Uint8Array, slices: Slices): Promise<number[]> {
  const { elements, pieces } = snapshot;
  const blocks = new Set<number>();
  for (const piece of pieces) {
    if (slices.due) await slices.rest();
    if (piece.shown === 'hidden' || outside[piece.at] === 1 || !/\p{Nd}/u.test(piece.text)) continue;
    let block = piece.at;
    for (let level = 0; level < 5; level += 1) {
      const parent = parentAt(snapshot, block);
      const holder = elements[parent];
      if (!holder || outside[parent] === 1 || holder.pieces[1] - holder.pieces[0] > 24) break;
      if (visibleText(snapshot, parent, { struck: true, assistive: true, outside, most: maxBlock }).length > maxBlock)
        break;
      block = parent;
    }
    blocks.add(block);
    if (blocks.size >= maxBlocks) break;
  }
  return [...blocks];
}

const formerName =
  /(^|[\s_-]|price|preis|prix)(old|was|former|before|previous|original|regular|list(?=-?p)|rrp|uvp|msrp|strike\w*|crossed|alt|ancien|vecchio|antes)(-?price|-?preis|-?prix)?($|[\s_-])/i;

/**
 * An element named as the former price, inside one named as a price, counts as struck: its line may be drawn by a picture.
 * Where no other element is named as a price it is the only one, whatever the shop calls it.
 */
async function strikeFormerPrices({ elements, pieces }: Snapshot, outside: Uint8Array, slices: Slices): Promise<void> {
  const former: TextPiece[] = [];
  let hasOther = false;
  for (const [
    index,
    {
      element,
      parent,
      pieces: [from, to],
    },
  ] of elements.entries()) {
    if (slices.due) await slices.rest();
    if (to - from > 8) continue;
    const name = attributeText(element, 'class');
    const holder = elements[parent];
    const names = `${name} ${holder ? nameOf(holder.element) : ''}`;
    if (!priceName.test(names)) continue;
    const own = pieces.slice(from, to);
    if (formerName.test(name)) former.push(...own);
    else if (outside[index] !== 1 && !notPriceName.test(names))
      hasOther ||= own.some(({ at, shown, text }) => at === index && shown === 'shown' && /\d/.test(text));
  }
  if (hasOther) for (const piece of former) piece.struck = true;
}

/** Every price that the listing's area shows, most likely first. */
export async function findSeenPrices(
  snapshot: Snapshot,
  area: Area,
  hints: PriceHints,
  slices: Slices,
): Promise<SeenPrice[]> {
  await strikeFormerPrices(snapshot, area.outside, slices);
  const found: SeenPrice[] = [];
  const headingPiece = snapshot.elements[area.heading]?.pieces[0] ?? 0;
  for (const block of await priceBlocks(snapshot, area.outside, slices)) {
    if (slices.due) await slices.rest();
    const element = snapshot.elements[block] as PageElement;
    const named = namedPrice(snapshot, block) ?? namedInside(snapshot, block);
    for (const price of pricesOfBlock(snapshot, block, area.outside, hints, named === 'price')) {
      const distance = Math.abs(element.pieces[0] - headingPiece);
      const near = area.heading < 0 ? 0.02 : distance < 60 ? 0.14 : distance < 300 ? 0.07 : 0;
      const { length, labelled } = lineOf(
        price,
        visibleText(snapshot, block, { outside: area.outside, most: maxPriceText }),
      );
      const line = (length > 60 ? -0.18 : 0) + (labelled ? 0.12 : 0);
      const unsigned = price.caveats.includes('no-currency-sign') && named !== 'price' ? -0.2 : 0;
      const byName = named === 'price' ? 0.2 : named === 'other' ? -0.15 : 0;
      const kind = price.price.kind === 'sale' ? 0 : /^(?:range|from|estimate)$/.test(price.price.kind) ? -0.1 : -0.2;
      const net = price.caveats.includes('net') ? -0.2 : 0;
      const confidence = Math.min(0.8, Math.max(0.05, 0.45 + near + line + unsigned + byName + kind + net));
      const alone = named === 'price' || length - price.words.length <= maxBesides;
      found.push({ ...price, at: block, confidence, where: pathOf(element.element), alone });
    }
  }
  return found.sort((a, b) => b.confidence - a.confidence || a.at - b.at);
}

/** Length of the line that a price stands in, and whether a label for a price stands before it there or a line above. */
function lineOf(price: FoundPrice, text: string): { length: number; labelled: boolean } {
  const at = Math.max(0, text.indexOf(price.words));
  const begin = text.lastIndexOf('\n', at) + 1;
  const end = text.indexOf('\n', at);
  const line = text.slice(begin, end < 0 ? undefined : end);
  const above = text.slice(0, begin).trim().split('\n').at(-1) ?? '';
  const before = text.slice(begin, at).trim();
  return { length: line.length, labelled: labels.has(plainLabel(before === '' ? above : before)) };
}

function namedInside(snapshot: Snapshot, block: number): 'price' | 'other' | null {
  const end = Math.min(endAt(snapshot, block), block + 12);
  for (let index = block + 1; index < end; index += 1) {
    const element = snapshot.elements[index];
    if (element && priceName.test(nameOf(element.element))) return 'price';
  }
  return null;
}

const digitsOf = (text: string): string => text.replace(/\D/g, '');

/** Prices of one block: seen text, struck text as "was", a copy for screen readers in place of split digits. */
function pricesOfBlock(
  snapshot: Snapshot,
  block: number,
  outside: Uint8Array,
  hints: PriceHints,
  isField: boolean,
): FoundPrice[] {
  const [from, to] = (snapshot.elements[block] as PageElement).pieces;
  const seen = visibleText(snapshot, block, { outside, most: maxPriceText });
  const copies = snapshot.pieces
    .slice(from, to)
    .filter((piece) => piece.shown === 'assistive' && !piece.struck && outside[piece.at] !== 1);
  const copy = copies.flatMap((piece) => parsePrices(piece.text, hints));
  const digits = digitsOf(seen);
  const standsFor = copy.find((one) => digits === '' || digits === digitsOf(one.words));
  const prices = standsFor ? [standsFor] : seenPrices(seen, hints, isField);
  const struckText = struckOf(snapshot, from, to, outside);
  const struck = seenPrices(struckText, hints, isField);
  return [...prices, ...struck.map((one) => ({ ...one, price: { ...one.price, kind: 'was' as const } }))];
}

function seenPrices(seen: string, hints: PriceHints, isField: boolean): FoundPrice[] {
  const plain = parsePrices(seen, hints);
  const found =
    isField && plain.every(({ caveats }) => caveats.includes('no-currency-sign'))
      ? fieldPrices(seen, hints, plain)
      : plain;
  const split = seen.includes('\n') && seen.length <= 24 ? parsePrices(seen.replace(/\n/g, ''), hints) : [];
  const best = split.length === 1 && (found.length !== 1 || !found[0]?.price.currencies.length) ? split : found;
  return best.filter((one) => isField || !one.caveats.includes('no-currency-sign') || seen.length < 40);
}

/** An amount with a sign of its country beside it, or with a short word that is likely one. */
const fieldLine = /^(?:\p{L}{2,4}[.:/]{0,2} ?)?(\d{1,3}(?:[ .,'’]\d{2,3}){1,3})(?: ?\p{L}{1,4}\.?)?$/u;

/** Lines of an element that is named as the price, where no sign that counts in running text stands. */
function fieldPrices(seen: string, hints: PriceHints, plain: FoundPrice[]): FoundPrice[] {
  const found = seen.split('\n').flatMap((line) => {
    const amount = fieldLine.exec(line.trim())?.[1];
    if (amount === undefined) return [];
    const signed = parsePrices(line.trim(), hints, true).filter(({ price }) => price.currencies.length > 0);
    return signed.length > 0 ? signed : parsePrices(amount, hints);
  });
  return found.length > 0 ? found : plain;
}

function struckOf(snapshot: Snapshot, from: number, to: number, outside: Uint8Array): string {
  const struck = snapshot.pieces
    .slice(from, to)
    .filter((piece) => piece.struck && piece.shown === 'shown' && outside[piece.at] !== 1);
  return struck.map((piece) => piece.text).join('');
}

/** Puts the likeliest seen prices into the draft. */
export function proposeSeenPrices(seen: readonly SeenPrice[], draft: Draft): void {
  // Nothing is sold for nothing: a zero is a fee or a basket.
  for (const { price, words, confidence, where, caveats } of seen.filter(({ price }) => price.minor > 0).slice(0, 8))
    propose(draft.price, price, { origin: 'visible', where, confidence, caveats }, words);
}
