import type { Problem } from '../problem';
import { type Draft, emptyDraft, settleDraft } from './draft';
import { baseOf, hostOf } from './page/address';
import { findArea, markSubtree, wordLikeness } from './page/area';
import { findCards, showsPrice } from './page/cards';
import { property } from './page/dom';
import { lookBySource, lookByStyle, type PageView } from './page/look';
import { type Budget, Slices, usualBudget } from './page/slices';
import { takeSnapshot } from './page/snapshot';
import { joinPieces, visibleText } from './page/visible-text';
import { pageLanguage } from './page-language';
import { addDataPhotos, addHeadPhotos } from './photos/data-photos';
import { gatherSeenPhotos } from './photos/gather';
import { PhotoSet } from './photos/photo-set';
import { readHeadFacts } from './structured/head-facts';
import { type Item, textsOf } from './structured/item';
import { readJsonLd } from './structured/json-ld';
import { readMicrodata } from './structured/microdata';
import { type HeadTags, headTag, readHeadTags } from './structured/open-graph';
import { readProduct } from './structured/product-facts';
import { readRdfa } from './structured/rdfa';
import { chooseProduct } from './structured/which-product';
import type { Listing } from './types';
import { readDescriptions } from './visible/description';
import type { ReadHints } from './visible/labelled';
import { readSeenPairs, readSeenPrices, readStatedMeasures } from './visible/seen-facts';
import { readTitles } from './visible/title';

export interface ReadOptions {
  /** The page's address. */
  url: string;
  /** Time of reading, ISO 8601. */
  now: string;
  /** The page's window where it lays the page out; without one, style is judged from the source. */
  view?: PageView | undefined;
  /** Gives closed shadow roots where the browser shows them to the caller. */
  closedShadowRoot?: ((element: Element) => ShadowRoot | null) | undefined;
  /** Gives the page its turn between slices of work. */
  pause?: (() => Promise<void>) | undefined;
  budget?: Partial<Budget> | undefined;
  /** Milliseconds, for the budget; `performance.now` unless given. */
  clock?: (() => number) | undefined;
  /** Text of frames of other origins, by address. */
  frameTexts?: Record<string, string> | undefined;
}

const maxText = 50_000;

/** Reads one page into a listing. Never throws for what a page holds; what was left unread stands in `problems`. */
export async function readListing(document: Document, options: ReadOptions): Promise<Listing> {
  const budget = { ...usualBudget, ...options.budget };
  const slices = new Slices(budget, options.pause, options.clock ?? (() => performance.now()));
  const base = baseOf(document, options.url);
  const tags = readHeadTags(document);
  const look = options.view ? lookByStyle(options.view) : lookBySource(document);
  const snapshot = await takeSnapshot(document, { ...options, base, look, budget, slices });
  const problems: Problem[] = [...snapshot.problems];

  const data = await readJsonLd(snapshot.roots, slices);
  problems.push(...data.problems);
  const items: Item[] = [...data.items];
  for (const root of snapshot.roots) {
    items.push(...(await readMicrodata(root, slices)));
    items.push(...(await readRdfa(root, slices)));
  }

  const pageTitle = (property<string>(document, 'title') ?? '').replace(/\s+/g, ' ').trim();
  const titles = [pageTitle, headTag(tags, 'og:title') ?? ''].filter((title) => title !== '');
  const area = findArea(snapshot, titles);
  const cards = findCards(snapshot, area.heading, options.url, base);
  for (const card of cards.roots) markSubtree(snapshot, area.outside, card);
  await slices.rest();

  const text = joinPieces(snapshot, 0, snapshot.pieces.length, { outside: area.outside }).slice(0, maxText);
  const language = pageLanguage(document, tags, text);
  const hints: ReadHints = {
    now: options.now.slice(0, 10),
    language,
    domain: hostOf(options.url),
    currency: dataCurrency(items, tags),
  };
  const draft = emptyDraft();
  readTitles(snapshot, area, tags, pageTitle, draft);
  const seen = readSeenPrices(snapshot, area, draft, hints);
  await slices.rest();

  const heading = area.heading >= 0 ? visibleText(snapshot, area.heading) : null;
  const facts = { url: options.url, base, heading, titles, seen: seen.map((one) => one.price) };
  const chosen = chooseProduct(items, facts, hints);
  const photos = new PhotoSet();
  const pricedCards = cards.roots.filter((card) => showsPrice(snapshot, card)).length;
  const ownPrice = seen.some((one) => one.confidence >= 0.45);
  const kind = kindOf(draft, chosen, pricedCards, ownPrice);
  if (kind === 'listing' && chosen.choice) {
    const { product, stale } = chosen.choice;
    if (chosen.tie.length > 0) problems.push(tieProblem(chosen.tie.length));
    if (stale) problems.push(staleProblem(product.where));
    const caveats = [...(stale ? ['stale'] : []), ...(chosen.tie.length > 0 ? ['tie'] : [])];
    readProduct(product, draft, hints, 1, caveats);
    for (const other of chosen.tie)
      if (other.product !== product) readProduct(other.product, draft, hints, 0.95, ['tie']);
    if (!stale) addDataPhotos(product, base, photos);
    for (const item of items)
      if (item !== product && item.origin !== product.origin && chosenTwin(item, product)) {
        readProduct(item, draft, hints, 1, caveats);
        addDataPhotos(item, base, photos);
      }
  }
  if (kind === 'listing') {
    readHeadFacts(tags, draft, hints, []);
    readDescriptions(snapshot, area, tags, draft);
    readSeenPairs(snapshot, area, draft, hints);
    await slices.rest();
    problems.push(...(await gatherSeenPhotos({ snapshot, area, pageUrl: options.url, base }, photos, slices)));
    addHeadPhotos(tags, base, photos);
    const settledDescription = settleDraft(draft).description[0]?.value ?? '';
    readStatedMeasures(draft, settledDescription, hints);
  }
  problems.push(...kindProblems(kind));
  const settled = settleDraft(draft);
  settleConflicts(settled, problems);
  return {
    format: 1,
    url: options.url,
    readAt: options.now,
    kind,
    language,
    text,
    photos: photos.links(),
    ...(kind === 'listing' ? settled : settleDraft({ ...emptyDraft(), title: draft.title })),
    problems,
  };
}

