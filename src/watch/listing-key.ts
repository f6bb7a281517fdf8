import { isTracking } from '../listing/tracking';

/**
 * The address of a listing without tracking, so that a second visit finds the saved case. The fragment stays: on a
 * single-page shop it names the piece, and two pieces taken for one would overwrite each other.
 */
export function listingKey(url: string): string {
  const match = /^([^?#]*)(?:\?([^#]*))?(?:#(.*))?$/s.exec(url);
  if (!match) return url;
  const [, address = '', query = '', fragment = ''] = match;
  const kept = query.split('&').filter((part) => part !== '' && !isTracking(part.split('=')[0] ?? ''));
  return `${address}${kept.length > 0 ? `?${kept.sort().join('&')}` : ''}${fragment ? `#${fragment}` : ''}`;
}
