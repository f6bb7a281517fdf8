import type { PageSigns } from './extract-types';
import type { Gathered } from './gather-page';
import { holds } from './page/area';
import { findControls } from './page/controls';
import type { Slices } from './page/slices';
import { hasType, type Item } from './structured/item';
import { offersOf } from './structured/offer-facts';
import { headTag } from './structured/open-graph';
import type { Chosen } from './structured/which-product';
import type { SeenPrice } from './visible/price';
import { hasWordlessPrice } from './visible/price-attribute';

const articleTypes = [
  'Article',
  'NewsArticle',
  'BlogPosting',
  'Report',
  'ReportageNewsArticle',
  'TechArticle',
  'OpinionNewsArticle',
  'LiveBlogPosting',
  'ClaimReview',
  'Recipe',
];
const listTypes = ['ItemList', 'CollectionPage', 'SearchResultsPage', 'OfferCatalog'];

/** A thing that the page is, and not one that stands in another: a product's review may hold an article. */
const isRoot = ({ holder }: Item): boolean => holder === null || /^(@graph|mainentity)$/.test(holder.property);

/** Gathers what tells the kind of a page: what its structure offers, and words that are judged later. */
export async function gatherSigns(
  page: Gathered,
  chosen: Chosen,
  seen: readonly SeenPrice[],
  pointed: boolean,
  slices: Slices,
): Promise<PageSigns> {
  const { items, tags, cards, area, snapshot } = page;
  const { choice, products } = chosen;
  const own = seen.filter((one) => one.alone && !holds(snapshot, area.heading, one.at));
  const controls = await findControls(snapshot, area, slices);
  return {
    pointed,
    product: choice === null ? 'none' : products === 1 || choice.score >= 3 ? 'clear' : 'unclear',
    offered: choice !== null && offersOf(choice.product).length > 0,
    products,
    cards: cards.priced,
    ownPrice: Math.max(0, ...own.map(({ confidence }) => confidence)),
    priceWithoutWords: area.heading >= 0 && (await hasWordlessPrice(snapshot, area, slices)),
    headType: headTag(tags, 'og:type')?.slice(0, 60) ?? null,
    published: headTag(tags, 'article:published_time') !== null,
    article: items.some((item) => isRoot(item) && hasType(item, ...articleTypes)),
    list: items.some((item) => isRoot(item) && hasType(item, ...listTypes)),
    controls: controls.words,
    sells: controls.named,
    cut: slices.skipped.nodes > 0 || page.notes.some(({ code }) => code === 'data-cut'),
  };
}
