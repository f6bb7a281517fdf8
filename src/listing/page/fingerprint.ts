import { property, selectSome, textContent } from './dom';

const maxMarks = 8;
const maxScripts = 100;

/** Pages keep their scroll, a filter or the time in the query while they show the same piece. */
const withoutQuery = (address: string): string => address.replace(/[?#].*/s, '');

/**
 * What tells one state of a page from the next: its path, title, headings, prices and the number of its data scripts.
 * Cheap, and blind to the rest, so that a page in endless motion still counts as the same while these stand.
 */
export function fingerprint(document: Document, address: string): string {
  const words = (selector: string) =>
    selectSome(document, selector, maxMarks).map((element) => textContent(element).slice(0, 400).trim().slice(0, 200));
  const scripts = selectSome(document, 'script[type*="ld+json" i]', maxScripts).length;
  return JSON.stringify([
    withoutQuery(address),
    (property<string>(document, 'title') ?? '').slice(0, 400),
    words('h1'),
    words('[class*="price" i], [itemprop="price"]'),
    scripts,
  ]);
}