/** The currency that all of the page's data agrees on, if there is one. */
function dataCurrency(items: readonly Item[], tags: HeadTags): string | undefined {
  const named = items.flatMap((item) => textsOf(item, 'priceCurrency'));
  const head = headTag(tags, 'product:price:currency', 'og:price:currency');
  const codes = new Set([...named, ...(head ? [head] : [])].map((code) => code.trim().toUpperCase()));
  const [only] = codes;
  return codes.size === 1 && only && /^[A-Z]{3}$/.test(only) ? only : undefined;
}

const chosenTwin = (item: Item, product: Item): boolean => {
  const name = item.properties.get('name')?.[0];
  const other = product.properties.get('name')?.[0];
  return (
    item.types.some((type) => product.types.includes(type)) &&
    typeof name === 'string' &&
    typeof other === 'string' &&
    wordLikeness(name, other) > 0.8
  );
};

function kindOf(
  draft: Draft,
  chosen: ReturnType<typeof chooseProduct>,
  pricedCards: number,
  ownPrice: boolean,
): Listing['kind'] {
  if (chosen.choice && (chosen.products === 1 || chosen.choice.score >= 3)) return 'listing';
  if (pricedCards >= 4 && !ownPrice) return 'list';
  if (chosen.choice && pricedCards < 4) return 'listing';
  if (pricedCards >= 8 && !chosen.choice) return 'list';
  if (!chosen.choice && chosen.products >= 3) return 'list';
  return ownPrice && draft.title.length > 0 ? 'listing' : 'none';
}

function kindProblems(kind: Listing['kind']): Problem[] {
  if (kind === 'listing') return [];
  return [
    {
      code: kind === 'list' ? 'page-is-a-list' : 'no-listing',
      where: 'page',
      what:
        kind === 'list'
          ? 'This page offers many pieces; it is not a listing of one.'
          : 'No listing was found on this page.',
      remedy:
        kind === 'list'
          ? 'Open one of the listings and read that page.'
          : 'Open a listing, or point at its title and price on the page.',
    },
  ];
}

const tieProblem = (count: number): Problem => ({
  code: 'which-product',
  where: 'data',
  what: `The page's data describes ${count} pieces that fit this page equally well.`,
  remedy: 'Point at the price and the title of the piece that you mean.',
});

const staleProblem = (where: string): Problem => ({
  code: 'data-stale',
  where,
  what: "The page's data describes another piece than the one shown; it was left from a page seen before.",
  remedy: 'What the page shows was used. Reload the page to get its own data.',
});

/** A price of the data that is not the one seen: both stay, and it is said. */
function settleConflicts(draft: Draft, problems: Problem[]): void {
  const sale = draft.price.filter((one) => one.value.kind === 'sale');
  const data = sale.find((one) => one.origin !== 'visible' && !one.caveats?.includes('stale'));
  const seen = sale.find((one) => one.origin === 'visible' && one.confidence >= 0.6);
  if (!data || !seen || data.value.minor === seen.value.minor) return;
  for (const one of [data, seen]) one.caveats = [...(one.caveats ?? []), 'conflict'];
  problems.push({
    code: 'price-conflict',
    where: 'price',
    what: `The page's data gives another price (${data.words ?? data.value.minor}) than the page shows (${seen.words ?? seen.value.minor}).`,
    remedy: 'Ask the seller for the price, or point at the right one.',
  });
}
