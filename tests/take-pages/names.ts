import { readFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';

/** The head and the words of a page, and whom it tells of: nobody, one maker, or several. */
export interface NameCase {
  id: string;
  lang: string;
  title: string;
  site?: string;
  crumbs?: string[];
  jsonLd?: object;
  headings: string[];
  text: string[];
  makers: string[];
}

const { aside, later, third, cases } = JSON.parse(readFileSync(new URL('names.json', import.meta.url), 'utf8')) as {
  aside: string[];
  later: string[];
  third: string[];
  cases: NameCase[];
};
/** Half of them, drawn by lot before any was read, and opened once. */
export const asideNames: readonly NameCase[] = cases.filter(({ id }) => aside.includes(id));
export const seenNames: readonly NameCase[] = cases.filter(
  ({ id }) => !aside.includes(id) && !later.includes(id) && !third.includes(id),
);
/** Written when the readers had been mended by all of those, and opened once. */
export const laterNames: readonly NameCase[] = cases.filter(({ id }) => later.includes(id));

/** Written later still, half of them of no maker: towns, kinds of bags and writers stand where a name would. Opened once. */
export const thirdNames: readonly NameCase[] = cases.filter(({ id }) => third.includes(id));

const escaped = (text: string) => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');

export function pageOfNames({ lang, title, site, crumbs, jsonLd, headings, text }: NameCase): Document {
  const head = [
    `<title>${escaped(title)}</title>`,
    site ? `<meta property="og:site_name" content="${escaped(site)}">` : '',
    jsonLd ? `<script type="application/ld+json">${JSON.stringify(jsonLd)}</script>` : '',
  ];
  const body = [
    crumbs
      ? `<nav class="breadcrumb"><ol>${crumbs.map((crumb) => `<li>${escaped(crumb)}</li>`).join('')}</ol></nav>`
      : '',
    ...headings.map((heading, at) => `<h${at === 0 ? 1 : 2}>${escaped(heading)}</h${at === 0 ? 1 : 2}>`),
    ...text.map((said) => `<p>${escaped(said)}</p>`),
  ];
  const html = `<!doctype html><html lang="${lang}"><head>${head.join('')}</head><body>${body.join('')}</body></html>`;
  return parseHTML(html).document as unknown as Document;
}

/** Whether these are the makers that the page tells of, in whatever order. */
export const isNamedRight = (one: NameCase, makers: readonly string[]): boolean =>
  JSON.stringify([...makers].sort()) === JSON.stringify([...one.makers].sort());
