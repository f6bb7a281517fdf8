import { type Draft, propose } from '../draft';
import type { Area } from '../page/area';
import { maxTitle, wordLikeness } from '../page/area';
import { pathOf } from '../page/dom';
import type { Snapshot } from '../page/snapshot';
import { visibleText } from '../page/visible-text';
import { type HeadTags, headTag } from '../structured/open-graph';

/** Of the parts of a page's `<title>` the one that stands by itself in what is on offer; null where none or several do. */
function partOnPage(snapshot: Snapshot, area: Area, title: string): string | null {
  const parts = partsOf(title);
  if (parts.length < 2) return null;
  const standing = new Set<string>();
  for (const [index, { shown, pieces }] of snapshot.elements.entries()) {
    if (shown !== 'shown' || area.outside[index] === 1 || pieces[1] - pieces[0] > mostPieces) continue;
    const words = visibleText(snapshot, index, { most: maxTitle }).replace(/\s+/g, ' ').trim();
    if (parts.includes(words)) standing.add(words);
  }
  return standing.size === 1 ? ([...standing][0] as string) : null;
}
const mostPieces = 4;

const partsOf = (title: string): string[] =>
  title
    .replace(/\s+/g, ' ')
    .split(/ [|–—•·»-] |\|/)
    .map((part) => part.trim())
    .filter((part) => part !== '');

/** A page's `<title>` without the shop's name behind a separator; the longest part wins. */
export function titleWithoutSite(title: string, site: string | null): string {
  const plain = title.replace(/\s+/g, ' ').trim();
  const parts = partsOf(plain);
  if (parts.length < 2) return plain;
  const kept = parts.filter((part) => site === null || wordLikeness(part, site) < 0.99);
  const longest = (kept.length > 0 ? kept : parts).reduce((a, b) => (b.length > a.length ? b : a));
  return longest.trim();
}

/** Title candidates of the head and of the seen heading. */
export function readTitles(snapshot: Snapshot, area: Area, tags: HeadTags, pageTitle: string, draft: Draft): void {
  const site = headTag(tags, 'og:site_name', 'application-name');
  const heading = snapshot.elements[area.heading];
  if (heading) {
    const words = visibleText(snapshot, area.heading, { most: maxTitle }).replace(/\s+/g, (blanks) =>
      blanks.includes('\n') ? ' ' : blanks,
    );
    propose(draft.title, words.slice(0, maxTitle), {
      origin: 'visible',
      where: pathOf(heading.element),
      confidence: heading.tag === 'h1' ? 0.82 : 0.6,
    });
  }
  const graph = headTag(tags, 'og:title', 'twitter:title')?.slice(0, maxTitle);
  if (graph)
    propose(draft.title, titleWithoutSite(graph, site), { origin: 'open-graph', where: 'og:title', confidence: 0.7 });
  const standing = pageTitle && !heading ? partOnPage(snapshot, area, pageTitle) : null;
  if (pageTitle)
    propose(draft.title, standing ?? titleWithoutSite(pageTitle, site), {
      origin: 'meta',
      where: 'title',
      confidence: 0.45,
    });
}
