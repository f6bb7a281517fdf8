import { browser } from '../browser/api';

/**
 * How many characters a site's box for messages takes, as the buyer said it of that site. Kept by its host; asked for
 * again in a private window, where nothing is kept.
 */
const key = (host: string) => `message-limit-${host}`;

export async function readMessageLimit(host: string): Promise<number | null> {
  const stored: unknown = (await browser.storage.local.get(key(host)))[key(host)];
  return typeof stored === 'number' && Number.isInteger(stored) && stored > 0 ? stored : null;
}

/** Null where the site has none. */
export const keepMessageLimit = (host: string, most: number | null): Promise<void> =>
  most === null ? browser.storage.local.remove(key(host)) : browser.storage.local.set({ [key(host)]: most });
