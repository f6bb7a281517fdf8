import type { PriceHints } from '../text/currency';
import { stockWords } from '../text/stock';
import { type Draft, type Provenance, propose } from './draft';
import type { PageExtract } from './extract-types';
import { wordLikeness } from './page/area';
import { listed, stateMeasures } from './state-measures';
import { currencyCode, dataPrice } from './structured/data-price';
import { plainText } from './structured/entities';
import { type ReadHints, readLabelled } from './visible/labelled';

type Thing = Record<string, string>;

const where = 'inline state';
const from = (path: string, confidence: number): Provenance => ({
  origin: 'json-ld',
  where: `${where} > ${path}`,
  confidence,
});
/** A description that ends so is cut. In the seven languages; common practice, no source. */
const cutEnd =
  /(?:(?:…|\.\.\.)\s{0,2})?(?:(?:see|read|show|view) more|mehr (?:anzeigen|lesen|sehen)|weiterlesen|voir plus|lire (?:la suite|plus)|afficher plus|mostra (?:altro|di più)|leggi (?:tutto|di più|altro)|ver más|leer más|mostrar más|meer (?:lezen|tonen|weergeven)|lees (?:meer|verder)|toon meer|もっと見る|続きを読む)$|(?:…|\.\.\.)$/iu;
const leastStart = 20;
const mostSearched = 30_000;

const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Completes what the page shows from its own state; what nothing shown bears out is left. */
export function readStateFacts(
  { things, texts }: PageExtract['state'],
  draft: Draft,
  hints: ReadHints,
  text: string,
): void {
  completeDescription(texts, draft);
  if (draft.description.length === 0) findCutDescription(texts, draft, text);
  const [best] = things
    .map((thing) => ({ thing, fit: fitOf(thing, draft, hints) }))
    .filter(({ fit }) => fit > 0)
    .sort((a, b) => b.fit - a.fit || Object.keys(b.thing).length - Object.keys(a.thing).length);
  if (best) readThing(best.thing, draft, hints);
}

/** A longer text whose beginning is the description that is shown as far as it goes. */
function completeDescription(texts: readonly string[], draft: Draft): void {
  const known = texts.map((text) => {
    const whole = plainText(text);
    return { whole, line: plain(whole) };
  });
  for (const shown of draft.description) {
    const start = plain(shown.value.trim().replace(cutEnd, ''));
    if (start.length < leastStart) continue;
    const [longer] = known
      .filter(({ line }) => line.startsWith(start) && line.length > start.length)
      .sort((a, b) => b.whole.length - a.whole.length);
    if (longer) {
      propose(draft.description, longer.whole, from('text', Math.min(0.97, shown.confidence + 0.05)));
      return;
    }
    if (cutEnd.test(shown.value.trim()) && !shown.caveats?.includes('cut'))
      shown.caveats = [...(shown.caveats ?? []), 'cut'];
  }
}

/** A line of the page that is cut, where nothing was taken for a description: the text that goes on where it ends. */
function findCutDescription(texts: readonly string[], draft: Draft, text: string): void {
  const starts = text
    .slice(0, mostSearched)
    .split('\n')
    .flatMap((line) => (cutEnd.test(line.trim()) ? plain(line.trim().replace(cutEnd, '')) : []))
    .filter((start) => start.length >= leastStart);
  for (const whole of texts.map((one) => plainText(one))) {
    const line = plain(whole);
    if (starts.some((start) => line.startsWith(start) && line.length > start.length)) {
      propose(draft.description, whole, from('text', 0.6));
      return;
    }
  }
}

/** The first value under a key that one of the patterns names, in their order. */
function valueUnder(thing: Thing, ...keys: RegExp[]): string | null {
  for (const pattern of keys) {
    const key = Object.keys(thing).find((one) => pattern.test(one) && (thing[one] ?? '').trim() !== '');
    if (key) return thing[key] as string;
  }
  return null;
}

