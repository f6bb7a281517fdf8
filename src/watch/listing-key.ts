import { isTracking } from '../listing/tracking';

/**
 * What the addresses of one listing have in common, so that a second visit, or a list from another machine, finds the
 * saved case: without scheme, "www.", default port, trailing slash and tracking, parameters in order. The fragment
 * stays: on a single-page shop it names the piece, and two pieces taken for one would overwrite each other.
 */
export function listingKey(url: string): string {
  const scheme = /^https?:\/\//i.exec(url)?.[0];
  if (scheme === undefined) return url;
  const [address, fragment] = cut(url.slice(scheme.length), '#');
  const [place, query] = cut(address, '?');
  const [host, path] = cut(place, '/');
  const site = host.slice(host.lastIndexOf('@') + 1).toLowerCase();
  const kept = query.split('&').filter((part) => part !== '' && !isTracking(cut(part, '=')[0]));
  // What follows ":~:" marks words on the page for the reader and names nothing.
  const named = cut(fragment, ':~:')[0];
  return [
    site.replace(/^www\./, '').replace(/:(80|443)$/, ''),
    path === '' ? '' : `/${path.endsWith('/') ? path.slice(0, -1) : path}`,
    kept.length > 0 ? `?${kept.sort().join('&')}` : '',
    named === '' ? '' : `#${named}`,
  ].join('');
}

/** What stands before the first `sign` and what stands behind it. */
function cut(words: string, sign: string): [string, string] {
  const at = words.indexOf(sign);
  return at < 0 ? [words, ''] : [words.slice(0, at), words.slice(at + sign.length)];
}
