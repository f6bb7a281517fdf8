import { readFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import type { NamedMakers } from '../../src/take/name';

/** The head and the words of a page, and whom it tells of: nobody, one maker, or several. */
export interface NameCase {
  id: string;
  lang: string;
  title: string;
  site?: string;
  crumbs?: string[];
  jsonLd?: object;
  metas?: Record<string, string>;
  /** What its pictures are said to show. */
  alts?: string[];
  headings: string[];
  text: string[];
  /** Parts under headings of their own, each of one maker. */
  sections?: { heading: string; text: string[]; maker: string }[];
  makers: string[];
  /** Whether the page leaves open which of them it is of: then the buyer is to be asked. */
  asked?: true;
}

const { aside, later, third, fourth, fourthAside, fifth, fifthAside, sixth, sixthAside, seventh, seventhAside, cases } =
  JSON.parse(readFileSync(new URL('names.json', import.meta.url), 'utf8')) as {
    aside: string[];
    later: string[];
    third: string[];
    fourth: string[];
    fourthAside: string[];
    fifth: string[];
    fifthAside: string[];
    sixth: string[];
    sixthAside: string[];
    seventh: string[];
    seventhAside: string[];
    cases: NameCase[];
  };
/** Half of them, drawn by lot before any was read, and opened once. */
export const asideNames: readonly NameCase[] = cases.filter(({ id }) => aside.includes(id));
export const seenNames: readonly NameCase[] = cases.filter(
  ({ id }) => ![aside, later, third, fourth, fifth, sixth, seventh].some((set) => set.includes(id)),
);
/** Written when the readers had been mended by all of those, and opened once. */
export const laterNames: readonly NameCase[] = cases.filter(({ id }) => later.includes(id));

/** Written later still, half of them of no maker: towns, kinds of bags and writers stand where a name would. Opened once. */
export const thirdNames: readonly NameCase[] = cases.filter(({ id }) => third.includes(id));

/** Names told in passing, in headings of sections, in metas, alternative texts and paths; a third drawn with a seed, set aside and opened once. */
export const fourthNames: readonly NameCase[] = cases.filter(
  ({ id }) => fourth.includes(id) && !fourthAside.includes(id),
);
export const fourthAsideNames: readonly NameCase[] = cases.filter(({ id }) => fourthAside.includes(id));

/** Short heads: nouns for notes before a name, half a name, joints and possessives; of ten, only a site or an author is named. */
export const fifthNames: readonly NameCase[] = cases.filter(({ id }) => fifth.includes(id) && !fifthAside.includes(id));
/** A third of those, drawn with a seed before the first run, and opened once. */
export const fifthAsideNames: readonly NameCase[] = cases.filter(({ id }) => fifthAside.includes(id));

/** Heads over a text that names nobody. */
export const sixthNames: readonly NameCase[] = cases.filter(({ id }) => sixth.includes(id) && !sixthAside.includes(id));
/** Written when the readers had been mended by those, and opened once. */
export const sixthAsideNames: readonly NameCase[] = cases.filter(({ id }) => sixthAside.includes(id));

/** Names of files for titles, labels of objects, houses and sites that say what they make. */
export const seventhNames: readonly NameCase[] = cases.filter(
  ({ id }) => seventh.includes(id) && !seventhAside.includes(id),
);
/** A third of those, drawn with a seed before the first run. */
export const seventhAsideNames: readonly NameCase[] = cases.filter(({ id }) => seventhAside.includes(id));

const escaped = (text: string) => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');

export function pageOfNames({ lang, title, site, crumbs, jsonLd, metas = {}, ...shown }: NameCase): Document {
  const { alts = [], headings, text, sections = [] } = shown;
  const head = [
    ...Object.entries(metas).map(
      ([name, content]) => `<meta ${name.includes(':') ? 'property' : 'name'}="${name}" content="${escaped(content)}">`,
    ),
    `<title>${escaped(title)}</title>`,
    site ? `<meta property="og:site_name" content="${escaped(site)}">` : '',
    jsonLd ? `<script type="application/ld+json">${JSON.stringify(jsonLd)}</script>` : '',
  ];
  const body = [
    crumbs
      ? `<nav class="breadcrumb"><ol>${crumbs.map((crumb) => `<li>${escaped(crumb)}</li>`).join('')}</ol></nav>`
      : '',
    ...headings.map((heading, at) => `<h${at === 0 ? 1 : 2}>${escaped(heading)}</h${at === 0 ? 1 : 2}>`),
    ...alts.map((alt) => `<img src="photo.jpg" alt="${escaped(alt)}">`),
    ...text.map((said) => `<p>${escaped(said)}</p>`),
    ...sections.flatMap((section) => [
      `<h2>${escaped(section.heading)}</h2>`,
      ...section.text.map((said) => `<p>${escaped(said)}</p>`),
    ]),
  ];
  const html = `<!doctype html><html lang="${lang}"><head>${head.join('')}</head><body>${body.join('')}</body></html>`;
  return parseHTML(html).document as unknown as Document;
}

const sameNames = (one: readonly string[], other: readonly string[]): boolean =>
  JSON.stringify([...one].sort()) === JSON.stringify([...other].sort());

/** Whether these are the makers that the page tells of, in whatever order; of a page that leaves it open, whether it is asked which. */
export function isNamedRight(one: NameCase, { makers, sure, offers }: NamedMakers): boolean {
  if (!one.asked) return sameNames(one.makers, makers);
  return !sure && one.makers.every((name) => offers.some((offer) => offer.name === name));
}
