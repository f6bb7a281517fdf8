import { parseHTML } from 'linkedom';
import { type PageOptions, readListing } from '../../../src/listing';

export const now = '2026-03-01T12:00:00Z';
export const pageUrl = 'https://attic-arcade.example/item/1042';
/** What a page's language and address tell of how its words are meant. */
export const hints = { language: 'en', domain: 'attic-arcade.example' };

/** A document made from HTML without a browser. */
export const documentOf = (html: string): Document =>
  parseHTML(html.includes('<html') ? html : `<!doctype html><html><body>${html}</body></html>`)
    .document as unknown as Document;

/** The listing that is read from HTML. */
export const readHtml = (html: string, options: Partial<PageOptions> = {}) =>
  readListing(documentOf(html), { url: pageUrl, now, ...options });
