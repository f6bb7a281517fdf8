import { browser } from '../browser/api';

/** What the extension keeps under names that begin alike, with the rest of each name. */
export async function keptUnder(prefix: string): Promise<[rest: string, value: unknown][]> {
  const all = await browser.storage.local.get(null);
  return Object.entries(all).flatMap(([key, value]) =>
    key.startsWith(prefix) ? [[key.slice(prefix.length), value]] : [],
  );
}

/** Tells when one of them was written or removed, on whatever page; what it returns ends that. */
export function onKeptUnder(prefix: string, tell: () => void): () => void {
  const heard = (changes: Record<string, unknown>) => {
    if (Object.keys(changes).some((key) => key.startsWith(prefix))) tell();
  };
  browser.storage.local.onChanged.addListener(heard);
  return () => browser.storage.local.onChanged.removeListener(heard);
}
