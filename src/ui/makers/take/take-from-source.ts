import type { Taken } from '../../../store/taken';
import { takeFromPage } from '../../../take';

const longestTitle = 120;

/**
 * Reads a page's source: its scripts do not run, and nothing is fetched. A page that was brought in may name its own
 * address; `from` says where it is from otherwise.
 */
export function takeFromSource(
  html: string,
  from: string,
  tab: number | null = null,
  day = new Date().toISOString().slice(0, 10),
): Taken {
  const document = new DOMParser().parseFromString(html, 'text/html');
  const named = document.querySelector('link[rel="canonical"]')?.getAttribute('href') ?? '';
  const address = !/^https?:/.test(from) && /^https?:\/\//.test(named) ? named.slice(0, 500) : from;
  const title = (document.title.trim() || address).slice(0, longestTitle);
  return { title, address, day, tab, proposals: takeFromPage(document, { address, day }) };
}
