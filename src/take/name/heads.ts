import { attributeText, select, textContent } from '../../listing/page/dom';
import { foldWords } from '../../text';
import { type Block, headingsOf } from '../page/blocks';
import { textOfCell } from '../page/grid';
import { titleOfFile } from './file-title';
import { isCommon, makerLabels } from './words';

/** Where a page says what it is about, or whose it is. */
export type HeadKind =
  | 'heading'
  | 'title'
  | 'site'
  | 'crumb'
  | 'brand'
  | 'section'
  | 'opening'
  | 'summary'
  | 'picture'
  | 'author';
export interface Head {
  kind: HeadKind;
  text: string;
}

/** A heading longer than this names nobody any more. */
const longestHead = 200;
/** A page without headings has one all the same: a short line at its top. */
const longestOpening = 80;
const mostSections = 60;
const mostCrumbs = 12;
const mostColumns = 12;
const mostPictures = 12;
const mostLinks = 40;
const mostLabels = 200;
const longestScript = 40_000;
const between = /\s[|–—»·-]\s|\s?[|｜»]\s?|\s::\s/u;
const plain = (text: string) => text.toLowerCase().replace(/[^\p{L}\d]/gu, '');

/** The pieces of a title: what the page is about, and the site that it stands on. */
function ofTitle(title: string, main: string, site: string): Head[] {
  const pieces = title
    .slice(0, longestHead)
    .split(between)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '');
  const isMain = (piece: string) => plain(piece) === plain(main) || plain(main).startsWith(plain(piece));
  const holdsMain = (piece: string) => plain(main).length > 3 && plain(piece).includes(plain(main));
  const exact = pieces.findIndex(isMain);
  const own = exact >= 0 ? exact : pieces.findIndex(holdsMain);
  return pieces.map((text, at) => {
    const named = site !== '' && plain(site) === plain(text);
    // Behind the page's own heading stands the site.
    return { kind: named || (own >= 0 && at > own) ? 'site' : 'title', text };
  });
}

const makerKeys = new Set(['brand', 'manufacturer', 'about', 'mentions']);
const siteTypes = /Organization|WebSite|Brand|Corporation|Store/;

/** Names of brands and makers in a page's structured data, and of whose page it is. */
function inJsonLd(value: unknown, key: string, depth: number): Head[] {
  if (depth > 8 || value === null || typeof value !== 'object') return [];
  if (Array.isArray(value)) return value.slice(0, 40).flatMap((one) => inJsonLd(one, key, depth + 1));
  const { name, '@type': type } = value as { name?: unknown; '@type'?: unknown };
  const own: Head[] =
    typeof name !== 'string' || name.length > 80
      ? []
      : makerKeys.has(key)
        ? [{ kind: 'brand', text: name }]
        : siteTypes.test(String(type))
          ? [{ kind: 'site', text: name }]
          : [];
  return [
    ...own,
    ...Object.entries(value as object)
      .slice(0, 60)
      .flatMap(([inner, one]) => inJsonLd(one, inner, depth + 1)),
  ];
}

function ofData(document: Document): Head[] {
  return select(document, 'script[type="application/ld+json"]')
    .slice(0, 8)
    .flatMap((script) => {
      const text = textContent(script);
      if (text.length > longestScript) return [];
      try {
        return inJsonLd(JSON.parse(text), '', 0);
      } catch {
        return [];
      }
    });
}

/** Metas that say what a page shows, whose piece, and who wrote it. */
const metas: readonly [HeadKind, string[]][] = [
  ['summary', ['description', 'og:description']],
  ['brand', ['product:brand', 'og:brand', 'brand']],
  ['author', ['author', 'article:author']],
];

const metaNamed = (document: Document, names: readonly string[]): string[] =>
  names
    .flatMap((name) => select(document, ['name', 'property', 'itemprop'].map((key) => `meta[${key}="${name}"]`).join()))
    .slice(0, 2)
    .map((meta) => attributeText(meta, 'content', longestHead));

/** What pictures of the page's own body are said to show; a drawing of the site's name shows nobody's piece. */
const ofPictures = (document: Document): Head[] =>
  select(document, 'body img[alt]')
    .slice(0, mostPictures)
    .map((picture) => attributeText(picture, 'alt', longestOpening))
    .filter((text) => !/logo/i.test(text))
    .map((text) => ({ kind: 'picture', text }));

const crumbs = [
  '[class*="crumb"] a',
  '[class*="crumb"] li',
  'nav[aria-label*="readcrumb"] li',
  '[itemtype*="BreadcrumbList"] [itemprop="name"]',
].join(', ');

