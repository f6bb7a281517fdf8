import { readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import { parseHTML } from 'linkedom';
import { parse, serialize } from 'parse5';
import { type Listing, readListing } from '../listing';
import { webAddressSchema } from '../listing/types';
import { fail, type Result, succeed } from '../problem';
import { whyNotOpened } from './file-text';

/** A larger file is no page that a person saved. */
const mostBytes = 30_000_000;

/** A saved page with the address that it was saved from, or its own statement of it. */
export interface SavedPage {
  document: Document;
  address: string;
}

/** Opens a saved page. A file that is missing or not a page is a Problem. */
export function openSavedPage(path: string, url: string | undefined): Result<SavedPage> {
  if (url !== undefined && !webAddressSchema.safeParse(url).success) return fail(noAddress(url));
  const read = readPageText(path);
  if (!read.ok) return read;
  const { document } = parseHTML(withAllTags(read.value));
  const address = url ?? ownAddress(read.value) ?? `https://saved-page.example/${encodeURIComponent(basename(path))}`;
  return succeed({ document: document as unknown as Document, address });
}

/**
 * Reads a saved page into a listing. `url` is the address that it was saved from; without one the page's own
 * statement of its address is taken, else an address under `saved-page.example`, so that relative addresses resolve.
 * A file that is missing or not a page is a Problem.
 */
export async function readSavedPage(path: string, url: string | undefined, now: string): Promise<Result<Listing>> {
  const page = openSavedPage(path, url);
  if (!page.ok) return page;
  return succeed(await readListing(page.value.document, { url: page.value.address, now }));
}

const noAddress = (url: string) => ({
  code: 'page-address',
  where: '--url',
  what: `"${url}" is no web address (http or https)`,
  remedy: 'Give the address that the page was saved from, or leave --url out.',
});

/** A page may leave out the tags of its body and head (HTML, 13.1.2.4 Optional tags); linkedom puts in none. */
const withAllTags = (html: string): string =>
  /<html[\s>]/i.test(html) && /<body[\s>]/i.test(html) ? html : serialize(parse(html));

function readPageText(path: string): Result<string> {
  const remedy = 'Save the listing as a web page (HTML) and give that file.';
  const refuse = (code: string, what: string) => fail({ code, where: path, what, remedy });
  let bytes: Buffer;
  try {
    if (statSync(path).size > mostBytes) return refuse('page-too-large', 'the file is larger than 30 MB');
    bytes = readFileSync(path);
  } catch (error) {
    return refuse('page-missing', whyNotOpened(error));
  }
  const text = decodeBytes(bytes);
  if (text.includes('\0') || !/<(!doctype\s+html|html|head|body|title|meta|div|main|article|h1|p)[\s>]/i.test(text))
    return refuse('page-not-html', 'the file is not an HTML page');
  return succeed(text);
}

/** UTF-8 unless a byte order mark or the page's own charset says otherwise. */
function decodeBytes(bytes: Buffer): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  const charset = /<meta[^>]{0,200}charset\s*=\s*["']?([a-z0-9_-]{2,30})/i.exec(
    bytes.subarray(0, 4096).toString('latin1'),
  )?.[1];
  try {
    return new TextDecoder(charset ?? 'utf-8').decode(bytes);
  } catch {
    return new TextDecoder('utf-8').decode(bytes);
  }
}

/** The address that browsers write into a saved page, or that the page names as its canonical one. */
function ownAddress(html: string): string | null {
  const head = html.slice(0, 200_000);
  const saved = /<!-- saved from url=\(\d+\)(https?:\/\/[^\s>]+) -->/.exec(head)?.[1];
  const canonical = /<link\b[^>]{0,500}rel=["']?canonical["']?[^>]{0,500}>/i.exec(head)?.[0];
  const href = canonical && /href=["']?(https?:\/\/[^"'\s>]+)/i.exec(canonical)?.[1];
  return saved ?? href ?? null;
}
