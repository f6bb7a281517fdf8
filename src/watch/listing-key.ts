import { isTracking } from '../listing/tracking';

/**
 * What the addresses of one listing have in common, so that a second visit, or a list from another machine, finds the
 * saved case: without scheme, "www.", default port, trailing slash and tracking, parameters in order. The fragment
 * stays: on a single-page shop it names the piece, and two pieces taken for one would overwrite each other.
 */
export function listingKey(url: string): string {
  const match = /^https?:\/\/(?:[^/?#@]*@)?([^/?#]*)([^?#]*)(?:\?([^#]*))?(?:#(.*))?$/is.exec(url);
  if (!match) return url;
  const [, host = '', path = '', query = '', fragment = ''] = match;
  const site = host
    .toLowerCase()
    .replace(/^www\./, '')
    .replace(/:(80|443)$/, '');
  const kept = query.split('&').filter((part) => part !== '' && !isTracking(part.split('=')[0] ?? ''));
  // What follows ":~:" marks words on the page for the reader and names nothing.
  const named = fragment.replace(/:~:.*$/s, '');
  return `${site}${path.replace(/\/$/, '')}${kept.length > 0 ? `?${kept.sort().join('&')}` : ''}${named && `#${named}`}`;
}
