import type { Taken } from '../../../store/taken';
import { pageOfText, readPage } from '../../../take';

const longestTitle = 120;

interface From {
  /** Where the page is from, where it does not name its own address. */
  from: string;
  /** The tab that shows it. */
  tab?: number | null;
  /** The maker of the listing that it is read for. */
  known?: string;
  day?: string;
}

/**
 * Reads a page's source: its scripts do not run, and nothing is fetched. Where it does not say plainly of which maker it
 * tells, what it proposes is of nobody, and the buyer is asked.
 */
export function takeFromSource(
  html: string,
  { from, tab = null, known = '', day = new Date().toISOString().slice(0, 10) }: From,
): Taken {
  const document = new DOMParser().parseFromString(isMarkup.test(html) ? html : pageOfText(html), 'text/html');
  const named = document.querySelector('link[rel="canonical"]')?.getAttribute('href') ?? '';
  const address = !/^https?:/.test(from) && /^https?:\/\//.test(named) ? named.slice(0, 500) : from;
  const title = (document.title.trim() || address).slice(0, longestTitle);
  const { proposals, named: makers } = readPage(document, { address, day, known });
  const open = makers.sure || makers.makers.length > 1 ? null : openName(makers);
  const likely = makers.makers[0] ?? null;
  return {
    title,
    address,
    day,
    tab,
    open,
    among: makers.sure || makers.makers.length < 2 ? [] : makers.makers,
    proposals: open ? proposals.map((one) => (one.maker === likely ? { ...one, maker: null } : one)) : proposals,
  };
}

const isMarkup = /<[a-z!][^>]{0,2000}>/i;

const openName = ({ makers, offers }: ReturnType<typeof readPage>['named']): Taken['open'] => {
  const names = offers.map(({ name }) => name);
  const likely = makers[0] ?? names[0] ?? '';
  return { likely, others: names.filter((name) => name !== likely) };
};