const priceKeys = [
  /^(?:current_?|sale_?|selling_?|final_?)?price(?:_?(?:amount|numeric|value))?$/i,
  /^price\w*\.(?:amount|value|numeric|raw|price)$/i,
  /^(?:amount|preis|prix|prezzo|precio|prijs)$/i,
];
const titleKeys = [/^(?:title|name|subject|headline|product_?name|display_?name|titel|titre|titolo|titulo)$/i];
const currencyKeys = [/^(?:price)?_?currency(?:_?code)?$/i, /^price\w*\.currency(?:_?code)?(?:\.code)?$/i];

function priceOf(thing: Thing, hints: PriceHints) {
  const text = valueUnder(thing, ...priceKeys);
  return text === null ? null : dataPrice(text, currencyCode(valueUnder(thing, ...currencyKeys), hints), 'sale', hints);
}

/** How well a thing fits what is shown: its title has to, and its price where one is shown; 0 when it does not. */
function fitOf(thing: Thing, draft: Draft, hints: PriceHints): number {
  const title = valueUnder(thing, ...titleKeys);
  const shown = draft.title[0]?.value;
  const likeness = title && shown ? wordLikeness(title, shown) : 0;
  if (likeness < 0.6) return 0;
  const price = priceOf(thing, hints)?.price;
  const [seen] = draft.price.filter(({ value }) => value.kind === 'sale');
  if (!seen) return likeness >= 0.8 ? likeness : 0;
  // A whole number may count the smallest coins.
  const same = price && (price.minor === seen.value.minor || price.minor === seen.value.minor * 100);
  return same ? likeness + 1 : 0;
}

function readThing(thing: Thing, draft: Draft, hints: ReadHints): void {
  const say = (field: Draft['maker'], path: string, ...keys: RegExp[]) => {
    const value = valueUnder(thing, ...keys);
    if (value !== null && !/^https?:|^\d+$|^(?:true|false|null)$/i.test(value))
      propose(field, plainText(value).slice(0, 120), from(path, 0.72));
  };
  const price = priceOf(thing, hints);
  if (price && !draft.price.some(({ value }) => value.kind === 'sale'))
    propose(draft.price, price.price, { ...from('price', 0.7), caveats: price.caveats }, price.words);
  say(
    draft.maker,
    'brand',
    /^(?:brand|designer|maker|manufacturer|marke|marque|marca|merk)(?:_?(?:name|title))?$/i,
    /^(?:brand|designer|maker|manufacturer)\w*\.(?:name|title)$/i,
  );
  say(draft.colour, 'colour', /^colou?r(?:_?name)?$/i, /^colou?r\.(?:name|title)$/i);
  say(draft.material, 'material', /^material(?:_?name)?$/i, /^material\.(?:name|title)$/i);
  say(draft.model, 'model', /^model(?:_?name)?$/i, /^model\.(?:name|title)$/i);
  say(
    draft.seller.name,
    'seller',
    /^(?:seller|user|owner|shop|vendor|merchant)_?(?:name|login|username|title)$/i,
    /^(?:seller|user|owner|shop|vendor|merchant)\.(?:login|username|user_?name|name|display_?name|title)$/i,
  );
  say(
    draft.seller.place,
    'place',
    /^(?:location|city|place)(?:_?name)?$/i,
    /^(?:location|address|seller|user)\.(?:city|name|city_?name)$/i,
  );
  for (const [path, value] of Object.entries(thing)) {
    const label = listed.exec(path)?.[1];
    if (label !== undefined) readLabelled(label, value, draft, from('attributes', 0.7), hints);
  }
  if (draft.measures.length === 0)
    for (const measure of stateMeasures(thing, hints.language ?? null))
      propose(draft.measures, measure, from('size', 0.7));
  const stock = stockWords(valueUnder(thing, ...quantityKeys));
  if (stock !== null) propose(draft.availability, 'offered', from('quantity', 0.7), stock);
}

const quantityKeys = [
  /^(?:available_?|stock_?|inventory_?)?(?:quantity|qty|count|stock|inventory)(?:_?(?:available|left|level|quantity|count))?$/i,
  /^(?:stock|inventory|availability)\.(?:quantity|qty|count|available|level|quantity_?available)$/i,
  /^(?:anzahl|bestand|quantite|quantita|cantidad|existencias|aantal|voorraad)$/i,
];
