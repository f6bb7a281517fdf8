import type { PriceHints } from '../text/currency';
import { applyPicks } from './apply-picks';
import { type Draft, emptyDraft, settleDraft } from './draft';
import type { PageExtract, PageNote } from './extract-types';
import { type Gathered, gather, type PageOptions } from './gather-page';
import { hostOf } from './page/address';
import { maxTitle } from './page/area';
import { fingerprint } from './page/fingerprint';
import { footerText } from './page/footer';
import { isTextFrame } from './page/frames';
import { Slices, usualBudget } from './page/slices';
import { joinPieces, visibleText } from './page/visible-text';
import { pageLanguage } from './page-language';
import { gatherSigns } from './page-signs';
import { addDataPhotos, addHeadPhotos } from './photos/data-photos';
import { gatherSeenPhotos } from './photos/gather';
import { PhotoSet } from './photos/photo-set';
import { readHeadFacts } from './structured/head-facts';
import { readInlineState } from './structured/inline-state';
import { type Item, textsOf } from './structured/item';
import { type HeadTags, headTag } from './structured/open-graph';
import { type Found, readProduct } from './structured/product-facts';
import { variantsOf } from './structured/variants';
import { type Chosen, chooseProduct, describesSame } from './structured/which-product';
import type { Listing } from './types';
import { readDescriptions } from './visible/description';
import { findPairs } from './visible/pairs';
import { findSeenPrices, proposeSeenPrices, type SeenPrice } from './visible/price';
import { findAttributePrices, hasWordlessPrice } from './visible/price-attribute';
import { readTitles } from './visible/title';

const maxText = 50_000;
const maxAttempts = 3;

/** Reads what a page's structure tells: data, headings, prices, photos, and labelled words for `readFacts`. */
export async function readPage(document: Document, options: PageOptions): Promise<PageExtract> {
  const address = () => options.view?.location?.href ?? options.url;
  for (let attempt = 1; ; attempt += 1) {
    const before = fingerprint(document, address());
    const extract = await readOnce(document, { ...options, url: address() });
    if (before === fingerprint(document, address())) return extract;
    // The page became another one meanwhile: what was read is thrown away.
    if (attempt < maxAttempts) continue;
    extract.notes.push(noteOf('page-changing'));
    return extract;
  }
}

async function readOnce(document: Document, options: PageOptions): Promise<PageExtract> {
  const budget = { ...usualBudget, ...options.budget };
  const slices = new Slices(budget, options.pause, options.clock ?? (() => performance.now()));
  const page = await gather(document, options, budget, slices);
  const { snapshot, area, tags, items, notes } = page;
  const shown = { outside: area.outside, most: maxText * 1.2 };
  const text = joinPieces(snapshot, 0, snapshot.pieces.length, shown).slice(0, maxText);
  const language = pageLanguage(document, tags, text);
  const hints: PriceHints = { language, domain: hostOf(options.url), currency: dataCurrency(items, tags) };
  await slices.rest();
  const found: Found = { draft: emptyDraft(), labelled: [], hints };
  readTitles(snapshot, area, tags, page.pageTitle, found.draft);
  const seen = await findSeenPrices(snapshot, area, hints, slices);
  const known = seen.map((one) => one.price);
  seen.push(...findAttributePrices(snapshot, area, hints, known));
  await slices.rest();
  const chosen = await chooseProduct(items, factsOf(page, seen), hints, slices);
  const photos = new PhotoSet();
  const { picked, notes: unfound } = applyPicks(options.picks ?? [], page, photos, slices);
  notes.push(...unfound);
  // Who points at a title or a price says that a piece is offered here.
  const pointed = picked.some(({ field }) => field === 'title' || field === 'price');
  const signs = await gatherSigns(page, chosen, seen, pointed, slices);
  await readChosen(page, chosen, found, photos, slices);
  readHeadFacts(tags, found, []);
  proposeSeenPrices(seen, found.draft);
  await readDescriptions(snapshot, area, tags, found.draft, slices);
  await slices.rest();
  found.labelled.push(...(await findPairs(snapshot, area.outside, slices)));
  await slices.rest();
  notes.push(
    ...(await gatherSeenPhotos({ snapshot, area, otherPage: page.otherPage, base: page.base, slices }, photos)),
  );
  addHeadPhotos(tags, page.base, photos);
  const state = await readInlineState(snapshot.roots, page.base, photos, slices);
  await sayWhatIsMissing(page, found.draft, slices);
  const file = fileProblem(document);
  if (file) notes.push(noteOf(file));
  if (options.stillLoading) notes.push(noteOf('page-still-loading'));
  const { nodes, attributes, characters } = slices.skipped;
  const cut = { nodesRead: nodes > 0 ? budget.nodes : null, attributes, characters };
  const listing: Listing = {
    format: 1,
    url: options.url,
    readAt: options.now,
    kind: 'listing',
    language,
    text,
    ...settleDraft(found.draft),
    photos: photos.links(),
    problems: [],
  };
  const labelled = found.labelled.slice(0, 400);
  return { listing, labelled, signs, notes, cut, state, picked, footer: footerText(snapshot) };
}

