import { browser } from './api';

/** Host patterns of photo addresses, http and https alone, each once. */
export function hostPatterns(urls: readonly string[]): string[] {
  const patterns = urls.flatMap((url) => {
    if (!URL.canParse(url)) return [];
    const { protocol, hostname } = new URL(url);
    return protocol === 'https:' || protocol === 'http:' ? [`${protocol}//${hostname}/*`] : [];
  });
  return [...new Set(patterns)];
}

/** Those of the patterns whose hosts the user has not granted yet. */
export async function notGranted(patterns: readonly string[]): Promise<string[]> {
  const granted = await Promise.all(patterns.map((origin) => browser.permissions.contains({ origins: [origin] })));
  return patterns.filter((_, index) => !granted[index]);
}

/** Asks the user for the right to some hosts. Call it in the click's own call stack; false when the user says no. */
export const requestHosts = (patterns: string[]): Promise<boolean> =>
  browser.permissions.request({ origins: patterns });

/** Patterns of the hosts that the user has granted. */
export const grantedHosts = async (): Promise<string[]> => (await browser.permissions.getAll()).origins ?? [];

/** Takes the right to a host back. What the package itself asks for cannot be taken back one by one; it asks for none. */
export const takeBackHost = (pattern: string): Promise<boolean> => browser.permissions.remove({ origins: [pattern] });

/** Tells of every right that is granted or taken back; what it returns ends that. */
export function onGrants(tell: () => void): () => void {
  browser.permissions.onAdded.addListener(tell);
  browser.permissions.onRemoved.addListener(tell);
  return () => {
    browser.permissions.onAdded.removeListener(tell);
    browser.permissions.onRemoved.removeListener(tell);
  };
}
