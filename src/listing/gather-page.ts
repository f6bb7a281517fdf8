import type { PageNote } from './extract-types';
import { baseOf, otherPages } from './page/address';
import { type Area, findArea, markSubtree, maxTitle } from './page/area';
import { type Cards, findCards, type OtherPage } from './page/cards';
import { property } from './page/dom';
import { type Looker, lookByStyle, type PageView } from './page/look';
import type { Budget, Slices } from './page/slices';
import { type Snapshot, takeSnapshot } from './page/snapshot';
import type { Pick } from './pick-types';
import type { Item } from './structured/item';
import { joinItems } from './structured/join';
import { readJsonLd } from './structured/json-ld';
import { readMicrodata } from './structured/microdata';
import { type HeadTags, headTag, readHeadTags } from './structured/open-graph';
import { readRdfa } from './structured/rdfa';

export interface PageOptions {
  /** The page's address. */
  url: string;
  /** Time of reading, ISO 8601. */
  now: string;
  /** The page's window, where it lays the page out; the one that this runs in unless given. */
  view?: PageView | undefined;
  /** How elements look where no window lays the page out. */
  look?: Looker | undefined;
  /** Gives closed shadow roots where the browser shows them to the caller. */
  closedShadowRoot?: ((element: Element) => ShadowRoot | null) | undefined;
  /** Gives the page its turn between slices of work. */
  pause?: (() => Promise<void>) | undefined;
  budget?: Partial<Budget> | undefined;
  /** Milliseconds, for the length of a slice; `performance.now` unless given. */
  clock?: (() => number) | undefined;
  /** What the user pointed at on this site's pages. */
  picks?: readonly Pick[] | undefined;
  /** The page had not all come when it was read. */
  stillLoading?: boolean | undefined;
  /** Text of frames of other origins, by address. */
  frameTexts?: Record<string, string> | undefined;
}

/** All that is gathered of one page before anything is judged. */
export interface Gathered {
  options: PageOptions;
  base: string;
  tags: HeadTags;
  snapshot: Snapshot;
  area: Area;
  cards: Cards;
  otherPage: OtherPage;
  items: Item[];
  titles: string[];
  pageTitle: string;
  notes: PageNote[];
}

/** Gathers data, structure and the listing's own area of a page, in slices. */
export async function gather(
  document: Document,
  options: PageOptions,
  budget: Budget,
  slices: Slices,
): Promise<Gathered> {
  const base = baseOf(document, options.url);
  const look = options.look ?? lookByStyle(options.view ?? (globalThis as unknown as PageView));
  const tags = readHeadTags(document);
  const snapshot = await takeSnapshot(document, { ...options, base, look, budget, slices });
  const data = await readJsonLd(snapshot.roots, slices);
  const items: Item[] = [...data.items];
  for (const root of snapshot.roots) {
    if (slices.due) await slices.rest();
    for (const item of await readMicrodata(root, slices)) items.push(item);
    for (const item of await readRdfa(root, slices)) items.push(item);
  }
  joinItems(items);
  const wholeTitle = property<string>(document, 'title') ?? '';
  const pageTitle = wholeTitle
    .slice(0, slices.take('characters', wholeTitle.length, maxTitle))
    .replace(/\s+/g, ' ')
    .trim();
  const titles = [pageTitle, headTag(tags, 'og:title')].filter((title): title is string => Boolean(title));
  const area = await findArea(snapshot, titles, slices);
  const otherPage = otherPages(options.url, base);
  const cards = await findCards(snapshot, area.heading, otherPage, slices);
  for (const card of cards.roots) markSubtree(snapshot, area.outside, card);
  await slices.rest();
  return { options, base, tags, snapshot, area, cards, otherPage, items, titles, pageTitle, notes: data.notes };
}