const noteOf = (code: PageNote['code'], where = 'page', count = 0): PageNote => ({ code, where, count });

/** A tab may show a file without a page: browsers then make a document around it. */
function fileProblem({ contentType }: Document): PageNote['code'] | null {
  if (contentType?.startsWith('image/') && contentType !== 'image/svg+xml') return 'page-is-picture';
  return contentType === 'application/pdf' ? 'page-is-pdf' : null;
}

const factsOf = ({ options, base, titles, snapshot, area }: Gathered, seen: readonly SeenPrice[]) => ({
  url: options.url,
  base,
  titles,
  heading: area.heading >= 0 ? visibleText(snapshot, area.heading, { most: maxTitle }) : null,
  seen: seen.map((one) => one.price),
});

/** Reads the chosen product, those that tie with it, and other notations of the same piece. */
async function readChosen(
  { items, base, notes }: Gathered,
  chosen: Chosen,
  found: Found,
  photos: PhotoSet,
  slices: Slices,
): Promise<void> {
  if (!chosen.choice) return;
  const { product, stale } = chosen.choice;
  const say = (code: PageNote['code'], count = 0) => notes.push(noteOf(code, product.where, count));
  if (chosen.tie.length > 0) say('which-product', chosen.tie.length);
  if (stale) say('data-stale');
  if (variantsOf(product).length > 1) say('pick-the-variant', variantsOf(product).length);
  const caveats = [...(stale ? ['stale'] : []), ...(chosen.tie.length > 0 ? ['tie'] : [])];
  readProduct(product, found, 1, caveats);
  for (const other of chosen.tie) if (other.product !== product) readProduct(other.product, found, 0.95, ['tie']);
  if (!stale) addDataPhotos(product, base, photos);
  for (const item of items) {
    if (slices.due) await slices.rest();
    if (item.origin === product.origin || !describesSame(item, product)) continue;
    readProduct(item, found, 1, caveats);
    if (!stale) addDataPhotos(item, base, photos);
  }
}

/** Says what the page has a place for and does not give. */
async function sayWhatIsMissing({ snapshot, area, notes }: Gathered, draft: Draft, slices: Slices): Promise<void> {
  if (draft.price.length === 0 && (await hasWordlessPrice(snapshot, area, slices)))
    notes.push(noteOf('price-not-in-text', 'price'));
  const seen = draft.description.some((one) => one.origin === 'visible');
  for (const { at, address } of snapshot.unreadFrames)
    if (area.outside[at] !== 1 && isTextFrame(snapshot, at, seen)) notes.push(noteOf('frame-not-read', address));
}

/** The currency that all of the page's data agrees on, if there is one. */
function dataCurrency(items: readonly Item[], tags: HeadTags): string | undefined {
  const named = items.flatMap((item) => textsOf(item, 'priceCurrency'));
  const head = headTag(tags, 'product:price:currency', 'og:price:currency');
  const codes = new Set([...named, ...(head ? [head] : [])].map((code) => code.trim().toUpperCase()));
  const [only] = codes;
  return codes.size === 1 && only && /^[A-Z]{3}$/.test(only) ? only : undefined;
}

export type { PageOptions };
