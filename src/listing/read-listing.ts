import { lookBySource } from './page/look-by-source';
import { readFacts } from './read-facts';
import { type PageOptions, readPage } from './read-page';
import type { Listing } from './types';

/**
 * Reads one page into a listing: what its structure tells (`readPage`, which needs the document), then what its words
 * say (`readFacts`, which does not). Never throws for what a page holds; what was left unread stands in `problems`.
 */
export async function readListing(document: Document, options: PageOptions): Promise<Listing> {
  const look = options.view ? undefined : lookBySource(document);
  return readFacts(await readPage(document, { look, ...options }));
}