/** "Maker Corrimoor", an entry of a list of facts, in which no colon parts the label. */
const labelledItem = /^(\p{L}{3,20})[:：]?\s(\p{Lu}[\p{L}'’&.-]{1,24}(?:\s(?:[&+]\s)?\p{Lu}[\p{L}'’.-]{1,24}){0,3})$/u;
/** "Maker: X", as a term with its definition, as a row of a label and what it says, or as an entry of a list. */
function ofLabels(blocks: readonly Block[]): Head[] {
  const pairs = blocks.flatMap((block) => {
    if (block.kind === 'definitions') return block.pairs.map(({ term, words }) => [term.text, words.text]);
    if (block.kind === 'list')
      return block.items.flatMap(({ text }) => {
        const [, label, name] = text.length > longestOpening ? [] : (labelledItem.exec(text.trim()) ?? []);
        return name === undefined || isCommon(name.split(' ')[0] as string) ? [] : [[label, name]];
      });
    if (block.kind !== 'table') return [];
    return block.rows.flatMap((row) => (row.length === 2 ? [row.map(textOfCell)] : []));
  });
  return pairs
    .slice(0, mostLabels)
    .filter(([label, value]) => isLabelOfMaker(label!) && value! !== '' && value!.length <= longestOpening)
    .slice(0, 2)
    .map(([, value]) => ({ kind: 'brand', text: value!.split(/[,;(]/, 1)[0]!.trim() }));
}
const isLabelOfMaker = (label: string): boolean =>
  label.length <= 24 && makerLabels.has(foldWords(label.replace(/[\s:：]{1,4}$/u, '')).text);

const home = /^(?:\.{0,2}\/|(?:\.\/)?(?:index|home|default)\.(?:html?|php|aspx?))$/i;
/** The words of the first links to a site's own first page: its name, or words for going there. */
const ofHome = (document: Document): Head[] =>
  select(document, 'a[href]')
    .slice(0, mostLinks)
    .filter((link) => home.test(attributeText(link, 'href', 60)))
    .slice(0, 2)
    .map((link) => ({ kind: 'site', text: textContent(link).trim().slice(0, longestOpening) }));

/** The first heading of a page without one of the first level; none where a table stands before it, which it does not head. */
function headOfAll(blocks: readonly Block[], headings: readonly string[]): string | undefined {
  const at = blocks.findIndex(({ kind }) => kind === 'heading');
  return blocks.slice(0, Math.max(0, at)).some(({ kind }) => kind === 'table') ? undefined : headings[0];
}

/** All that a page is headed with. */
export function headsOf(document: Document, written: string, blocks: readonly Block[]): Head[] {
  const title = titleOfFile(written);
  const headings = headingsOf(blocks).map((text) => text.slice(0, longestHead));
  // What a page calls its first is before what stands at its side.
  const first = blocks.find((block) => block.kind === 'heading' && block.level === 1);
  const main = (first?.kind === 'heading' ? first.words.text.slice(0, longestHead) : headOfAll(blocks, headings)) ?? '';
  const own = headings.indexOf(main);
  const sections = headings.filter((_, at) => at !== own);
  const [meta] = select(document, 'meta[property="og:site_name"], meta[name="application-name"]');
  const site = meta ? attributeText(meta, 'content', 120) : '';
  const [top] = blocks;
  const [line = ''] = top?.kind === 'paragraph' || top?.kind === 'heading' ? top.words.text.split('\n') : [];
  const path = select(document, crumbs)
    .slice(0, mostCrumbs)
    .map((one) => textContent(one).trim().slice(0, 80));
  // Columns of a table that the main heading names: "X and Y compared".
  const columns = blocks
    .flatMap((block) => (block.kind === 'table' ? (block.rows[0] ?? []).slice(1, mostColumns).map(textOfCell) : []))
    .slice(0, mostSections)
    .filter((text) => text.length > 2 && text.length <= longestOpening && main.includes(text));
  return [
    { kind: 'heading' as const, text: main },
    ...ofTitle(title, main, site),
    { kind: 'site' as const, text: site },
    ...ofHome(document),
    ...metaNamed(document, ['og:title', 'twitter:title']).flatMap((text) => ofTitle(text, main, site)),
    ...metas.flatMap(([kind, names]) => metaNamed(document, names).map((text) => ({ kind, text }))),
    ...ofData(document).slice(0, 8),
    ...ofLabels(blocks),
    ...path.map((text) => ({ kind: plain(text) === plain(site) ? ('site' as const) : ('crumb' as const), text })),
    ...sections.slice(0, mostSections).map((text) => ({ kind: 'section' as const, text })),
    ...columns.map((text) => ({ kind: 'section' as const, text })),
    ...ofPictures(document),
    ...(main === '' && line.length <= longestOpening ? [{ kind: 'opening' as const, text: line }] : []),
    // A page without a heading has its title for one, and most of all where that is the name of a file.
    ...(main === '' ? ofTitle(title, main, site).slice(0, 1) : []).map(
      ({ text }): Head => ({ kind: title === written ? 'opening' : 'heading', text }),
    ),
  ].filter(({ text }) => text !== '');
}
