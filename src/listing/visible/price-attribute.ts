import type { PriceHints } from '../../text/currency';
import { exponentOf } from '../../text/currency';
import { parsePrices } from '../../text/price';
import type { Area } from '../page/area';
import { attribute, attributeText, pathOf, selectSome } from '../page/dom';
import type { Slices } from '../page/slices';
import type { Snapshot } from '../page/snapshot';
import { dataPrice } from '../structured/data-price';
import type { Price } from '../types';
import type { SeenPrice } from './price';

const valueAttributes = ['data-price', 'data-product-price', 'data-price-amount', 'data-amount', 'data-sale-price'];
const currencyAttributes = ['data-currency', 'data-price-currency', 'data-currency-code'];

const confidence = 0.6;
const maxElements = 60;

/**
 * Prices that only attributes give: a label for screen readers, or a number for scripts. A whole number may count the
 * smallest coins; it is held against the prices seen and otherwise stays ambiguous.
 */
export function findAttributePrices(
  snapshot: Snapshot,
  area: Area,
  hints: PriceHints,
  seen: readonly Price[],
): SeenPrice[] {
  const found: SeenPrice[] = [];
  const selector = [...valueAttributes.map((name) => `[${name}]`), '[class*="price" i][aria-label]'].join(',');
  const elements = snapshot.roots.flatMap((root) => selectSome(root, selector, maxElements)).slice(0, maxElements);
  if (elements.length === 0) return [];
  const inArea = new Map(snapshot.elements.map(({ element }, index) => [element, index]));
  for (const element of elements) {
    const at = inArea.get(element);
    if (at === undefined || area.outside[at] === 1 || snapshot.elements[at]?.shown === 'hidden') continue;
    const where = pathOf(element);
    for (const one of parsePrices(attributeText(element, 'aria-label'), hints).slice(0, 1))
      found.push({ ...one, at, confidence, where: `${where} @aria-label`, alone: true });
    const name = valueAttributes.find((one) => attribute(element, one) !== null);
    if (name === undefined) continue;
    const text = attributeText(element, name).trim();
    const currency =
      currencyAttributes.map((one) => attribute(element, one)).find((one) => one !== null) ?? hints.currency ?? null;
    const price = dataPrice(text, currency, 'sale', hints);
    if (!price) continue;
    const known = [...seen, ...found.map((one) => one.price)];
    found.push({
      ...settleCoins(price.price, text, known),
      start: 0,
      end: text.length,
      words: text,
      at,
      confidence: confidence - 0.05,
      where: `${where} @${name}`,
      alone: true,
    });
  }
  return found;
}

/** "54000" is 54000.00, or 540.00 counted in cents: whichever is seen elsewhere, or both. */
function settleCoins(price: Price, text: string, known: readonly Price[]): { price: Price; caveats: string[] } {
  const inCoins = /^\d{3,}$/.test(text) && exponentOf(price.currency) !== 0 ? Number(text) : null;
  if (inCoins === null || known.some((one) => one.minor === price.minor)) return { price, caveats: [] };
  if (known.some((one) => one.minor === inCoins)) return { price: { ...price, minor: inCoins }, caveats: [] };
  return { price: { ...price, otherMinor: [inCoins] }, caveats: ['ambiguous'] };
}

/** Whether the page has a place for its price that holds no text: a picture, or content made by style. */
export async function hasWordlessPrice(snapshot: Snapshot, area: Area, slices: Slices): Promise<boolean> {
  for (const [index, { element, shown, pieces, end }] of snapshot.elements.entries()) {
    if ((index & 127) === 0 && slices.due) await slices.rest();
    if (shown !== 'shown' || area.outside[index] === 1 || end - index > 4) continue;
    if (!/(^|[\s_-])price($|[\s_-])/i.test(attributeText(element, 'class'))) continue;
    if (snapshot.pieces.slice(pieces[0], pieces[1]).every((piece) => piece.text.trim() === '')) return true;
  }
  return false;
}
