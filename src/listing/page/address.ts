import { isTracking } from '../tracking';
import { attribute, select } from './dom';

/** The part of the platform's URL that is used here; linkedom and Node have the same. */
const parse = (address: string, base?: string): URL | null => {
  try {
    return new URL(address, base);
  } catch {
    return null;
  }
};

/**
 * An absolute http(s) address without user name and password, or null. `javascript:`, `file:`, `data:`, `blob:` and
 * addresses beyond 4,096 characters are none.
 */
export function webAddress(address: string | null | undefined, base: string): string | null {
  const trimmed = (address ?? '').trim();
  if (trimmed === '' || trimmed.length > 4096) return null;
  const url = /^[a-z][a-z\d+.-]*:/i.test(trimmed) ? parse(trimmed) : parse(trimmed, base);
  if (!url || (url.protocol !== 'http:' && url.protocol !== 'https:')) return null;
  url.username = '';
  url.password = '';
  return url.href;
}

/** The base of a page's addresses: its `<base href>` where that is http(s), otherwise the page's own address. */
export function baseOf(document: Document, pageUrl: string): string {
  const base = select(document, 'base[href]')[0];
  return (base && webAddress(attribute(base, 'href'), pageUrl)) || pageUrl;
}

/** An address for comparing pages: no scheme, "www.", fragment, tracking words, trailing slash; small-letter host. */
export function comparableAddress(address: string, base: string): string | null {
  const absolute = webAddress(address, base);
  const url = absolute === null ? null : parse(absolute);
  if (!url) return null;
  const kept = [...url.searchParams].filter(([name]) => !isTracking(name)).sort(([a], [b]) => (a < b ? -1 : 1));
  const query = kept.map(([name, value]) => `${name}=${value}`).join('&');
  const path = url.pathname.replace(/\/(index\.(html?|php))?$/, '');
  return `${url.host.replace(/^www\./, '')}${path}${query === '' ? '' : `?${query}`}`;
}

/** A test for addresses that name a page other than `pageUrl`: gives the address, or null; each is parsed once. */
export function otherPages(pageUrl: string, base: string): (address: string) => string | null {
  const own = comparableAddress(pageUrl, base);
  const known = new Map<string, string | null>();
  return (address) => {
    const remembered = known.get(address);
    if (remembered !== undefined) return remembered;
    const absolute = webAddress(address, base);
    const other = absolute !== null && comparableAddress(absolute, base) !== own ? absolute : null;
    known.set(address, other);
    return other;
  };
}

/** Whether two addresses name the same page. */
export function samePage(a: string, b: string, base: string): boolean {
  const left = comparableAddress(a, base);
  return left !== null && left === comparableAddress(b, base);
}

/** Host name in small letters without "www.", or '' when the address has none. */
export const hostOf = (address: string): string => parse(address)?.hostname.replace(/^www\./, '') ?? '';
